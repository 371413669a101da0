// "Sound by sound": each sound with its mark, word, counts and likely range, by skill. Pressing a
// skill's line shows it in the cards beside.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 17, kHeading = 31, kRow = 32, kListTop = 64, kFootNote = 34;

struct Columns {
    float label, examples, chip, word, counts_right, bar, bar_width;
};

Columns columnsIn(float x, float width) {
    const bool is_narrow = width < 440;  // then without examples
    Columns at{};
    at.label = x;
    at.examples = x + 52;
    at.chip = x + (is_narrow ? 58.f : 124.f);
    at.word = at.chip + 30;
    at.counts_right = at.word + (is_narrow ? 164.f : 172.f);
    at.bar = at.counts_right + 18;
    at.bar_width = x + width - at.bar - 6;
    return at;
}

void drawRow(View& view, const SoundRow& row, const Columns& at, const Area& area) {
    Ui& ui = view.ui;
    const float middle = area.middleY();
    const auto press = ui.press("why:" + row.cell.skill + "/" + row.label, area);
    const bool is_open = view.desk.why() && view.desk.why()->cell == row.cell;
    if (is_open || press.hovered) ui.fill(area.inset(1), is_open ? kPaleDeep : kWash, 5);
    if (press.held) ui.focusRing(area.inset(2), 5);
    if (press.pressed)
        view.wish([cell = row.cell, is_open](Desk& desk) {
            is_open ? desk.closeWhy() : desk.askWhy(cell);
        });
    const float label = ui.text(Type::title, at.label, middle, kInk, row.label);
    const float examples = std::max(at.examples, at.label + label + 8);
    if (at.chip - examples > 40)
        ui.text(Type::note, examples, middle + 1, kSoft,
                ui.fitted(Type::note, row.examples, at.chip - examples - 8));
    saidChip(ui, row.said, at.chip, middle);
    const bool missed = row.said == Said::missed;
    float x = at.word;
    x += ui.text(missed ? Type::strong : Type::body, x, middle, missed ? kBrick : kInk,
                 wordOf(row.said));
    if (row.shielded && row.said != Said::shielded)
        ui.mark(Mark::shield, x + 14, middle, kSoft, MarkSize::large);
    ui.text(Type::body, at.counts_right, middle, kInk,
            wording::figure(row.right) + " of " + wording::figure(row.seen), Align::right);
    rangeBar(ui, {at.bar, middle - 10, at.bar_width, 20}, row.said, row.range, row.guess);
}

void drawHeading(View& view, const SoundGroup& group, const Area& area, bool ruled) {
    Ui& ui = view.ui;
    const bool chosen = group.skill == view.desk.skill();
    const auto press = ui.press("skill:" + group.skill, area);
    if (ruled) ui.level(area.x, area.y, area.width, kLine);
    if (chosen) {
        const Area row{area.x, area.y + 3, area.width, area.height - 5};
        ui.fill(row, kPaleDeep, 5);
        ui.fill({row.x, row.y + 3, 4, row.height - 6}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill({area.x, area.y + 3, area.width, area.height - 5}, kWash, 5);
    }
    ui.text(Type::strong, area.x + 12, area.middleY(), kInk, group.heading);
    ui.text(Type::note, area.right() - 10, area.middleY(), chosen ? kDeeper : kSoft,
            chosen ? "shown beside" : wording::counted(group.answers, "answer"), Align::right);
    if (press.held) ui.focusRing(area.inset(6), 5);
    if (press.pressed) view.wish([skill = group.skill](Desk& desk) { desk.chooseSkill(skill); });
}

float heightOf(const SoundGroup& group) {
    return kHeading + static_cast<float>(group.rows.size()) * kRow + 4;
}

// Scrolls the chosen skill's heading to the top when it was chosen elsewhere and is out of view.
void bringIntoView(View& view, float height) {
    const std::string& skill = view.desk.skill();
    if (view.sounds.child == view.desk.child() && view.sounds.skill == skill) return;
    float top = 0;
    for (const SoundGroup& group : view.desk.story().groups) {
        if (group.skill == skill) break;
        top += heightOf(group);
    }
    const float from =
        view.sounds.child == view.desk.child() ? ImGui::GetScrollY() / view.ui.scale() : 0;
    if (top < from || top + kHeading + kRow > from + height) {
        ImGui::SetScrollY(top * view.ui.scale());
    } else if (from == 0) {
        ImGui::SetScrollY(0);
    }
    view.sounds = {view.desk.child(), skill};
}

}  // namespace

void drawSoundsCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    card(ui, area);
    ui.text(Type::title, area.x + kPad, area.y + 22, kInk, "Sound by sound");

    const Area list{area.x + kPad, area.y + kListTop, area.width - 2 * kPad + 8,
                    area.height - kListTop - kFootNote};
    float content = 0;
    for (const SoundGroup& group : view.desk.story().groups) content += heightOf(group);
    const bool scrolls = content > list.height;
    const float bar = scrolls ? (ui.finger() ? 28.f : 14.f) + 8 : 8;
    const float width = list.width - bar;
    const Columns at = columnsIn(list.x + 12, width - 12);

    const float head = area.y + 49;
    ui.text(Type::note, at.chip, head, kSoft, "what we can say");
    ui.text(Type::note, at.counts_right, head, kSoft, "right", Align::right);
    ui.text(Type::note, at.bar, head, kSoft, "0");
    ui.text(Type::note, at.bar + at.bar_width, head, kSoft, "10", Align::right);
    for (const std::string_view name : {"likely range, of 10", "likely range"}) {
        if (ui.width(Type::note, name) + 44 > at.bar_width) continue;
        ui.text(Type::note, at.bar + at.bar_width / 2, head, kSoft, name, Align::middle);
        break;
    }
    ui.level(list.x, list.y - 2, width, kLine);

    ImGui::SetCursorScreenPos({list.x * ui.scale(), list.y * ui.scale()});
    ImGui::BeginChild(
        "sounds", {list.width * ui.scale(), list.height * ui.scale()}, false,
        scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar);
    bringIntoView(view, list.height);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    float y = list.y - ImGui::GetScrollY() / ui.scale();
    for (const SoundGroup& group : view.desk.story().groups) {
        drawHeading(view, group, {list.x, y, width, kHeading}, y > list.y + 2);
        y += kHeading;
        for (const SoundRow& row : group.rows) {
            if (y + kRow > list.y && y < list.bottom())
                drawRow(view, row, at, {list.x, y, width, kRow});
            y += kRow;
        }
        y += 4;
    }
    ImGui::SetCursorScreenPos({list.x * ui.scale(), y * ui.scale()});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();

    const float foot = area.bottom() - 17;
    ui.level(list.x, list.bottom() + 1, width, kLine);
    ui.dashesUpright(area.x + kPad + 4, foot - 8, 16, kInk);
    ui.text(Type::note, area.x + kPad + 14, foot, kSoft,
            area.width > 480 ? "where guessing would land. Press a line to see why it says that."
                             : "where guessing would land");
}

}  // namespace wrenlet::desk
