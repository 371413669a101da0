// The parts that pages are made of: buttons, cards, marks with their words, range bars, key caps.
#pragma once

#include <string>
#include <string_view>

#include "editor/document/likely_range.hpp"
#include "editor/look/said.hpp"
#include "editor/windows/ui.hpp"

namespace wrenlet::desk {

enum class ButtonKind : std::uint8_t { filled, outlined, on, quiet };

struct Button {
    std::string label;  // what a test and the keyboard's stops call it
    std::string text;
    ButtonKind kind = ButtonKind::outlined;
    std::string key = {};  // shown inside in a small frame
};

float buttonWidth(const Ui& ui, const Button& button);
/// True when pressed. Its width is buttonWidth unless the area asks for more.
bool button(Ui& ui, const Button& button, const Area& area);

void card(Ui& ui, const Area& area);

/// The mark on its ground, 22 u wide.
void saidChip(Ui& ui, Said said, float x, float middle_y);
void saidCell(Ui& ui, Said said, const Area& area);

/// From 0 to 10 with the likely range, a mark at the estimate and a dotted tick where guessing
/// lands.
void rangeBar(Ui& ui, const Area& area, Said said, const LikelyRange& range, double guess);

/// A warning: what, where, and the way out, on butter. Returns its height; draws only if `draw`.
float warningCard(Ui& ui, float x, float y, float width, std::string_view head,
                  std::string_view body, bool draw);

/// A sheet in the middle of `area` that says what the place is for; the next step stands in the
/// foot line.
void emptyPlace(Ui& ui, const Area& area, std::string_view title, std::string_view body);

}  // namespace wrenlet::desk
