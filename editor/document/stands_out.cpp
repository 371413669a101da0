#include "editor/document/stands_out.hpp"

#include <algorithm>
#include <map>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::size_t kMostMissed = 3;

// The sound in words, with its skill where another skill asks the same one.
std::string nameOf(const ClassMap& map, const MapColumn& column) {
    const std::string place = wording::place(column.cell.turns_on);
    const auto same = std::count_if(
        map.columns.begin(), map.columns.end(),
        [&](const MapColumn& other) { return other.cell.turns_on == column.cell.turns_on; });
    if (same < 2) return wording::capital(place);
    return map.groups[column.group].heading + ", " + place;
}

Standout missedBy(const OpenedClass& opened, const ClassMap& map, std::size_t at) {
    const MapColumn& column = map.columns[at];
    std::vector<std::string> names;
    std::map<std::string, int> taken;
    for (const MapRow& row : map.rows) {
        const MapCell& cell = row.cells[at];
        if (cell.said != Said::missed || !cell.line) continue;
        const practice::ChildProgress& child = opened.children[row.child];
        names.push_back(child.child.name);
        for (const auto& [means, times] : child.lines[*cell.line].evidence.taken)
            taken[means] += times;
    }
    Standout out{Said::missed, nameOf(map, column), {}, at};
    out.head += column.missed == 1 ? ": 1 child misses it"
                                   : ": " + wording::figure(column.missed) + " miss it";
    out.body = wording::names(names, 4) + ".";
    const auto most =
        std::max_element(taken.begin(), taken.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most != taken.end() && most->second > 2 && !most->first.empty())
        out.body += " Most often: " + most->first + ".";
    return out;
}

// "–t and –p", "–t, –p and 4 more", of the columns that `counts` picks.
template <class Counts>
std::vector<std::string> labelsWhere(const ClassMap& map, Counts counts) {
    std::vector<std::string> labels;
    for (const MapColumn& column : map.columns)
        if (counts(column)) labels.push_back(column.label);
    return labels;
}

}  // namespace

std::vector<Standout> standsOut(const OpenedClass& opened, const ClassMap& map) {
    std::vector<Standout> all;
    std::vector<std::size_t> missed;
    for (std::size_t at = 0; at < map.columns.size(); ++at)
        if (map.columns[at].missed > 0) missed.push_back(at);
    std::stable_sort(missed.begin(), missed.end(), [&](std::size_t a, std::size_t b) {
        return map.columns[a].missed > map.columns[b].missed;
    });
    for (std::size_t i = 0; i < missed.size() && i < kMostMissed; ++i)
        all.push_back(missedBy(opened, map, missed[i]));
    if (missed.empty())
        all.push_back({Said::steady, "Nothing is missed", "No sound is called missed yet.", {}});

    const auto played = std::count_if(opened.children.begin(), opened.children.end(),
                                      [](const auto& child) { return child.answers > 0; });
    const auto growing = labelsWhere(map, [&](const MapColumn& column) {
        return column.missed == 0 && column.growing * 3 >= played && column.growing > 0;
    });
    if (!growing.empty())
        all.push_back({Said::growing,
                       "Growing: " + wording::names(growing, 4),
                       "For a third of the children or more. Leave them in play.",
                       {}});
    const auto steady = labelsWhere(map, [&](const MapColumn& column) {
        return column.missed == 0 && column.steady * 5 >= played * 4 && column.steady > 0;
    });
    if (!steady.empty())
        all.push_back({Said::steady,
                       "Steady: " + wording::names(steady, 4),
                       "For nearly all. No lesson needed.",
                       {}});

    std::int64_t too_little = 0;
    for (const MapColumn& column : map.columns) too_little += column.too_little;
    if (too_little > 0)
        all.push_back({Said::too_little,
                       wording::counted(too_little, "place") + " with too few answers",
                       "The tablets ask them again.",
                       {}});
    std::vector<std::string> waiting;
    for (const practice::ChildProgress& child : opened.children)
        if (child.answers == 0) waiting.push_back(child.child.name);
    if (!waiting.empty())
        all.push_back({Said::not_asked, "No answers yet", wording::names(waiting) + ".", {}});
    return all;
}

}  // namespace wrenlet::desk
