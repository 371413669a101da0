// The Tomorrow page: the lesson and the small tables to choose from, with who sits where; the one
// in hand is read and changed on the sheet beside them.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/paper/tomorrow_pages.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 20, kChip = 36, kBadge = 26, kLessonCard = 64, kBetween = 10;

struct Shown {
    View& view;
    const TomorrowPlan& plan;
    TablesOnPaper tables;
    paper::Names names;

    std::string called(const std::string& id) const {
        const auto found = names.find(id);
        return found == names.end() ? id : found->second;
    }
};

/// Boxes of some widths, one after the other, on as many lines as they take.
struct Flow {
    float left, right, x, y, height;

    Flow(float from, float to, float top, float tall)
        : left(from), right(to), x(from), y(top), height(tall) {}
    Area next(float width) {
        width = std::min(width, right - left);
        if (x > left && x + width > right) {
            x = left;
            y += height + 8;
        }
        const Area area{x, y, width, height};
        x += width + 8;
        return area;
    }
    float bottom() const { return y + height; }
};

float chipWidth(const Shown& page, const std::string& id) {
    return page.view.ui.width(Type::strong, page.called(id)) + kBadge + 30;
}

void drawChip(Shown& page, const std::string& id, const Area& area) {
    Ui& ui = page.view.ui;
    const bool in_hand = page.view.tomorrow->child() == id;
    const Ui::Press press = ui.press("seat:" + id, area);
    ui.fill(area, in_hand ? kPaleDeep : press.hovered ? kWash : kPaper, kChip / 2);
    ui.edge(area, in_hand ? kDeep : kEdge, kChip / 2, in_hand ? 2.f : 1.f);
    const Area badge{area.x + 8, area.middleY() - kBadge / 2, kBadge, kBadge};
    for (const auto& child : page.view.desk.opened().children) {
        if (child.child.id != id || page.view.pictures == nullptr) continue;
        const int pixels = static_cast<int>(kBadge * ui.scale());
        if (const ImTextureID texture = page.view.pictures->picture(child.child.badge, pixels))
            ui.picture(texture, badge);
    }
    ui.text(Type::strong, badge.right() + 7, area.middleY(), kInk,
            ui.fitted(Type::strong, page.called(id), area.right() - badge.right() - 17));
    if (press.held) ui.focusRing(area.inset(2), kChip / 2);
    if (press.pressed) page.view.later([place = page.view.tomorrow, id] { place->takeChild(id); });
}

/// The children of a card, and where the one in hand may move to. Only measures unless `draw`.
float drawChildren(Shown& page, const std::vector<std::string>& ids, const std::string& table,
                   float x, float y, float right, bool draw) {
    Ui& ui = page.view.ui;
    Flow flow(x, right, y, kChip);
    for (const std::string& id : ids) {
        const Area area = flow.next(chipWidth(page, id));
        if (draw) drawChip(page, id, area);
    }
    const std::string& child = page.view.tomorrow->child();
    if (std::find(ids.begin(), ids.end(), child) == ids.end()) return flow.bottom() - y;
    Flow ways(x, right, flow.bottom() + 10, 32);
    const std::string lead =
        ui.fitted(Type::body, page.called(child), std::max(60.f, right - x - 120)) + " moves to";
    const Area said = ways.next(ui.width(Type::body, lead) + 2);
    if (draw) ui.text(Type::body, said.x, said.middleY(), kInk, lead);
    const auto way = [&](const std::string& to, const std::string& text) {
        const Button move{"move:" + (to.empty() ? "none" : to), text};
        const Area area = ways.next(buttonWidth(ui, move));
        if (draw && button(ui, move, area))
            page.view.later([&view = page.view, to, opened = &page.view.desk.opened()] {
                view.tomorrow->moveChild(to, *opened);
            });
    };
    for (std::size_t i = 0; i < page.plan.tables.size(); ++i)
        if (page.plan.tables[i].id != table)
            way(page.plan.tables[i].id, "Table " + std::to_string(i + 1));
    if (!table.empty()) way("", "No table");
    return ways.bottom() - y;
}

/// Returns its height; only measures unless `draw`.
float drawTable(Shown& page, std::size_t index, const Area& at, bool draw) {
    Ui& ui = page.view.ui;
    const PlannedTable& table = page.plan.tables[index];
    const bool in_hand = page.view.tomorrow->table() == table.id;
    const practice::SmallGroup group =
        practice::groupFor(table.skill, table.children, page.view.desk.opened().children);
    const std::string shared = group.sounds.empty() ? "Nothing here is said to be missed any more."
                                                    : wording::capital(sharedIn(group));
    const float x = at.x + kPad, right = at.right() - 16, room = right - x;
    const float told = ui.paragraphHeight(Type::body, room, shared);
    const float chips = at.y + 44 + told + 8;
    const float height =
        chips - at.y + drawChildren(page, group.children, table.id, x, chips, right, false) + 16;
    if (!draw) return height;
    const Area sheet{at.x, at.y, at.width, height};
    ui.fill(sheet, in_hand ? kPaleDeep : kCard, 10);
    ui.edge(sheet, in_hand ? kDeep : kLine, 10, in_hand ? 2.f : 1.f);
    if (in_hand) ui.fill({sheet.x, sheet.y + 10, 4, sheet.height - 20}, kDeep, 2);
    const std::string number = "table " + std::to_string(index + 1);
    const float wide = ui.text(Type::note, right, at.y + 25, kSoft, number, Align::right);
    ui.text(Type::title, x, at.y + 25, kInk,
            ui.fitted(Type::title, wording::skill(table.skill), room - wide - 12));
    ui.paragraph(Type::body, x, at.y + 42, room, kSoft, shared);
    drawChildren(page, group.children, table.id, x, chips, right, true);
    const Ui::Press press = ui.press("table:" + table.id, sheet, false);
    if (press.pressed)
        page.view.later([place = page.view.tomorrow, id = table.id] { place->take(id); });
    return height;
}

void drawLessonCard(Shown& page, const Area& area) {
    Ui& ui = page.view.ui;
    const bool in_hand = page.view.tomorrow->table().empty();
    const Ui::Press press = ui.press("lesson", area, false);
    ui.fill(area, in_hand ? kPaleDeep : press.hovered ? kWash : kCard, 10);
    ui.edge(area, in_hand ? kDeep : kLine, 10, in_hand ? 2.f : 1.f);
    if (in_hand) ui.fill({area.x, area.y + 10, 4, area.height - 20}, kDeep, 2);
    ui.text(Type::title, area.x + kPad, area.y + 22, kInk, "With the whole class");
    std::vector<std::string> tasks;
    for (const LessonTask& task : page.plan.lesson) tasks.push_back(wording::skill(task.skill));
    ui.text(Type::body, area.x + kPad, area.y + 45, kSoft,
            ui.fitted(Type::body,
                      tasks.empty() ? "No task; put one in on the sheet."
                                    : "Ten minutes aloud: " + wording::names(tasks, 8),
                      area.width - 2 * kPad));
    if (press.pressed) page.view.later([place = page.view.tomorrow] { place->take(""); });
}

/// Who sits at no table, and why. Returns its height; only measures unless `draw`.
float drawRest(Shown& page, const Area& at, bool draw) {
    Ui& ui = page.view.ui;
    const practice::Grouping& rest = page.tables.grouping;
    const struct {
        const char* why;
        const std::vector<std::string>& ids;
    } kinds[] = {{"Miss something, and sit at no table", rest.alone},
                 {"Nothing is said to be missed", rest.nothing},
                 {"Too few answers to say", rest.not_sure}};
    float y = at.y + 8;
    if (draw) ui.text(Type::strong, at.x + 2, y + 10, kInk, "At no table");
    y += 26;
    for (const auto& kind : kinds) {
        if (kind.ids.empty()) continue;
        if (draw) ui.text(Type::note, at.x + 2, y + 8, kSoft, kind.why);
        y += 22;
        y += drawChildren(page, kind.ids, "", at.x + 2, y, at.right(), draw) + 10;
    }
    return y - at.y;
}

void drawTables(Shown& page, const Area& frame) {
    Ui& ui = page.view.ui;
    TomorrowScroll& scroll = page.view.tomorrow_scroll;
    const practice::Grouping& rest = page.tables.grouping;
    const bool has_rest = !rest.alone.empty() || !rest.nothing.empty() || !rest.not_sure.empty();
    const auto all = [&](float width, float top, bool draw) {
        float y = top;
        for (std::size_t i = 0; i < page.plan.tables.size(); ++i) {
            const Area at{frame.x, y, width, 0};
            const float height = drawTable(page, i, at, false);
            const bool is_seen = y + height > frame.y && y < frame.bottom();
            if (draw && is_seen) drawTable(page, i, at, true);
            if (draw && scroll.table != page.view.tomorrow->table() &&
                page.plan.tables[i].id == page.view.tomorrow->table()) {
                scroll.table = page.view.tomorrow->table();
                const float scale = ui.scale(), from = ImGui::GetScrollY();
                if (y < frame.y) ImGui::SetScrollY(from + (y - frame.y) * scale);
                if (y + height > frame.bottom())
                    ImGui::SetScrollY(from + (y + height - frame.bottom()) * scale);
            }
            y += height + kBetween;
        }
        if (has_rest) y += drawRest(page, {frame.x, y, width, 0}, draw);
        return y - top;
    };
    const float bar = (ui.finger() ? 28.f : 14.f) + 4;
    const bool scrolls = all(frame.width, frame.y, false) > frame.height;
    const float inner = frame.width - (scrolls ? bar : 0);
    const float scale = ui.scale();
    ImGui::SetCursorScreenPos({frame.x * scale, frame.y * scale});
    ImGui::BeginChild(
        "tomorrow tables", {frame.width * scale, frame.height * scale}, false,
        (scrolls ? ImGuiWindowFlags_AlwaysVerticalScrollbar : ImGuiWindowFlags_NoScrollbar) |
            ImGuiWindowFlags_NoNav);
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    if (page.view.tomorrow->table().empty()) scroll.table.clear();
    const float top = frame.y - ImGui::GetScrollY() / scale;
    const float height = all(inner, top, true);
    ImGui::SetCursorScreenPos({frame.x * scale, (top + height) * scale});
    ImGui::Dummy({1, 1});
    ui.paintOn(outer);
    ImGui::EndChild();
}

void keys(View& view) {
    TomorrowPlace* place = view.tomorrow;
    if (hit(view, Does::print))
        view.later([place, opened = &view.desk.opened()] { place->print(*opened); });
    const bool on_sheet = place->onSheet();
    const auto move = [&](Does does, int by) {
        if (!hit(view, does)) return;
        view.later([place, on_sheet, by] { on_sheet ? place->moveRow(by) : place->moveSheet(by); });
    };
    move(Does::down, 1);
    move(Does::up, -1);
    move(Does::page_down, 5);
    move(Does::page_up, -5);
    move(Does::first, -100'000);
    move(Does::last, 100'000);
    if (hit(view, Does::right)) view.later([place] { place->goToSheet(true); });
    if (hit(view, Does::left)) view.later([place] { place->goToSheet(false); });
    if (on_sheet && hit(view, Does::leave_out)) view.later([place] { place->takeRowOut(); });
    if (hit(view, Does::open))
        view.later([place, on_sheet, opened = &view.desk.opened()] {
            on_sheet ? place->openRow(*opened) : place->goToSheet(true);
        });
}

void drawHead(View& view) {
    Ui& ui = view.ui;
    const float x = view.frame.body.x, right = drawPageButtons(view);
    const float title = ui.text(Type::place, x, kTitleMiddle, kInk, "Tomorrow");
    const TomorrowPlan& plan = view.tomorrow->plan();
    if (!plan.isMade()) return;
    const std::string counts = wording::counted(std::int64_t(plan.tables.size()), "small table") +
                               ", ten minutes each; made " +
                               wording::ago(view.now_ms - plan.planned_ms) + " from " +
                               wording::counted(plan.answers, "answer");
    ui.text(Type::body, x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, counts, right - (x + title + 17) - 16));
}

}  // namespace

void drawTomorrowPage(View& view) {
    Ui& ui = view.ui;
    Area body = view.frame.body;
    drawHead(view);
    keys(view);
    float told = 0;
    for (const Problem& problem : view.tomorrow->problems()) {
        if (told > 160) break;
        told += warningCard(ui, body.x, body.y + told, std::min(body.width, 760.f), problem.what,
                            problem.where + ". " + problem.way_out, true) +
                8;
    }
    body.y += told;
    body.height -= told;
    if (!view.tomorrow->plan().isMade()) {
        emptyPlace(ui, body, "Nothing is planned yet",
                   view.desk.state() == ClassState::nobody_played
                       ? "Small tables for children who share a gap come after the first session. "
                         "The lesson with the whole class begins with what comes first."
                       : "Children who share a gap sit together, three or four at a table, with "
                         "ten minutes for each; and ten minutes aloud for the whole class are made "
                         "from what was missed. Both are yours to change.");
        return;
    }
    Shown page{view, view.tomorrow->plan(),
               tablesOnPaper(view.tomorrow->plan(), view.desk.opened().children),
               paper::namesOf(view.desk.opened().children)};
    const float left = std::floor(body.width * 0.51f);
    drawLessonCard(page, {body.x, body.y, left, kLessonCard});
    const std::string said = "Touch a child to move it to another table. " + std::string(kCaution);
    const float top = body.y + kLessonCard + kBetween;
    const float note = ui.paragraphHeight(Type::note, left - 4, said);
    drawTables(page, {body.x, top, left, body.bottom() - top - note - 6});
    ui.paragraph(Type::note, body.x + 2, body.bottom() - note, left - 4, kSoft, said);
    drawTomorrowSheet(view, {body.x + left + kGap, body.y, body.width - left - kGap, body.height});
}

}  // namespace wrenlet::desk
