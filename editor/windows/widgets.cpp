#include "editor/windows/widgets.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kKeyCap = 18;

float keyWidth(const Ui& ui, const std::string& key) {
    return key.empty() ? 0 : std::max(kKeyCap, ui.width(Type::note, key) + 8) + 10;
}

}  // namespace

float buttonWidth(const Ui& ui, const Button& button) {
    const float side = button.kind == ButtonKind::filled ? 22 : 13;
    return ui.width(Type::strong, button.text) + keyWidth(ui, button.key) + 2 * side;
}

bool button(Ui& ui, const Button& button, const Area& area) {
    constexpr float kRadius = 8;
    const Ui::Press press = ui.press(button.label, area);
    Colour ink = kInk;
    switch (button.kind) {
        case ButtonKind::filled:
            ui.fill(area, press.hovered ? kDeeper : kDeep, kRadius);
            ink = kWhite;
            break;
        case ButtonKind::outlined:
            ui.fill(area, press.hovered ? kWash : kCard, kRadius);
            ui.edge(area, kEdge, kRadius);
            break;
        case ButtonKind::on:
            ui.fill(area, kPaleDeep, kRadius);
            ui.edge(area, kDeep, kRadius, 2);
            ink = kDeeper;
            break;
        case ButtonKind::quiet:
            if (press.hovered) ui.fill(area, kWash, kRadius);
            break;
    }
    const float text = ui.width(Type::strong, button.text);
    const float key = keyWidth(ui, button.key);
    float x = area.middleX() - (text + key) / 2;
    x += ui.text(Type::strong, x, area.middleY(), ink, button.text);
    if (key > 0) {
        const Area cap{x + 10, area.middleY() - kKeyCap / 2, key - 10, kKeyCap};
        ui.edge(cap, button.kind == ButtonKind::filled ? kWhite : kEdge, 4);
        ui.text(Type::note, cap.middleX(), cap.middleY(), ink, button.key, Align::middle);
    }
    if (press.held) ui.focusRing(area, kRadius);
    return press.pressed;
}

void card(Ui& ui, const Area& area) {
    ui.fill(area, kCard, 10);
    ui.edge(area, kLine, 10);
}

void saidCell(Ui& ui, Said said, const Area& area) {
    const SaidLook look = lookOf(said);
    ui.fill(area, look.ground);
    if (look.framed) ui.edge(area, kWash, 0, 2);
    ui.mark(look.mark, area.middleX(), area.middleY(), look.on_ground);
}

void saidChip(Ui& ui, Said said, float x, float middle_y) {
    const SaidLook look = lookOf(said);
    const Area area{x, middle_y - 9, 22, 18};
    ui.fill(area, look.ground, 3);
    if (look.framed) ui.edge(area, kLine, 3);
    ui.mark(look.mark, area.middleX(), area.middleY(), look.on_ground);
}

void rangeBar(Ui& ui, const Area& area, Said said, const LikelyRange& range, double guess) {
    const SaidLook look = lookOf(said);
    const auto xOf = [&](double share) { return area.x + static_cast<float>(share) * area.width; };
    const Area track{area.x, area.middleY() - 7, area.width, 14};
    ui.fill(track, kWash, 3);
    for (const double quarter : {0.25, 0.5, 0.75})
        ui.upright(xOf(quarter), track.y, track.height, kLine);
    if (guess > 0) ui.dashesUpright(xOf(guess) - 1, area.middleY() - 10, 20, kInk);

    const float low = xOf(range.low), high = xOf(range.high), middle = xOf(range.middle);
    ui.fill({low, area.middleY() - 2, high - low, 4}, look.alone);
    ui.upright(low, area.middleY() - 6, 12, look.alone, 2);
    ui.upright(high - 2, area.middleY() - 6, 12, look.alone, 2);
    // the halo keeps the mark apart from its own range
    const Mark halo = look.mark == Mark::diamond ? Mark::diamond : Mark::disc;
    const Mark mark = look.mark == Mark::none ? Mark::dot : look.mark;
    ui.mark(halo, middle, area.middleY(), kCard, MarkSize::large);
    ui.mark(mark, middle, area.middleY(), look.alone);
}

float warningCard(Ui& ui, float x, float y, float width, std::string_view head,
                  std::string_view body, bool draw) {
    constexpr float kPad = 12, kIcon = 24;
    const float room = width - 2 * kPad - kIcon;
    const float head_height = ui.paragraphHeight(Type::strong, room, head);
    const float body_height = body.empty() ? 0 : ui.paragraphHeight(Type::note, room, body) + 2;
    const float height = head_height + body_height + 2 * 10;
    if (!draw) return height;
    ui.fill({x, y, width, height}, kButter, 8);
    ui.mark(Mark::warning, x + kPad + 8, y + 20, kStrawInk, MarkSize::large);
    ui.paragraph(Type::strong, x + kPad + kIcon, y + 10, room, kInk, head);
    if (!body.empty())
        ui.paragraph(Type::note, x + kPad + kIcon, y + 12 + head_height, room, kInk, body);
    return height;
}

void emptyPlace(Ui& ui, const Area& area, std::string_view title, std::string_view body) {
    const float width = std::min(area.width, 640.f);
    const float room = width - 80;
    const float height = 106 + ui.paragraphHeight(Type::body, room, body);
    const Area sheet{std::floor(area.middleX() - width / 2),
                     std::floor(area.y + std::max(0.f, (area.height - height) * 0.4f)), width,
                     height};
    card(ui, sheet);
    ui.text(Type::title, sheet.middleX(), sheet.y + 46, kInk, title, Align::middle);
    ui.paragraph(Type::body, sheet.x + 40, sheet.y + 70, room, kSoft, body, Align::middle);
}

}  // namespace wrenlet::desk
