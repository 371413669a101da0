#include "editor/document/class_map.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

std::size_t placeInTable(const std::string& skill) {
    const auto known = exercise::skillFromId(skill);
    const auto table = exercise::skillTable();
    for (std::size_t i = 0; known && i < table.size(); ++i)
        if (table[i].skill == *known) return i;
    return table.size();
}

void count(MapColumn& column, Said said) {
    switch (said) {
        case Said::missed:
            ++column.missed;
            break;
        case Said::growing:
            ++column.growing;
            break;
        case Said::steady:
            ++column.steady;
            break;
        case Said::too_little:
            ++column.too_little;
            break;
        case Said::shielded:
        case Said::not_asked:
            break;
    }
}

std::vector<MapColumn> columnsOf(const OpenedClass& opened) {
    std::map<practice::Cell, MapColumn> met;
    for (const practice::ChildProgress& child : opened.children) {
        for (const practice::SoundLine& line : child.lines) {
            MapColumn& column = met[line.cell];
            count(column, saidOf(line));
        }
    }
    std::vector<MapColumn> columns;
    for (auto& [cell, column] : met) {
        column.cell = cell;
        column.label = wording::placeShort(cell.turns_on);
        columns.push_back(std::move(column));
    }
    std::stable_sort(columns.begin(), columns.end(), [](const MapColumn& a, const MapColumn& b) {
        const auto place_a = placeInTable(a.cell.skill), place_b = placeInTable(b.cell.skill);
        if (place_a != place_b) return place_a < place_b;
        if (a.cell.skill != b.cell.skill) return a.cell.skill < b.cell.skill;
        if (a.missed != b.missed) return a.missed > b.missed;
        if (a.growing != b.growing) return a.growing > b.growing;
        return a.steady > b.steady;
    });
    return columns;
}

}  // namespace

ClassMap mapOf(const OpenedClass& opened, RowOrder order) {
    ClassMap map;
    map.columns = columnsOf(opened);
    std::map<practice::Cell, std::size_t> column_of;
    for (std::size_t at = 0; at < map.columns.size(); ++at) {
        MapColumn& column = map.columns[at];
        if (map.groups.empty() || map.groups.back().skill != column.cell.skill)
            map.groups.push_back({column.cell.skill, wording::skill(column.cell.skill), at, 0});
        ++map.groups.back().count;
        column.group = map.groups.size() - 1;
        column_of[column.cell] = at;
    }
    for (std::size_t at = 0; at < opened.children.size(); ++at) {
        MapRow row;
        row.child = at;
        row.cells.resize(map.columns.size());
        const auto& lines = opened.children[at].lines;
        for (std::size_t line = 0; line < lines.size(); ++line) {
            const Said said = saidOf(lines[line]);
            row.cells[column_of[lines[line].cell]] = {said, line};
            if (said == Said::missed) ++row.missed;
            if (said == Said::shielded) map.any_shielded = true;
        }
        map.rows.push_back(std::move(row));
    }
    std::stable_sort(map.rows.begin(), map.rows.end(), [&](const MapRow& a, const MapRow& b) {
        if (order == RowOrder::most_missed && a.missed != b.missed) return a.missed > b.missed;
        return opened.children[a.child].child.name < opened.children[b.child].child.name;
    });
    return map;
}

std::string examplesOf(const OpenedClass& opened, const practice::Cell& cell, std::size_t most) {
    const auto words = opened.examples.find(cell);
    if (words == opened.examples.end()) return {};
    std::string text;
    for (std::size_t i = 0; i < std::min(most, words->second.size()); ++i)
        text += (i > 0 ? ", " : "") + words->second[i];
    return text;
}

}  // namespace wrenlet::desk
