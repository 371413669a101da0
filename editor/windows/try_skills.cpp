// The list of skills at the Try out place: how many questions the unit's words give each, and which
// were tried.
#include <algorithm>

#include "editor/tryout/question_words.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kRow = 30, kHead = 40;

/// A skill that is off, that gives nothing, that was tried, that was not.
void drawState(Ui& ui, const SkillLook& skill, bool tried, float x, float y) {
    if (skill.off) {
        ui.level(x - 6, y - 1, 12, kDot, 2);
    } else if (skill.items == 0) {
        ui.mark(Mark::warning, x, y, kStrawInk);
    } else if (tried) {
        ui.disc(x, y, 8, kDeep);
        ui.mark(Mark::tick, x, y, kCard);
    } else {
        ui.edge({x - 8, y - 8, 16, 16}, kEdge, 8, 2);
    }
}

}  // namespace

void drawTrySkills(View& view, const Area& area) {
    Ui& ui = view.ui;
    TryPlace& place = *view.try_out;
    const std::vector<SkillLook>& skills = view.unit->look().skills;
    card(ui, area);
    ui.text(Type::strong, area.x + 16, area.y + 21, kInk, "Skills in this unit");
    const Area list{area.x + 6, area.y + kHead, area.width - 10, area.height - kHead - 8};
    ImGui::SetCursorScreenPos({list.x * ui.scale(), list.y * ui.scale()});
    ImGui::BeginChild("skills", {list.width * ui.scale(), list.height * ui.scale()}, false,
                      ImGuiWindowFlags_AlwaysVerticalScrollbar | ImGuiWindowFlags_NoNav);
    if (view.try_scroll.seen != place.skill()) {
        view.try_scroll.seen = place.skill();
        const float top = float(place.skill()) * kRow, from = ImGui::GetScrollY() / ui.scale();
        if (top < from || top + kRow > from + list.height)
            ImGui::SetScrollY(std::max(0.f, top - list.height / 2) * ui.scale());
    }
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float bar = ui.finger() ? 28.f : 14.f;
    const float top = list.y - ImGui::GetScrollY() / ui.scale();
    for (std::size_t i = 0; i < skills.size(); ++i) {
        const Area row{list.x, top + float(i) * kRow, list.width - bar - 4, kRow};
        if (row.bottom() < list.y || row.y > list.bottom()) continue;
        const SkillLook& skill = skills[i];
        const bool here = i == place.skill();
        const auto press =
            ui.press("skill:" + std::string(exercise::rowOf(skill.skill).id), row, false);
        if (here) {
            ui.fill(row, kPaleDeep, 8);
            ui.fill({row.x, row.y + 4, 4, row.height - 8}, kDeep, 2);
        } else if (press.hovered) {
            ui.fill(row, kWash, 8);
        }
        drawState(ui, skill, place.isTried(skill), row.x + 20, row.middleY());
        const std::string count = skill.off ? "off" : std::to_string(skill.items);
        const float wide = ui.width(Type::note, count);
        ui.text(Type::note, row.right() - 8, row.middleY(), here ? kInk : kSoft, count,
                Align::right);
        const Type type = here ? Type::strong : Type::body;
        ui.text(type, row.x + 36, row.middleY(), kInk,
                ui.fitted(type, shortName(skill.skill), row.width - 36 - wide - 12));
        if (press.pressed)
            view.later([&place, &scroll = view.try_scroll, i] {
                place.chooseSkill(i);
                scroll.finding = false;
            });
    }
    ImGui::SetCursorScreenPos(
        {list.x * ui.scale(), (top + float(skills.size()) * kRow) * ui.scale()});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

}  // namespace wrenlet::desk
