#include "game/scenes/adult_look.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

constexpr float kLine = 34, kPadding = 12, kIcon = 64, kPip = 18;

}  // namespace

AdultGrid::AdultGrid(const Layout& layout)
    : left_(layout.margin()),
      top_(layout.margin()),
      gap_(layout.gap()),
      columns_(layout.isPortrait() ? 3 : 4) {
    const float rows = layout.isPortrait() ? 6 : 4;
    const auto columns = static_cast<float>(columns_);
    w_ = (layout.width() - 2 * left_ - gap_ * (columns - 1)) / columns;
    h_ = (layout.height() - 2 * top_ - gap_ * (rows - 1)) / rows;
}

Box AdultGrid::next(int span) {
    if (column_ + span > columns_) {
        column_ = 0;
        ++row_;
    }
    const Box box = {left_ + static_cast<float>(column_) * (w_ + gap_),
                     top_ + static_cast<float>(row_) * (h_ + gap_),
                     w_ * static_cast<float>(span) + gap_ * static_cast<float>(span - 1), h_};
    column_ += span;
    return box;
}

void drawLines(Painter& painter, const Box& box, const std::vector<std::string>& lines, float line,
               Colour colour, bool bold) {
    float y = box.y;
    for (const std::string& text : lines) {
        painter.textFromLeft(text, {box.x, y, box.w, line}, colour, bold);
        y += line;
    }
}

namespace {

void drawIcon(Painter& painter, const Control& control, const Box& box) {
    if (control.faces)
        painter.facingArt(control.icon, box);
    else
        painter.art(control.icon, box);
}

/// What a control tells, line below line: its name, its state, and which of how many that is.
void drawState(Painter& painter, const Layout& layout, const Box& box, const Control& control,
               bool in_the_middle) {
    const float line = layout.linePx(kLine), pip = layout.px(kPip);
    const auto write = [&](const std::string& text, float y, bool bold) {
        const Box at = {box.x, y, box.w, line};
        if (in_the_middle)
            painter.textWithin(text, at, palette::kInk, bold);
        else
            painter.textFromLeft(text, at, palette::kInk, bold);
    };
    write(control.name, box.y, false);
    write(control.state, box.y + line, true);
    const float all = pip * (static_cast<float>(control.of) * 1.5f - 0.5f);
    const float left = in_the_middle ? box.centre().x - all / 2 : box.x;
    for (int i = 0; i < control.of; ++i) {
        const bool full = i == control.at || (control.rises && i < control.at);
        painter.pip({left + static_cast<float>(i) * pip * 1.5f, box.y + box.h - pip, pip, pip},
                    full);
    }
}

}  // namespace

void drawControl(Painter& painter, const Layout& layout, const Box& box, const Control& control,
                 bool held) {
    const Colour ground = held ? palette::kMoss : control.is_deed ? palette::kMist : palette::kCard;
    painter.panel(box, ground, palette::kInk);
    const float padding = layout.px(kPadding);
    const float side = std::min(layout.px(kIcon), box.h - 2 * padding);
    float tall = 2 * layout.linePx(kLine);
    if (control.of > 0) tall += layout.px(kPip) + padding * 0.6f;
    // The drawing beside the words, or above them where the control is narrow.
    if (box.w < box.h * 1.5f) {
        const float y = box.centre().y - (side + padding / 2 + tall) / 2;
        drawIcon(painter, control, {box.centre().x - side / 2, y, side, side});
        drawState(painter, layout,
                  {box.x + padding, y + side + padding / 2, box.w - 2 * padding, tall}, control,
                  true);
        return;
    }
    drawIcon(painter, control, {box.x + padding, box.centre().y - side / 2, side, side});
    const float x = box.x + side + 2 * padding;
    drawState(painter, layout, {x, box.centre().y - tall / 2, box.x + box.w - padding - x, tall},
              control, false);
}

void drawButton(Painter& painter, const Layout& layout, const Box& box, std::string_view says,
                bool held) {
    painter.panel(box, held ? palette::kMoss : palette::kMist, palette::kInk);
    painter.text(says, box.centre(), layout.linePx(kLine), palette::kInk, true);
}

}  // namespace wrenlet::game
