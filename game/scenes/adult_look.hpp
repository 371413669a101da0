// How the adult's pages look: where their controls stand, how a control says its state in words and
// in shape, and text that an adult reads at arm's length.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "game/scenes/painter.hpp"

namespace wrenlet::game {

/// Cells in rows across the whole screen, filled in the order in which they are asked for.
class AdultGrid {
  public:
    explicit AdultGrid(const Layout& layout);
    /// The next cell, as wide as `span` of them, in the next row where this one has no room.
    Box next(int span = 1);
    int columns() const { return columns_; }

  private:
    float left_, top_, w_, h_, gap_;
    int columns_, row_ = 0, column_ = 0;
};

/// Something that can be set, and how it is.
struct Control {
    std::string thing;  // "volume"
    std::string name;   // "Loudness"
    std::string state;  // "half"
    std::string icon;
    int at = 0, of = 0;    // which of how many states; of 0: not one of several
    bool rises = false;    // each state has more of it than the one before
    bool is_deed = false;  // touching it does something, and sets nothing
    bool faces = false;    // the drawing is turned round for a left hand
};

void drawControl(Painter& painter, const Layout& layout, const Box& box, const Control& control,
                 bool held);
/// A plain button with one word or two.
void drawButton(Painter& painter, const Layout& layout, const Box& box, std::string_view says,
                bool held);
/// Lines from the left, the first at the top of `box`.
void drawLines(Painter& painter, const Box& box, const std::vector<std::string>& lines, float line,
               Colour colour = palette::kInk, bool bold = false);

}  // namespace wrenlet::game
