// A pack of one question, as small as it can be: what the desk hands to the child's program to
// draw or to play it.
#pragma once

#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/pack/pack.hpp"
#include "content/pack/pack_builder.hpp"
#include "editor/voice/unit_media.hpp"

namespace wrenlet::desk {

/// A question with the words and sentences that it is made of.
struct OneQuestion {
    exercise::Item item;
    exercise::Vocabulary vocabulary;
};

/// `vocabulary` is what the item was made of; compounds bring their parts.
OneQuestion onlyThis(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

/// Everything that may be heard in it, the game's phrases too.
std::vector<pack::VoiceNeed> heardIn(const OneQuestion& question);

/// The pack; when `with_sound` is false its clips are names without sound, for looking alone. What
/// cannot be made is left out, for the game to go without. Errors: it cannot be written as a file.
Result<std::string> packOf(const OneQuestion& question, const pack::Unit& unit,
                           const UnitPlaces& places, const ClipMaking& making, bool with_sound);

}  // namespace wrenlet::desk
