// The desk's pencil: draws text, boxes and marks in u on whole pixels, hears presses, keeps the
// order of the keyboard's stops, and notes where each item stands under its label, so that a test
// can find and press it.
#pragma once

#include <imgui.h>

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "editor/look/layout.hpp"
#include "editor/look/palette.hpp"
#include "editor/look/type_scale.hpp"
#include "editor/windows/type_atlas.hpp"

namespace wrenlet::desk {

/// Which corners of a box are rounded.
enum class Corners : std::uint8_t { all, left, right, below };

enum class Align : std::uint8_t { left, middle, right };

/// What outlives a frame: where items stood (pixels), and which stop the keyboard holds.
struct Stage {
    std::map<std::string, Area, std::less<>> items;
    std::vector<std::string> stops;
    std::string held;         // label of the stop that the keyboard holds
    bool ring_shown = false;  // after Tab, until the next press
    bool finger = false;      // the last press came from a finger: targets grow
    bool moved = false;       // the held stop is another one than in the frame before
    bool focus_wanted = false;
};

class Ui {
  public:
    /// Inside a frame of Dear ImGui, within a window. Moves the held stop when Tab was pressed.
    Ui(const TypeAtlas& atlas, float scale, Stage& stage);

    float scale() const { return scale_; }
    bool finger() const { return stage_.finger; }
    /// Paints onto another window's list: inside a scrolling child. Returns the list before.
    ImDrawList* paintOn(ImDrawList* list) { return std::exchange(list_, list); }

    void fill(const Area& area, Colour colour, float radius = 0, Corners corners = Corners::all);
    /// An edge inside the area, `thickness` u and at least one pixel.
    void edge(const Area& area, Colour colour, float radius = 0, float thickness = 1);
    void level(float x, float y, float width, Colour colour, float thickness = 1);
    void upright(float x, float y, float height, Colour colour, float thickness = 1);
    void dashes(float x, float y, float width, Colour colour);  // level
    void dashesUpright(float x, float y, float height, Colour colour);
    void segment(float x0, float y0, float x1, float y1, Colour colour, float thickness);
    /// REQUIRES: a radius that the atlas bakes.
    void disc(float x, float y, float radius, Colour colour);
    void mark(Mark mark, float x, float y, Colour colour, MarkSize size = MarkSize::small);
    /// How much of something is done, as a ring of kRingRadius.
    void ring(double share, float x, float y);
    void picture(ImTextureID texture, const Area& area);

    float width(Type type, std::string_view text) const;
    /// Text whose optical middle is at y. Returns its width.
    float text(Type type, float x, float y, Colour colour, std::string_view text,
               Align align = Align::left);
    /// The text, cut with "…" if it is wider than `width`.
    std::string fitted(Type type, std::string_view text, float width) const;
    /// Wrapped between words; the top of the first line is at y. Returns the height taken.
    float paragraph(Type type, float x, float y, float width, Colour colour, std::string_view text,
                    Align align = Align::left);
    float paragraphHeight(Type type, float width, std::string_view text) const;

    struct Press {
        bool pressed = false, hovered = false, held = false;  // held: by the keyboard, ring shown
    };
    /// A place that can be pressed, and reached with Tab unless it has its own keys.
    Press press(const std::string& label, const Area& area, bool is_stop = true);
    /// A line of text that is typed into `text` (UTF-8), with a hint while it is empty. What is
    /// pasted comes in one line: its line ends become semicolons, its tabs upright strokes. Undo is
    /// the document's, not the field's.
    struct Typing {
        bool entered = false;  // Enter was pressed in it
        bool active = false;   // it has the cursor
    };
    Typing field(const std::string& label, const Area& area, std::string& text,
                 const std::string& hint);
    /// The next frame's cursor goes into the field of that label.
    void focus(const std::string& label) {
        stage_.held = label;
        stage_.ring_shown = true;
        stage_.focus_wanted = true;
    }

    /// Notes where something stands that is not pressed.
    void note(const std::string& label, const Area& area);
    void focusRing(const Area& area, float radius);
    /// The stop that the keyboard came to in this frame, in u, once it was drawn.
    std::optional<Area> cameTo() const;
    /// True when Enter means the page's own: no stop is held with its ring shown.
    bool enterIsFree() const { return !stage_.ring_shown; }

  private:
    struct Box {  // pixels
        float left, top, right, bottom;
    };
    Box boxOf(const Area& area) const;
    const Patch* roundFor(const Box& box, float radius, int line) const;
    void stamp(const Patch& patch, float x, float y, Colour colour);  // its middle at x, y
    void drawCorner(const Patch& round, const Box& box, bool is_right, bool is_low, Colour colour);
    float px(float u) const;
    ImVec2 at(float x, float y) const { return {px(x), px(y)}; }
    std::vector<std::string> lines(Type type, float width, std::string_view text) const;

    const TypeAtlas& atlas_;
    float scale_;
    Stage& stage_;
    ImDrawList* list_;
    bool activate_;  // Enter or Space was pressed with a stop held
};

}  // namespace wrenlet::desk
