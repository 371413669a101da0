#include "content/exercise/item.hpp"

#include <algorithm>
#include <array>

namespace wrenlet::exercise {

namespace {

// In the order of Position.
constexpr std::array<std::string_view, 11> kPositions = {
    "first", "middle",     "last",      "rime", "whole", "word-count",
    "count", "first-part", "last-part", "tune", "letter"};

}  // namespace

std::string_view positionId(Position position) {
    return kPositions[static_cast<std::size_t>(position)];
}

Position positionFromId(std::string_view id) {
    const auto found = std::find(kPositions.begin(), kPositions.end(), id);
    return found == kPositions.end() ? Position::first
                                     : static_cast<Position>(found - kPositions.begin());
}

std::string itemId(const Item& item) {
    std::string id(rowOf(item.skill).id);
    id += '/';
    id += item.subject;
    char mark = '/';
    const Mechanic mechanic = mechanicOf(item);
    if (mechanic == Mechanic::change || item.skill.task == Task::rhyme_judge)
        for (const Part& part : item.parts) {
            id += mark;
            id += part.clip;
            mark = '+';
        }
    mark = '/';
    for (const Choice& choice : item.choices) {
        id += mark;
        id += choice.id;
        mark = '+';
    }
    return id;
}

bool isSoundClip(std::string_view id) {
    return id.substr(0, 6) == "sound:" || id.substr(0, 5) == "part:";
}

Mechanic mechanicOf(Skill skill, std::string_view subject) {
    const Task task = skill.task;
    if ((task == Task::first || task == Task::last || task == Task::middle) &&
        !isSoundClip(subject))
        return Mechanic::sort;
    return rowOf(skill).mechanic;
}

Mechanic mechanicOf(const Item& item) {
    return mechanicOf(item.skill, item.subject);
}

bool keepsOrder(const Item& item) {
    const Mechanic mechanic = rowOf(item.skill).mechanic;
    return mechanic == Mechanic::count || mechanic == Mechanic::split ||
           item.skill.task == Task::rhyme_judge;
}

bool sameChoices(const Item& a, const Item& b) {
    return std::equal(a.choices.begin(), a.choices.end(), b.choices.begin(), b.choices.end(),
                      [](const Choice& x, const Choice& y) { return x.id == y.id; });
}

}  // namespace wrenlet::exercise
