// The map's right-hand pane: what could not be read, what stands out, and at its foot the place
// pointed at, read out, so that nothing has to cover the map.
#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/windows/view.hpp"
#include "editor/windows/widgets.hpp"

namespace wrenlet::desk {

namespace {

using namespace colour;

constexpr float kPad = 17, kIndent = 32, kReading = 188;

float drawProblems(View& view, const Area& area, float y) {
    constexpr std::size_t kMost = 2;
    const auto& problems = view.desk.opened().problems;
    for (std::size_t at = 0; at < problems.size() && at < kMost; ++at) {
        const Problem& problem = problems[at];
        const std::string body =
            problem.where + (problem.way_out.empty() ? "" : ". ") + problem.way_out;
        y += warningCard(view.ui, area.x + 8, y, area.width - 16, problem.what, body, true) + 8;
    }
    if (problems.size() > kMost) {
        view.ui.text(
            Type::note, area.x + kPad, y + 8, kSoft,
            "and " + wording::counted(std::int64_t(problems.size() - kMost), "more", "more"));
        y += 22;
    }
    return y;
}

}  // namespace

void drawStandoutPane(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Area reading{area.x, area.bottom() - kReading, area.width, kReading};
    card(ui, area);
    float y = area.y + 8;
    if (!view.desk.opened().problems.empty()) y = drawProblems(view, area, y);
    ui.text(Type::title, area.x + kPad, y + 17, kInk, "What stands out");
    y += 38;
    const float room = area.width - 2 * kPad - kIndent + 6;
    std::size_t number = 0;
    for (const Standout& standout : view.desk.standouts()) {
        const float head = ui.paragraphHeight(Type::strong, room, standout.head);
        const float height = head + ui.paragraphHeight(Type::body, room, standout.body);
        if (y + height > reading.y - 6) break;
        const Area place{area.x + 8, y - 3, area.width - 16, height + 6};
        if (standout.column) {
            const auto press = ui.press("standout:" + std::to_string(number++), place);
            if (press.hovered) ui.fill(place, kWash, 6);
            if (press.held) ui.focusRing(place.inset(3), 6);
            if (press.pressed)
                view.wish([at = *standout.column](Desk& desk) {
                    desk.pointAt({desk.point().row, at});
                });
        }
        saidChip(ui, standout.said, area.x + kPad, y + 10);
        ui.paragraph(Type::strong, area.x + kPad + kIndent, y, room, kInk, standout.head);
        ui.paragraph(Type::body, area.x + kPad + kIndent, y + head, room, kSoft, standout.body);
        y += height + 11;
    }
    drawReading(view, reading);
}

void drawReading(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Desk& desk = view.desk;
    const ClassMap& map = desk.map();
    const MapPoint point = desk.point();
    if (point.row >= map.rows.size() || point.column >= map.columns.size()) return;
    const MapColumn& column = map.columns[point.column];
    const auto& child = desk.opened().children[map.rows[point.row].child].child;
    ui.fill({area.x + 1, area.y, area.width - 2, area.height - 1}, kPaper, 10, Corners::below);
    ui.level(area.x + 1, area.y, area.width - 2, kLine);
    ui.note("reading", area);

    const float x = area.x + kPad, width = area.width - 2 * kPad;
    float y = area.y + 22;
    ui.text(
        Type::strong, x, y, kInk,
        ui.fitted(Type::strong, child.name + ", " + wording::place(column.cell.turns_on), width));
    std::string task = map.groups[column.group].heading;
    if (!desk.pointedExamples().empty()) task += ", as in " + desk.pointedExamples();
    ui.text(Type::note, x, y += 20, kSoft, ui.fitted(Type::note, task, width));

    const practice::SoundLine* line = desk.pointedLine();
    const Said said = line ? saidOf(*line) : Said::not_asked;
    y += 26;
    saidChip(ui, said, x, y);
    ui.text(Type::body, x + 32, y, kInk, wordOf(said));
    if (line && line->evidence.seen > 0) {
        const practice::Evidence& evidence = line->evidence;
        ui.text(
            Type::body, x + width, y, kInk,
            wording::figure(evidence.right) + " of " + wording::figure(evidence.seen) + " right",
            Align::right);
        y += 28;
        rangeBar(ui, {x, y - 10, width, 20}, said, likelyRange(evidence.right, evidence.seen),
                 evidence.guess);
        y += 18;
        const std::string taken = takenSentence(*line);
        const bool is_long = ui.paragraphHeight(Type::body, width, taken) > 41;
        ui.paragraph(is_long ? Type::note : Type::body, x, y, width, kInk, taken);
    } else {
        y += 18;
        ui.paragraph(Type::body, x, y, width, kInk, "Nothing asked here yet.");
    }
    ui.text(Type::note, x, area.bottom() - 18, kSoft,
            ui.fitted(Type::note, "Enter opens the page of " + child.name + ".", width));
}

void drawReadingStrip(View& view, const Area& area) {
    Ui& ui = view.ui;
    const Desk& desk = view.desk;
    const ClassMap& map = desk.map();
    const MapPoint point = desk.point();
    if (point.row >= map.rows.size() || point.column >= map.columns.size()) return;
    const auto& child = desk.opened().children[map.rows[point.row].child].child;
    const practice::SoundLine* line = desk.pointedLine();
    const Said said = line ? saidOf(*line) : Said::not_asked;
    ui.note("reading", area);
    float x = area.x;
    saidChip(ui, said, x, area.middleY());
    x += 32;
    x += ui.text(Type::strong, x, area.middleY(), kInk,
                 child.name + ", " + wording::place(map.columns[point.column].cell.turns_on)) +
         16;
    std::string text(wordOf(said));
    if (line && line->evidence.seen > 0)
        text += ", " + wording::figure(line->evidence.right) + " of " +
                wording::figure(line->evidence.seen) + " right. " + takenSentence(*line);
    ui.text(Type::body, x, area.middleY(), kInk, ui.fitted(Type::body, text, area.right() - x));
}

}  // namespace wrenlet::desk
