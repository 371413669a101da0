// Bringing in what another teacher made: what to open, what it holds that is not here or is other,
// and which of it is taken.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/last_edit.hpp"
#include "editor/windows/notices.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kRow = 36, kBoxHeight = 38;
constexpr std::size_t kTold = 3;  // problems

/// The packs and units to choose from, and a box for a path.
void drawChooser(View& view, const Area& area) {
    Ui& ui = view.ui;
    BringPlace& place = view.bring;
    const float width = std::min(area.width, 680.f);
    const auto room = static_cast<std::size_t>(std::max(0.f, (area.height - 130) / 42));
    const std::size_t shown = std::min(place.to_choose.size(), room);
    const Area sheet{area.x, area.y, width, 112 + 42 * float(shown)};
    card(ui, sheet);
    float y = sheet.y + 14;
    y +=
        ui.paragraph(Type::body, sheet.x + 22, y, width - 44, kSoft,
                     "A pack (.zip) or the folder of a unit, from a stick or a colleague. Drop it "
                     "on this window, write where it is, or choose one of this classroom folder.") +
        10;
    const Button open{"open brought", "Open"};
    const float wide = std::max(80.f, buttonWidth(ui, open));
    const Area box{sheet.x + 22, y, width - 44 - wide - 8, kBoxHeight};
    const auto typing = ui.field("brought path", box, place.typed, "Where it is");
    const bool pressed = button(ui, open, {box.right() + 8, y, wide, kBoxHeight});
    if ((typing.entered || pressed) && !place.typed.empty())
        view.later([&place, unit = view.unit] { place.openFile(place.typed, *unit); });
    y += kBoxHeight + 8;
    for (std::size_t i = 0; i < shown; ++i) {
        const std::string name = place.to_choose[i].filename().string();
        if (button(ui, {"brought:" + name, name}, {sheet.x + 22, y, width - 44, 34}))
            view.later([&place, unit = view.unit, path = place.to_choose[i]] {
                place.openFile(path, *unit);
            });
        y += 42;
    }
}

const char* kindOf(BroughtLine::Kind kind) {
    switch (kind) {
        case BroughtLine::Kind::word:
            return "word";
        case BroughtLine::Kind::sentence:
            return "sentence";
        case BroughtLine::Kind::sounds:
            return "sounds";
        case BroughtLine::Kind::picture:
            return "picture";
        case BroughtLine::Kind::recording:
            return "recording";
    }
    return "";
}

void drawLine(View& view, std::size_t index, const Area& row) {
    Ui& ui = view.ui;
    const BroughtLine& line = view.bring.lines[index];
    const auto press =
        ui.press("line:" + std::string(kindOf(line.kind)) + ":" + line.id, row, false);
    if (index == view.bring.at) {
        ui.fill(row, kPaleDeep, 8);
        ui.fill({row.x - 6, row.y + 5, 4, row.height - 10}, kDeep, 2);
    } else if (press.hovered) {
        ui.fill(row, kWash, 8);
    }
    ui.level(row.x, row.bottom() - 1, row.width, kLine);
    const float middle = row.middleY();
    const Area box{row.x + 8, middle - 9, 18, 18};
    ui.fill(box, line.is_taken ? kDeep : kCard, 4);
    ui.edge(box, line.is_taken ? kDeep : kEdge, 4);
    if (line.is_taken) ui.mark(Mark::tick, box.middleX(), box.middleY(), kCard);
    const float says = row.x + row.width * 0.38f, kind = row.right() - 8;
    ui.text(Type::strong, row.x + 38, middle, kInk,
            ui.fitted(Type::strong, line.label, says - row.x - 48));
    const float wide = ui.text(Type::note, kind, middle, kSoft, kindOf(line.kind), Align::right);
    std::string text = line.says;
    if (!line.is_new) text += line.is_taken ? "; takes the place of yours" : "; yours stays";
    ui.text(Type::body, says, middle, line.is_new ? kSoft : kInk,
            ui.fitted(Type::body, text, kind - wide - 12 - says));
    if (press.pressed) view.later([&place = view.bring, index] { place.turn(index); });
}

void drawLines(View& view, const Area& area) {
    Ui& ui = view.ui;
    const std::size_t count = view.bring.lines.size();
    const float content = float(count) * kRow, scale = ui.scale();
    const bool scrolls = content > area.height;
    const float inner = area.width - (scrolls ? (ui.finger() ? 28.f : 14.f) + 4 : 0);
    ui.level(area.x, area.y - 1, inner, kEdge);
    ImGui::SetCursorScreenPos({(area.x - 6) * scale, area.y * scale});
    ImGui::BeginChild(
        "brought lines", {(area.width + 6) * scale, area.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    if (view.bring_scroll.seen != view.bring.at) {
        view.bring_scroll.seen = view.bring.at;
        const float top = float(view.bring.at) * kRow, from = ImGui::GetScrollY() / scale;
        if (top < from) ImGui::SetScrollY(top * scale);
        if (top + kRow > from + area.height) ImGui::SetScrollY((top + kRow - area.height) * scale);
    }
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = area.y - ImGui::GetScrollY() / scale;
    for (std::size_t i = 0; i < count; ++i) {
        const Area row{area.x, top + float(i) * kRow, inner, kRow};
        if (row.bottom() > area.y && row.y < area.bottom()) drawLine(view, i, row);
    }
    ImGui::SetCursorScreenPos({area.x * scale, (top + content) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

/// What is opened, whose voice it is, and the quick choices. Returns its height.
float drawAbove(View& view, const Area& area) {
    Ui& ui = view.ui;
    BringPlace& place = view.bring;
    const Brought& brought = *place.brought;
    const std::string holds =
        wording::counted(std::int64_t(brought.words.size()), "word") + ", " +
        wording::counted(std::int64_t(brought.sentences.size()), "sentence") + ", " +
        wording::counted(std::int64_t(brought.recordings.size()), "recording") +
        (place.lines.empty() ? "; all of it is here already" : "");
    ui.text(Type::title, area.x, area.y + 14, kInk,
            ui.fitted(Type::title, brought.title + " (" + brought.from + ")", area.width));
    ui.text(Type::body, area.x, area.y + 38, kSoft, ui.fitted(Type::body, holds, area.width));
    if (place.lines.empty()) return 56;
    const struct {
        const char *label, *text;
        void (BringPlace::*choose)();
    } ways[] = {{"choose: new", "What is new", &BringPlace::chooseNew},
                {"choose: all", "All", &BringPlace::chooseAll},
                {"choose: none", "None", &BringPlace::chooseNone}};
    float x = area.x;
    for (const auto& way : ways) {
        const Button one{way.label, way.text};
        const float width = buttonWidth(ui, one);
        if (button(ui, one, {x, area.y + 56, width, 34}))
            view.later([&place, choose = way.choose] { (place.*choose)(); });
        x += width + 8;
    }
    if (!brought.recordings.empty()) {
        const float room = std::min(300.f, area.right() - x - 16);
        if (room > 120)
            ui.field("whose voice", {area.right() - room, area.y + 54, room, kBoxHeight},
                     place.whose, "Whose voice is it?");
    }
    return 100;
}

void keys(View& view) {
    BringPlace& place = view.bring;
    const auto move = [&](int by) { view.later([&place, by] { place.move(by); }); };
    if (hit(view, Does::down)) move(1);
    if (hit(view, Does::up)) move(-1);
    if (hit(view, Does::page_down)) move(10);
    if (hit(view, Does::page_up)) move(-10);
    if (hit(view, Does::first)) move(-100'000);
    if (hit(view, Does::last)) move(100'000);
    if (hit(view, Does::turn)) view.later([&place] { place.turn(place.at); });
    if (hit(view, Does::back)) view.later([&place] { place.close(); });
}

}  // namespace

void drawBringPage(View& view) {
    Ui& ui = view.ui;
    Area body = view.frame.body;
    const float title = ui.text(Type::place, body.x, kTitleMiddle, kInk, "Bring in");
    const Button back{"bring: close", "Back to the words", ButtonKind::outlined, "Esc"};
    const float width = buttonWidth(ui, back);
    if (button(ui, back, {body.right() - width, 16, width, 34}))
        view.later([&place = view.bring] { place.close(); });
    ui.text(
        Type::body, body.x + title + 17, kTitleMiddle + 1, kSoft,
        ui.fitted(Type::body, "into " + view.unit->unit().title, body.width - title - width - 40));
    keys(view);
    const float told = drawProblems(ui, body, view.bring.problems, kTold);
    body.y += told;
    body.height -= told;
    if (!view.bring.brought) return drawChooser(view, body);
    const float above = drawAbove(view, body);
    if (!view.bring.lines.empty())
        drawLines(view, {body.x, body.y + above, body.width, body.height - above});
}

void drawBringFoot(View& view, const Area& foot) {
    Ui& ui = view.ui;
    BringPlace& place = view.bring;
    const std::size_t chosen = place.chosen();
    const bool takes = place.brought && chosen > 0;
    const Button way{
        "next",
        takes ? "Take " + wording::counted(std::int64_t(chosen), "thing") : "Back to the words",
        ButtonKind::filled};
    const float width = std::max(150.f, buttonWidth(ui, way));
    const Area at{foot.right() - 16 - width, foot.y + 8, width, 40};
    if (button(ui, way, at) || (hit(view, Does::next_step)))
        view.later([&place, unit = view.unit, takes] {
            if (takes)
                place.take(*unit);
            else
                place.close();
        });
    drawLastEdit(view, foot, at.x - 16, lastEditOf(*view.unit));
}

}  // namespace wrenlet::desk
