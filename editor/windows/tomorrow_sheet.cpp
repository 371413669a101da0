// The sheet of the Tomorrow page: what is asked at the table in hand or in the lesson, line by
// line, and where it lies once it is printed.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/paper/tomorrow_pages.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;
using Kind = SheetRow::Kind;

constexpr float kPad = 22, kStrip = 44;

struct Drawn {
    View& view;
    TomorrowPlace& place;
    std::vector<SheetRow> rows;
    paper::Names names;

    std::string listOf(const std::vector<std::string>& ids, std::size_t most) const {
        std::vector<std::string> all;
        for (const std::string& id : ids)
            if (const auto found = names.find(id); found != names.end())
                all.push_back(found->second);
        return wording::names(all, most);
    }
    const LessonItem* item(const SheetRow& row) const {
        const auto items = row.kind == Kind::choice ? std::span<const LessonItem>(place.choices())
                                                    : place.work().itemsAt(row.at);
        return row.index < items.size() ? &items[row.index] : nullptr;
    }
};

const LessonTask* taskOf(const TomorrowPlan& plan, const std::string& skill) {
    for (const LessonTask& task : plan.lesson)
        if (task.skill == skill) return &task;
    return nullptr;
}

bool isChoice(const SheetRow& row) {
    return row.kind == Kind::choice || row.kind == Kind::task_choice;
}

float heightOf(const Drawn& sheet, const SheetRow& row, float width) {
    const Ui& ui = sheet.view.ui;
    const LessonItem* item = sheet.item(row);
    switch (row.kind) {
        case Kind::task:
            return 44;
        case Kind::item:
            return item == nullptr
                       ? 0
                       : ui.paragraphHeight(Type::body, width - 20, item->said.ask) + 34;
        case Kind::choice:
            return item == nullptr
                       ? 0
                       : ui.paragraphHeight(Type::body, width - 56, item->said.ask) + 30;
        case Kind::more:
        case Kind::more_tasks:
            return 40;
        case Kind::task_choice:
            return 34;
    }
    return 0;
}

void drawTask(Drawn& sheet, const SheetRow& row, const Area& area, bool in_hand) {
    Ui& ui = sheet.view.ui;
    const LessonTask* task = taskOf(sheet.place.plan(), row.at.skill);
    if (task == nullptr) return;
    const float middle = area.bottom() - 16;
    float right = area.right() - 8;
    if (in_hand) {
        const Button out{"take out", "Take out", ButtonKind::outlined,
                         capOf(sheet.view, Does::leave_out)};
        const float width = buttonWidth(ui, out);
        right -= width;
        if (button(ui, out, {right, middle - 15, width, 30}))
            sheet.view.later([place = &sheet.place] { place->takeRowOut(); });
    } else {
        const std::string missed = task->missed_by == 0
                                       ? "missed by nobody yet"
                                       : "missed by " + std::to_string(task->missed_by);
        right -= ui.text(Type::note, right, middle, kSoft, missed, Align::right);
    }
    ui.text(Type::strong, area.x + 8, middle, kInk,
            ui.fitted(Type::strong, wording::skill(row.at.skill), right - area.x - 20));
}

void drawItem(Drawn& sheet, const LessonItem& item, const Area& area, bool in_hand) {
    Ui& ui = sheet.view.ui;
    const float x = area.x + 8;
    const float told =
        ui.paragraph(Type::body, x, area.y + 5, area.width - 20, kInk, item.said.ask);
    const float middle = area.y + 5 + told + 13;
    float right = area.right() - 8;
    if (in_hand) {
        const Button out{"take out", "Take out", ButtonKind::outlined,
                         capOf(sheet.view, Does::leave_out)};
        const float width = buttonWidth(ui, out);
        right -= width + 8;
        if (button(ui, out, {right + 8, middle - 13, width, 27}))
            sheet.view.later([place = &sheet.place] { place->takeRowOut(); });
    }
    const std::string answer = ui.fitted(Type::strong, item.said.answer, right - x);
    const float said = ui.text(Type::strong, x, middle, kDeeper, answer);
    const std::string who = sheet.listOf(item.listen_to, 4);
    if (!who.empty() && right - x - said > 60)
        ui.text(Type::note, x + said + 12, middle, kBrick,
                ui.fitted(Type::note, "\u2190 " + who, right - x - said - 12));
}

void drawChoice(Drawn& sheet, const LessonItem& item, const Area& area) {
    Ui& ui = sheet.view.ui;
    ui.fill({area.x + 18, area.y + 2, area.width - 26, area.height - 4}, kWash, 6);
    ui.text(Type::strong, area.x + 26, area.y + 16, kDeeper, "+");
    const float told =
        ui.paragraph(Type::body, area.x + 42, area.y + 5, area.width - 56, kInk, item.said.ask);
    const std::string who = sheet.listOf(item.listen_to, 3);
    ui.text(Type::note, area.x + 42, area.y + 5 + told + 10, kSoft,
            ui.fitted(Type::note, item.said.answer + (who.empty() ? "" : "   \u2190 " + who),
                      area.width - 62));
}

void drawMore(Drawn& sheet, const SheetRow& row, std::size_t index, const Area& area) {
    Ui& ui = sheet.view.ui;
    const bool tasks = row.kind == Kind::more_tasks;
    const std::size_t after = index + 1;
    const bool is_open = after < sheet.rows.size() && isChoice(sheet.rows[after]);
    const Button more{"more:" + (tasks ? "tasks" : row.at.skill),
                      is_open ? "Close"
                      : tasks ? "Another task"
                              : "Another one",
                      is_open ? ButtonKind::on : ButtonKind::outlined};
    const float width = buttonWidth(ui, more);
    if (button(ui, more, {area.x + 8, area.y + 5, width, 30}))
        sheet.view.later([&view = sheet.view, index] {
            view.tomorrow->takeRow(index);
            view.tomorrow->openRow(view.desk.opened());
        });
    if (tasks || row.at.table.empty()) return;
    const Button others{"other words", "Other words"};
    if (button(ui, others, {area.x + 16 + width, area.y + 5, buttonWidth(ui, others), 30}))
        sheet.view.later([&view = sheet.view] { view.tomorrow->askOthers(view.desk.opened()); });
}

void drawRow(Drawn& sheet, std::size_t index, const Area& area) {
    Ui& ui = sheet.view.ui;
    const SheetRow& row = sheet.rows[index];
    const bool in_hand = sheet.place.onSheet() && index == sheet.place.at();
    if (in_hand) {
        ui.fill(area, kPaleDeep, 8);
        ui.fill({area.x - 6, area.y + 5, 4, area.height - 10}, kDeep, 2);
    }
    const LessonItem* item = sheet.item(row);
    switch (row.kind) {
        case Kind::task:
            drawTask(sheet, row, area, in_hand);
            break;
        case Kind::item:
            if (item != nullptr) drawItem(sheet, *item, area, in_hand);
            break;
        case Kind::choice:
            if (item != nullptr) drawChoice(sheet, *item, area);
            break;
        case Kind::more:
        case Kind::more_tasks:
            drawMore(sheet, row, index, area);
            break;
        case Kind::task_choice:
            ui.fill({area.x + 18, area.y + 2, area.width - 26, area.height - 4}, kWash, 6);
            ui.text(Type::strong, area.x + 26, area.middleY(), kDeeper, "+");
            ui.text(Type::body, area.x + 42, area.middleY(), kInk,
                    ui.fitted(Type::body, wording::skill(sheet.place.taskChoices()[row.index]),
                              area.width - 62));
            break;
    }
    const bool is_choice = isChoice(row);
    const Ui::Press press = ui.press("row:" + std::to_string(index), area, false);
    if (press.pressed)
        sheet.view.later([&view = sheet.view, index, is_choice] {
            view.tomorrow->takeRow(index);
            if (is_choice) view.tomorrow->openRow(view.desk.opened());
        });
}

void drawRows(Drawn& sheet, const Area& frame) {
    Ui& ui = sheet.view.ui;
    TomorrowScroll& scroll = sheet.view.tomorrow_scroll;
    const auto whole = [&](float width) {
        float height = 0;
        for (const SheetRow& row : sheet.rows) height += heightOf(sheet, row, width);
        return height;
    };
    const float bar = (ui.finger() ? 28.f : 14.f) + 4;
    const bool scrolls = whole(frame.width) > frame.height;
    const float inner = frame.width - (scrolls ? bar : 0), scale = ui.scale();
    ImGui::SetCursorScreenPos({(frame.x - 6) * scale, frame.y * scale});
    const std::string label = "sheet of " + sheet.place.table();
    ImGui::BeginChild(
        label.c_str(), {(frame.width + 6) * scale, frame.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    float y = frame.y - ImGui::GetScrollY() / scale;
    const float top = y;
    for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
        const float height = heightOf(sheet, sheet.rows[i], inner);
        const Area row{frame.x, y, inner, height};
        if (row.bottom() > frame.y && row.y < frame.bottom()) drawRow(sheet, i, row);
        const bool opens = sheet.place.isChoosing() && !scroll.choosing;
        if (i == sheet.place.at() && (scroll.row != i || opens)) {
            scroll.row = i;
            float bottom = row.bottom();  // with what can be chosen under it
            for (std::size_t more = i + 1;
                 opens && more < sheet.rows.size() && isChoice(sheet.rows[more]); ++more)
                bottom += heightOf(sheet, sheet.rows[more], inner);
            const float from = ImGui::GetScrollY();
            const float low = std::min(bottom - frame.bottom(), row.y - frame.y);
            if (row.y < frame.y) ImGui::SetScrollY(from + (row.y - frame.y) * scale);
            if (bottom > frame.bottom()) ImGui::SetScrollY(from + low * scale);
        }
        y += height;
    }
    scroll.choosing = sheet.place.isChoosing();
    ImGui::SetCursorScreenPos({frame.x * scale, (top + whole(inner)) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

/// Where the page lies that was printed last.
void drawPrinted(Drawn& sheet, const Area& strip) {
    Ui& ui = sheet.view.ui;
    const std::filesystem::path& file = sheet.place.printed();
    ui.level(strip.x, strip.y, strip.width, kLine);
    const Button open{"open printed", "Open"};
    const float width = buttonWidth(ui, open);
    if (button(ui, open, {strip.right() - width, strip.y + 8, width, 32}))
        sheet.view.later([place = &sheet.place] { place->showPrinted(); });
    ui.mark(Mark::tick, strip.x + 8, strip.y + 24, kDeep);
    ui.text(Type::body, strip.x + 24, strip.y + 24, kInk,
            ui.fitted(Type::body, "It lies in papers/" + file.filename().string(),
                      strip.width - width - 40));
}

}  // namespace

void drawTomorrowSheet(View& view, const Area& area) {
    Ui& ui = view.ui;
    TomorrowPlace& place = *view.tomorrow;
    Drawn sheet{view, place, place.rows(), paper::namesOf(view.desk.opened().children)};
    ui.fill({area.x + 4, area.y + 4, area.width, area.height}, kRail, 4);
    ui.fill(area, kWhite, 4);
    ui.edge(area, kLine, 4);
    const float x = area.x + kPad, right = area.right() - kPad;
    const PlannedTable* table = place.plan().table(place.table());
    const std::string time = "ten minutes, by ear";
    const float wide = ui.text(Type::note, right, area.y + 30, kSoft, time, Align::right);
    ui.text(Type::place, x, area.y + 30, kInk,
            ui.fitted(Type::place,
                      table == nullptr ? "Ten minutes aloud" : wording::skill(table->skill),
                      right - x - wide - 16));
    ui.text(Type::body, x, area.y + 56, kSoft,
            ui.fitted(Type::body,
                      table == nullptr ? "About two minutes a task; harder ones last."
                                       : sheet.listOf(table->children, 6),
                      right - x));
    ui.level(x, area.y + 74, right - x, kLine);
    float y = area.y + 82;
    y += ui.paragraph(Type::note, x, y, right - x, kSoft,
                      "All answer at once; an arrow names whose voice to catch.") +
         4;
    const float strip = place.printed().empty() ? 10 : kStrip;
    drawRows(sheet, {x - 8, y, right - x + 16, area.bottom() - strip - y});
    if (!place.printed().empty())
        drawPrinted(sheet, {x, area.bottom() - kStrip, right - x, kStrip});
}

}  // namespace wrenlet::desk
