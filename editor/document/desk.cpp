#include "editor/document/desk.hpp"

#include <algorithm>
#include <utility>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

std::size_t moved(std::size_t from, int by, std::size_t count) {
    const auto to = static_cast<std::int64_t>(from) + by;
    return static_cast<std::size_t>(std::clamp<std::int64_t>(to, 0, std::int64_t(count) - 1));
}

}  // namespace

Desk::Desk(OpenedClass opened) {
    replace(std::move(opened));
}

void Desk::replace(OpenedClass opened) {
    const std::string child_id = opened_.children.empty() ? "" : opened_.children[child_].child.id;
    opened_ = std::move(opened);
    narrow();
    const auto same =
        std::find_if(opened_.children.begin(), opened_.children.end(),
                     [&](const auto& progress) { return progress.child.id == child_id; });
    const bool stays = same != opened_.children.end();
    rebuildMap();
    if (stays) {
        child_ = static_cast<std::size_t>(same - opened_.children.begin());
    } else {
        child_ = map_.rows.empty() ? 0 : map_.rows.front().child;
        skill_.clear();
    }
    if (state() != ClassState::ready && page_ == Page::child) page_ = Page::map;
    rebuildChild();
}

void Desk::narrow() {
    narrowed_.reset();
    if (!filter_.isAll()) narrowed_ = narrowed(opened_, filter_);
    gathering_ = gatheringOf(shown());
}

void Desk::filterBy(const MapFilter& filter) {
    if (filter == filter_) return;
    filter_ = filter;
    narrow();
    rebuildMap();
}

void Desk::rebuildMap() {
    std::string child_id;
    practice::Cell cell;
    if (point_.row < map_.rows.size() && map_.rows[point_.row].child < opened_.children.size())
        child_id = opened_.children[map_.rows[point_.row].child].child.id;
    if (point_.column < map_.columns.size()) cell = map_.columns[point_.column].cell;

    map_ = mapOf(shown(), order_);
    standouts_ = standsOut(shown(), map_);
    MapPoint point;
    for (std::size_t row = 0; row < map_.rows.size(); ++row)
        if (opened_.children[map_.rows[row].child].child.id == child_id) point.row = row;
    for (std::size_t column = 0; column < map_.columns.size(); ++column)
        if (map_.columns[column].cell == cell) point.column = column;
    pointAt(point);
}

void Desk::rebuildChild() {
    story_ = {};
    if (!opened_.children.empty()) story_ = storyOf(opened_, child_);
    const bool has_skill = std::any_of(story_.groups.begin(), story_.groups.end(),
                                       [&](const auto& group) { return group.skill == skill_; });
    if (!has_skill) skill_ = story_.groups.empty() ? "" : story_.groups.front().skill;
    rebuildSkill();
}

void Desk::rebuildSkill() {
    choices_ = {};
    course_ = {};
    why_.reset();
    if (opened_.children.empty()) return;
    const std::string& id = opened_.children[child_].child.id;
    choices_ = choicesTaken(opened_, id, skill_);
    course_ = courseOf(opened_, id, skill_);
}

const practice::SoundLine* Desk::pointedLine() const {
    if (point_.row >= map_.rows.size() || point_.column >= map_.columns.size()) return nullptr;
    const MapRow& row = map_.rows[point_.row];
    const auto& line = row.cells[point_.column].line;
    return line ? &shown().children[row.child].lines[*line] : nullptr;
}

void Desk::orderBy(RowOrder order) {
    if (order == order_) return;
    order_ = order;
    rebuildMap();
}

void Desk::pointAt(MapPoint point) {
    point_ = point;
    pointed_examples_.clear();
    if (point.column < map_.columns.size())
        pointed_examples_ = examplesOf(shown(), map_.columns[point.column].cell, 3);
}

void Desk::movePoint(int rows, int columns) {
    if (map_.rows.empty() || map_.columns.empty()) return;
    pointAt({moved(point_.row, rows, map_.rows.size()),
             moved(point_.column, columns, map_.columns.size())});
}

void Desk::openPointed() {
    if (point_.row >= map_.rows.size()) return;
    skill_ = point_.column < map_.columns.size() ? map_.columns[point_.column].cell.skill : "";
    openChild(map_.rows[point_.row].child);
}

void Desk::openChild(std::size_t child) {
    page_ = Page::child;
    takeChild(child);
}

void Desk::takeChild(std::size_t child) {
    child_ = child;
    if (const auto row = rowOf(child)) pointAt({*row, point_.column});
    rebuildChild();
}

void Desk::chooseSkill(const std::string& skill) {
    skill_ = skill;
    rebuildSkill();
}

void Desk::askWhy(const practice::Cell& cell) {
    if (opened_.children.empty()) return;
    if (cell.skill != skill_) chooseSkill(cell.skill);
    why_ = whyOf(opened_, child_, cell);
}

void Desk::showChild() {
    if (opened_.children.empty()) return;
    page_ = Page::child;
}

std::optional<std::size_t> Desk::rowOf(std::size_t child) const {
    for (std::size_t row = 0; row < map_.rows.size(); ++row)
        if (map_.rows[row].child == child) return row;
    return std::nullopt;
}

std::optional<std::size_t> Desk::neighbour(int step) const {
    const auto row = rowOf(child_);
    if (!row) return std::nullopt;
    const auto to = static_cast<std::int64_t>(*row) + step;
    if (to < 0 || to >= static_cast<std::int64_t>(map_.rows.size())) return std::nullopt;
    return map_.rows[static_cast<std::size_t>(to)].child;
}

NextStep Desk::next() const {
    using Kind = NextStep::Kind;
    if (state() == ClassState::nobody_played)
        return {Kind::gather, "look again after the first session", "Look again", 0};
    if (state() != ClassState::ready)
        return {Kind::gather, "put class.json right, then look again", "Look again", 0};
    std::vector<const MapRow*> needy;
    for (const MapRow& row : map_.rows)
        if (row.missed > 0) needy.push_back(&row);
    std::stable_sort(needy.begin(), needy.end(),
                     [](const MapRow* a, const MapRow* b) { return a->missed > b->missed; });
    const MapRow* to = needy.empty() ? nullptr : needy.front();
    if (page_ == Page::child) {
        const auto here = std::find_if(needy.begin(), needy.end(),
                                       [&](const MapRow* row) { return row->child == child_; });
        if (here != needy.end()) to = here + 1 != needy.end() ? here[1] : nullptr;
        if (!to) return {Kind::see_map, "the whole class", "See the map", 0};
    }
    if (!to)
        return {Kind::gather, "nothing is missed; gather after the next session", "Gather again",
                0};
    const std::string& name = opened_.children[to->child].child.name;
    return {Kind::see_child, name + " misses " + wording::counted(to->missed, "place"),
            "See " + name, to->child};
}

}  // namespace wrenlet::desk
