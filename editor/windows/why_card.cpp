// "Why does it say that?": the reasons, then the very answers, newest first.
#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 17, kRow = 26;

struct Columns {
    float day, asked, chosen, note;
};

void drawAnswer(Ui& ui, const WhyAnswer& answer, const Columns& at, float right, float middle) {
    const Colour ink = answer.is_counted ? kInk : kSoft;
    ui.text(Type::note, at.day, middle, kSoft, wording::date(answer.day));
    ui.text(Type::body, at.asked, middle, ink,
            ui.fitted(Type::body, answer.asked, at.chosen - at.asked - 26));
    ui.mark(answer.is_right ? Mark::tick : Mark::diamond, at.chosen - 14, middle,
            !answer.is_counted ? kDot
            : answer.is_right  ? kDeep
                               : kBrick);
    ui.text(answer.is_right ? Type::body : Type::strong, at.chosen, middle, ink,
            ui.fitted(Type::strong, answer.chosen, at.note - at.chosen - 10));
    ui.text(Type::note, at.note, middle, kSoft,
            ui.fitted(Type::note, answer.note, right - at.note));
}

void drawAnswers(View& view, const Why& why, const Area& list) {
    Ui& ui = view.ui;
    const float scale = ui.scale();
    const float content = static_cast<float>(why.answers.size()) * kRow;
    const bool scrolls = content > list.height;
    const float right = list.right() - (scrolls ? (ui.finger() ? 28.f : 14.f) + 6 : 0);
    const Columns at{list.x, list.x + 58, list.x + 58 + list.width * .25f,
                     list.x + 58 + list.width * .46f};
    ui.text(Type::note, at.day, list.y - 12, kSoft, "day");
    ui.text(Type::note, at.asked, list.y - 12, kSoft, "asked");
    ui.text(Type::note, at.chosen, list.y - 12, kSoft, "chose");
    ui.level(list.x, list.y, right - list.x, kLine);
    ImGui::SetCursorScreenPos({list.x * scale, list.y * scale});
    ImGui::BeginChild(
        "why answers", {list.width * scale, list.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    float y = list.y - ImGui::GetScrollY() / scale;
    for (const WhyAnswer& answer : why.answers) {
        if (y + kRow > list.y && y < list.bottom()) drawAnswer(ui, answer, at, right, y + kRow / 2);
        y += kRow;
    }
    ImGui::SetCursorScreenPos({list.x * scale, y * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

}  // namespace

void drawWhyCard(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Why& why = *view.desk.why();
    card(ui, area);
    ui.note("why", area);
    const float x = area.x + kPad, width = area.width - 2 * kPad;
    const Button back{"close why", "Back", ButtonKind::outlined, "Esc"};
    const float wide = buttonWidth(ui, back);
    const Area place{area.right() - kPad - wide, area.y + 8, wide, 32};
    if (button(ui, back, place) || hit(view, Does::back))
        view.wish([](Desk& desk) { desk.closeWhy(); });
    ui.text(Type::title, x, area.y + 24, kInk,
            ui.fitted(Type::title, why.heading, width - wide - 10));
    float y = area.y + 48;
    y += ui.paragraph(Type::body, x, y, width, kInk, why.reasons) + 30;
    drawAnswers(view, why, {x, y, width, area.bottom() - 12 - y});
}

}  // namespace wrenlet::desk
