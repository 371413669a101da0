#include "editor/document/map_filter.hpp"

#include <algorithm>
#include <array>
#include <set>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr std::array<int, 3> kDays{1, 5, 20};
constexpr std::size_t kMostUnits = 12;  // the ones whose answers are newest

std::string positionWord(exercise::Position position) {
    using exercise::Position;
    switch (position) {
        case Position::first:
            return "first sound";
        case Position::middle:
            return "middle sound";
        case Position::last:
            return "last sound";
        case Position::rime:
            return "rhyme";
        case Position::whole:
        case Position::first_part:
        case Position::last_part:
            return "parts";
        case Position::word_count:
        case Position::count:
            return "counting";
        case Position::tune:
            return "sentence tune";
        case Position::letter:
            return "letters";
    }
    return "";
}

std::string daysWord(int days) {
    return days == 1 ? "newest day" : "newest " + wording::figure(days) + " days";
}

/// From when on it is among the newest days played.
std::int64_t firstOf(const OpenedClass& opened, int days) {
    std::set<std::int64_t> played;
    for (const practice::Response& response : opened.responses) played.insert(response.day);
    auto day = played.rbegin();
    for (int i = 1; i < days && day != played.rend() && std::next(day) != played.rend(); ++i) ++day;
    return day == played.rend() ? 0 : *day;
}

}  // namespace

std::string unitOf(std::string_view pack_name) {
    return std::string(pack_name.substr(0, pack_name.rfind(' ')));
}

std::vector<FilterColumn> filterColumns(const OpenedClass& opened, const MapFilter& now) {
    std::set<std::string> skills;
    std::set<exercise::Position> positions;
    for (const practice::ChildProgress& child : opened.children)
        for (const practice::SoundLine& line : child.lines) {
            skills.insert(line.cell.skill);
            positions.insert(line.cell.turns_on.position);
        }
    std::vector<std::string> units;
    for (auto response = opened.responses.rbegin(); response != opened.responses.rend(); ++response)
        if (const std::string unit = unitOf(response->pack);
            units.size() < kMostUnits && std::find(units.begin(), units.end(), unit) == units.end())
            units.push_back(unit);

    std::vector<FilterColumn> columns{{"Task", {}}, {"Place", {}}, {"Unit", {}}, {"Days", {}}};
    const auto offer = [&](std::size_t column, const std::string& name, auto change) {
        MapFilter filter = now;
        change(filter);
        columns[column].choices.push_back({name, filter, filter == now});
    };
    offer(0, "all tasks", [](MapFilter& filter) { filter.skill.clear(); });
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (const std::string id(row.id); skills.count(id) > 0)
            offer(0, wording::skill(id), [&](MapFilter& filter) { filter.skill = id; });
    offer(1, "all places", [](MapFilter& filter) { filter.position.reset(); });
    for (const exercise::Position position : positions)
        offer(1, positionWord(position), [&](MapFilter& filter) { filter.position = position; });
    offer(2, "all units", [](MapFilter& filter) { filter.unit.clear(); });
    for (const std::string& unit : units)
        offer(2, unit, [&](MapFilter& filter) { filter.unit = unit; });
    offer(3, "all days", [](MapFilter& filter) { filter.days = 0; });
    for (const int days : kDays)
        offer(3, daysWord(days), [&](MapFilter& filter) { filter.days = days; });
    return columns;
}

std::string filterWords(const MapFilter& filter) {
    std::string words;
    const auto add = [&](const std::string& word) { words += (words.empty() ? "" : ", ") + word; };
    if (!filter.skill.empty()) add(wording::skill(filter.skill));
    if (filter.position) add(positionWord(*filter.position));
    if (!filter.unit.empty()) add(filter.unit);
    if (filter.days > 0) add(daysWord(filter.days));
    return words.empty() ? "everything" : words;
}

OpenedClass narrowed(const OpenedClass& opened, const MapFilter& filter) {
    OpenedClass made = opened;
    if (!filter.unit.empty() || filter.days > 0) {
        const std::int64_t from = filter.days > 0 ? firstOf(opened, filter.days) : 0;
        std::erase_if(made.responses, [&](const practice::Response& response) {
            return (filter.days > 0 && response.day < from) ||
                   (!filter.unit.empty() && unitOf(response.pack.string()) != filter.unit);
        });
        std::erase_if(made.heard, [&](const practice::Heard& one) {
            return !filter.unit.empty() || one.day < from;
        });
        made = withList(made, opened.list);
    }
    for (practice::ChildProgress& child : made.children)
        std::erase_if(child.lines, [&](const practice::SoundLine& line) {
            return (!filter.skill.empty() && line.cell.skill != filter.skill) ||
                   (filter.position && line.cell.turns_on.position != *filter.position);
        });
    return made;
}

}  // namespace wrenlet::desk
