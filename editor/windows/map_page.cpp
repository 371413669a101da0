// The Map page: children down, sounds across, the neediest first, read by mark and ground.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/input.hpp"
#include "editor/windows/keyed.hpp"
#include "editor/windows/page_head.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kNames = 90, kCellsTop = 160, kBar = 10, kBarGap = 4;

std::string cellLabel(const OpenedClass& opened, const MapRow& row, const MapColumn& column) {
    return "cell:" + opened.children[row.child].child.id + "/" + column.cell.skill + "/" +
           column.label;
}

MapShape shapeOf(const Ui& ui, const ClassMap& map, Type labels) {
    MapShape shape;
    shape.rows = map.rows.size();
    for (const MapGroup& group : map.groups)
        shape.groups.push_back({group.count, ui.width(Type::strong, group.heading)});
    for (const MapColumn& column : map.columns)
        shape.label_widths.push_back(ui.width(labels, column.label));
    return shape;
}

/// What can be chosen, in columns, over the page until it is closed.
void drawFilterChoices(View& view, const Area& below) {
    constexpr float kColumn = 178, kRow = 30, kPad = 14;
    Ui& ui = view.ui;
    const auto columns = filterColumns(view.desk.opened(), view.desk.filter());
    std::size_t rows = 0;
    for (const FilterColumn& column : columns) rows = std::max(rows, column.choices.size());
    const float width = kColumn * float(columns.size()) + 2 * kPad;
    const float height =
        std::min(kRow * float(rows + 1) + 2 * kPad, view.frame.body.bottom() - below.bottom() - 8);
    const float x = std::min(below.x, view.width - 16 - width);
    const float scale = ui.scale();
    ImGui::SetNextWindowPos({x * scale, (below.bottom() + 4) * scale});
    ImGui::SetNextWindowSize({width * scale, height * scale});
    if (!ImGui::BeginPopup("filter choices")) return;
    ImDrawList* outer = ui.paintOn(ImGui::GetWindowDrawList());
    const float top = below.bottom() + 4 + kPad - ImGui::GetScrollY() / scale;
    for (std::size_t at = 0; at < columns.size(); ++at) {
        const float left = x + kPad + float(at) * kColumn;
        ui.text(Type::note, left + 8, top + kRow / 2, kSoft, columns[at].heading);
        for (std::size_t row = 0; row < columns[at].choices.size(); ++row) {
            const FilterChoice& choice = columns[at].choices[row];
            const Area area{left, top + float(row + 1) * kRow, kColumn - 8, kRow};
            const auto press = ui.press("filter:" + choice.name, area);
            if (choice.is_chosen || press.hovered)
                ui.fill(area.inset(1), choice.is_chosen ? kPaleDeep : kWash, 6);
            if (press.held) ui.focusRing(area.inset(5), 6);
            ui.text(choice.is_chosen ? Type::strong : Type::body, left + 8, area.middleY(), kInk,
                    ui.fitted(Type::strong, choice.name, kColumn - 24));
            if (press.pressed)
                view.wish([filter = choice.filter](Desk& desk) { desk.filterBy(filter); });
        }
    }
    if (input::pressed(Key::escape)) ImGui::CloseCurrentPopup();
    ui.paintOn(outer);
    ImGui::EndPopup();
}

/// "Show: everything", which opens the choices. Returns its left end.
float drawFilter(View& view, float right, float most) {
    Ui& ui = view.ui;
    const bool is_all = view.desk.filter().isAll();
    const Button way{"map filter",
                     ui.fitted(Type::strong, "Show: " + filterWords(view.desk.filter()), most - 30),
                     is_all ? ButtonKind::outlined : ButtonKind::on};
    const float width = std::min(most, buttonWidth(ui, way));
    const Area area{right - width, 16, width, 34};
    if (button(ui, way, area)) ImGui::OpenPopup("filter choices");
    drawFilterChoices(view, area);
    return area.x;
}

void drawHead(View& view) {
    Ui& ui = view.ui;
    const Gathering& gathering = view.desk.gathering();
    const float x = view.frame.body.x;
    const float right = drawFilter(view, drawPageButtons(view) - 16, 300);
    const float title = ui.text(Type::place, x, kTitleMiddle, kInk, "Class map");
    const std::string counts =
        wording::counted(std::int64_t(view.desk.map().rows.size()), "child", "children") + ", " +
        wording::counted(gathering.answers, "answer") + " on " +
        wording::counted(gathering.days, "day");
    ui.text(Type::body, x + title + 17, kTitleMiddle + 1, kSoft,
            ui.fitted(Type::body, counts, right - (x + title + 17) - 16));
}

float drawLegend(View& view) {
    float x = view.frame.body.x;
    const auto entry = [&](Said said) {
        saidChip(view.ui, said, x, 70);
        x += 30 + view.ui.text(Type::body, x + 30, 70, kInk, wordOf(said)) + 18;
    };
    for (const Said said : kFourWords) entry(said);
    if (view.desk.map().any_shielded) entry(Said::shielded);
    return x;
}

void drawOrder(View& view, float right) {
    const bool by_need = view.desk.order() == RowOrder::most_missed;
    const auto kind = [](bool on) { return on ? ButtonKind::on : ButtonKind::outlined; };
    const Button name{"order:name", "By name", kind(!by_need), ""};
    const Button need{"order:need", "Most missed", kind(by_need), ""};
    const float name_width = buttonWidth(view.ui, name), need_width = buttonWidth(view.ui, need);
    if (button(view.ui, need, {right - name_width - 8 - need_width, 54, need_width, 32}))
        view.wish([](Desk& desk) { desk.orderBy(RowOrder::most_missed); });
    if (button(view.ui, name, {right - name_width, 54, name_width, 32}))
        view.wish([](Desk& desk) { desk.orderBy(RowOrder::by_name); });
}

// Brings the place pointed at into view after it moved, and takes the wheel.
MapLayout scrolled(View& view, const Area& cells, const MapShape& shape) {
    MapScroll& scroll = view.scroll;
    const MapPoint point = view.desk.point();
    MapLayout laid = layMap(cells, shape, scroll.first_row, scroll.first_column);
    if (!(scroll.seen == point)) {
        scroll.first_row = std::min(scroll.first_row, point.row);
        scroll.first_column = std::min(scroll.first_column, point.column);
        laid = layMap(cells, shape, scroll.first_row, scroll.first_column);
        while (laid.rows.back().index < point.row)
            laid = layMap(cells, shape, ++scroll.first_row, scroll.first_column);
        while (laid.columns.back().index < point.column)
            laid = layMap(cells, shape, scroll.first_row, ++scroll.first_column);
        scroll.seen = point;
    }
    const ImGuiIO& io = ImGui::GetIO();
    const auto turned = [](std::size_t first, float wheel) {
        const auto to = static_cast<std::int64_t>(first) - static_cast<std::int64_t>(wheel);
        return static_cast<std::size_t>(std::max<std::int64_t>(0, to));
    };
    if (io.MouseWheel != 0 && !laid.all_rows && !io.KeyShift) {
        scroll.first_row = turned(scroll.first_row, io.MouseWheel);
    } else if (io.MouseWheel != 0 && !laid.all_columns) {
        scroll.first_column = turned(scroll.first_column, 2 * io.MouseWheel);
    }
    if (io.MouseWheelH != 0) scroll.first_column = turned(scroll.first_column, -2 * io.MouseWheelH);
    laid = layMap(cells, shape, scroll.first_row, scroll.first_column);
    scroll.first_row = laid.first_row;
    scroll.first_column = laid.first_column;
    return laid;
}

void drawColumnHeads(View& view, const MapLayout& laid, Type labels, float right) {
    Ui& ui = view.ui;
    const ClassMap& map = view.desk.map();
    const float names_right = view.frame.body.x + kNames - 10;
    ui.text(Type::note, names_right, 129, kSoft, "misses \u2193", Align::right);
    ui.text(Type::note, names_right, 149, kSoft, "missed by \u2192", Align::right);
    for (std::size_t at = 0; at < laid.headings.size(); ++at) {
        const MapLayout::Heading& heading = laid.headings[at];
        // the last one may stand over what is left free beside it
        const bool is_last = at + 1 == laid.headings.size();
        const float room = (is_last ? right : laid.headings[at + 1].x - 6) - heading.x - 2;
        const std::string lead = heading.goes_on ? "\u2190 " : "";
        const std::string& name = map.groups[heading.group].heading;
        const bool is_legible = ui.width(Type::strong, lead + name) <= room || room > 44;
        ui.text(Type::strong, heading.x + 2, 104, kInk,
                is_legible ? ui.fitted(Type::strong, lead + name, room) : lead);
        ui.level(heading.x, 114, heading.width - 1, kInk, 2);
    }
    const int third = std::max(2, static_cast<int>(map.rows.size()) / 3);
    for (const MapLayout::Column& column : laid.columns) {
        const MapColumn& shown = map.columns[column.index];
        const float middle = column.x + (column.width - 1) / 2;
        const bool pointed = column.index == view.desk.point().column;
        if (pointed) {
            const float wide = std::max(26.f, ui.width(labels, shown.label) + 8);
            ui.fill({middle - wide / 2, 118, wide, 23}, kInk, 5);
        }
        ui.text(labels, middle, 129, pointed ? kPaper : kInk, shown.label, Align::middle);
        if (shown.missed > 0)
            ui.text(Type::figure, middle, 150, shown.missed >= third ? kBrick : kSoft,
                    wording::figure(shown.missed), Align::middle);
    }
}

void drawRows(View& view, const MapLayout& laid) {
    Ui& ui = view.ui;
    const Desk& desk = view.desk;
    const ClassMap& map = desk.map();
    const float x = view.frame.body.x;
    for (const MapLayout::Row& row : laid.rows) {
        const MapRow& shown = map.rows[row.index];
        const practice::ChildProgress& child = desk.opened().children[shown.child];
        const float middle = row.y + (laid.row_height - 1) / 2;
        const bool pointed = row.index == desk.point().row;
        const std::string figure = shown.missed > 0 ? wording::figure(shown.missed) : "";
        const std::string name = ui.fitted(Type::body, child.child.name, 58);
        if (pointed) {
            const float wide = ui.width(Type::body, name) + 14;
            ui.fill({x - 7, row.y, wide, laid.row_height - 1}, kInk, 5);
        }
        const Area name_area{x - 7, row.y, kNames - 3, laid.row_height - 1};
        if (ui.press("name:" + child.child.id, name_area, false).pressed)
            view.wish([at = shown.child](Desk& to) { to.openChild(at); });
        ui.text(Type::body, x, middle, pointed ? kPaper : kInk, name);
        ui.text(Type::figure, x + kNames - 10, middle, shown.missed >= 5 ? kBrick : kSoft, figure,
                Align::right);
        for (const MapLayout::Column& column : laid.columns) {
            const Area cell{column.x, row.y, column.width - 1, laid.row_height - 1};
            ui.note(cellLabel(desk.opened(), shown, map.columns[column.index]), cell);
            saidCell(ui, shown.cells[column.index].said, cell);
        }
    }
    for (const MapLayout::Row& row : laid.rows)
        for (const MapLayout::Column& column : laid.columns)
            if (MapPoint{row.index, column.index} == desk.point())
                ui.edge(Area{column.x, row.y, column.width - 1, laid.row_height - 1}.inset(-2),
                        kInk, 4, 2);
}

std::optional<MapPoint> pointUnderMouse(const Ui& ui, const MapLayout& laid) {
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    const float x = mouse.x / ui.scale(), y = mouse.y / ui.scale();
    for (const MapLayout::Row& row : laid.rows)
        for (const MapLayout::Column& column : laid.columns)
            if (x >= column.x && x < column.x + column.width && y >= row.y &&
                y < row.y + laid.row_height)
                return MapPoint{row.index, column.index};
    return std::nullopt;
}

// A mouse points by moving and opens by a press. A finger's first touch only points; touching the
// same place again opens it.
void followPointer(View& view, const MapLayout& laid, const Area& cells) {
    const Ui::Press press = view.ui.press("map", cells, false);
    const auto under = press.hovered ? pointUnderMouse(view.ui, laid) : std::nullopt;
    if (!under) return;
    const ImGuiIO& io = ImGui::GetIO();
    const bool here = *under == view.desk.point();
    if (ImGui::IsMouseClicked(0)) view.scroll.armed = here;
    const bool moved = io.MousePos.x != view.scroll.mouse.x ||
                       io.MousePos.y != view.scroll.mouse.y || ImGui::IsMouseClicked(0);
    view.scroll.mouse = io.MousePos;
    if (moved && !here) {
        view.scroll.seen = *under;
        view.wish([to = *under](Desk& desk) { desk.pointAt(to); });
    }
    if (press.pressed && view.scroll.armed && here)
        view.wish([](Desk& desk) { desk.openPointed(); });
}

void takeKeys(View& view) {
    const auto move = [&](int rows, int columns) {
        view.wish([=](Desk& desk) { desk.movePoint(rows, columns); });
    };
    const int whole = static_cast<int>(view.desk.map().columns.size());
    if (hit(view, Does::left)) move(0, -1);
    if (hit(view, Does::right)) move(0, 1);
    if (hit(view, Does::up)) move(-1, 0);
    if (hit(view, Does::down)) move(1, 0);
    if (hit(view, Does::first)) move(0, -whole);
    if (hit(view, Does::last)) move(0, whole);
    if (hit(view, Does::page_up)) move(-5, 0);
    if (hit(view, Does::page_down)) move(5, 0);
    if (hit(view, Does::open)) view.wish([](Desk& desk) { desk.openPointed(); });
}

}  // namespace

void drawMapPage(View& view) {
    Ui& ui = view.ui;
    const Area body = view.frame.body;
    const float right = view.frame.pane_open ? body.right() - kPaneWidth - 22 : body.right();
    drawHead(view);
    drawOrder(view, right);
    drawLegend(view);
    if (view.desk.map().columns.empty()) {
        emptyPlace(ui, {body.x, 100, right - body.x, body.bottom() - 100}, "Nothing was asked here",
                   "No answer belongs to " + filterWords(view.desk.filter()) +
                       ". Choose something else under Show.");
        return;
    }

    Type labels = Type::title;
    MapShape shape = shapeOf(ui, view.desk.map(), labels);
    const float strip = view.frame.pane_open ? 0 : 34;
    Area cells{body.x + kNames, kCellsTop, right - body.x - kNames,
               body.bottom() - kCellsTop - strip};
    MapLayout free = layMap(cells, shape, 0, 0);
    if (!free.all_columns) {
        labels = Type::strong;
        shape = shapeOf(ui, view.desk.map(), labels);
        free = layMap(cells, shape, 0, 0);
    }
    const float bar = ui.finger() ? 28 : kBar;
    if (!free.all_columns) cells.height -= bar + kBarGap;
    if (!layMap(cells, shape, 0, 0).all_rows) cells.width -= bar + kBarGap;
    takeKeys(view);
    const MapLayout laid = scrolled(view, cells, shape);
    drawColumnHeads(view, laid, labels, cells.right());
    drawRows(view, laid);
    followPointer(view, laid, cells);
    if (!laid.all_columns)
        view.scroll.first_column =
            drawScrollBar(ui,
                          {"map across", laid.first_column, laid.columns.size(),
                           shape.label_widths.size(), false},
                          {cells.x, cells.bottom() + kBarGap, cells.width, bar});
    if (!laid.all_rows)
        view.scroll.first_row =
            drawScrollBar(ui, {"map down", laid.first_row, laid.rows.size(), shape.rows, true},
                          {cells.right() + kBarGap, cells.y, bar, cells.height});
    if (view.frame.pane_open) {
        drawStandoutPane(view, {body.right() - kPaneWidth, 70, kPaneWidth, body.bottom() - 70});
    } else {
        drawReadingStrip(view, {body.x, body.bottom() - 28, body.width, 28});
    }
}

}  // namespace wrenlet::desk
