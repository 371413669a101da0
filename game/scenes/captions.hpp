// What is told, written small at an edge for an adult beside the child. The child never needs it.
#pragma once

#include <string>

#include "content/pack/pack.hpp"
#include "game/scenes/painter.hpp"
#include "game/scenes/telling.hpp"

namespace wrenlet::game {

/// The passage that is being told, or was told last: a sentence, a few sounds or words.
struct Caption {
    std::string text;        // sounds as the pack writes them: "/k/"
    std::size_t so_far = 0;  // bytes of it that have been told, the clip that sounds included
};

Caption captionOf(const Telling& telling, const pack::Pack& pack, Millis now);

/// In the layout's place for it; of a passage that is too long, the lines that are being told.
void drawCaption(Painter& painter, const Layout& layout, const Caption& caption);

}  // namespace wrenlet::game
