// What a page is given to draw with: the pencil, the desk's state, the room it has, and a list for
// what the teacher wishes, which is done when the frame is drawn and not in the middle of it.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "editor/document/desk.hpp"
#include "editor/look/layout.hpp"
#include "editor/windows/ui.hpp"

namespace wrenlet::desk {

/// Badges and the logo as textures of exactly so many pixels.
class Pictures {
  public:
    virtual ~Pictures() = default;
    /// Null when there is no such picture. `name` is that of a file in art/, without ".svg".
    virtual ImTextureID picture(std::string_view name, int pixels) = 0;
};

/// Which part of the map is in view, and which place was pointed at when it was last chosen.
struct MapScroll {
    std::size_t first_row = 0, first_column = 0;
    MapPoint seen;       // the point that was last brought into view
    ImVec2 mouse{0, 0};  // where it was last, in pixels
    bool armed = false;  // a press began on the place already pointed at
};

/// Which child and skill the list of sounds was last scrolled to.
struct SoundsScroll {
    std::size_t child = 0;
    std::string skill;
};

struct View {
    Ui& ui;
    const Desk& desk;
    Frame frame;
    float width = 0, height = 0;  // u
    std::int64_t now_ms = 0;
    Pictures* pictures = nullptr;
    MapScroll& scroll;
    SoundsScroll& sounds;
    std::vector<std::function<void(Desk&)>>& wishes;
    std::function<void()> gather;              // look into the classroom folder again
    std::function<void(float)> set_text_size;  // 0.9 to 1.5
    float text_size = 1;

    void wish(std::function<void(Desk&)> what) { wishes.push_back(std::move(what)); }
};

// One file each. They draw into view.frame.body and above it.
void drawRail(View& view);
void drawFoot(View& view);
void drawMapPage(View& view);
void drawStandoutPane(View& view, const Area& area);
void drawReading(View& view, const Area& area);       // the place pointed at, read out
void drawReadingStrip(View& view, const Area& area);  // the same in one line, without the pane
void drawChildPage(View& view);
void drawSoundsCard(View& view, const Area& area);
void drawChoicesCard(View& view, const Area& area);
void drawCourseCard(View& view, const Area& area);
void drawEmptyPage(View& view);

}  // namespace wrenlet::desk
