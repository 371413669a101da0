#include "content/exercise/item.hpp"

#include <algorithm>
#include <array>

namespace wrenlet::exercise {

namespace {

// In the order of Position.
constexpr std::array<std::string_view, 6> kPositions = {"first", "middle", "last",
                                                        "rime",  "whole",  "word-count"};

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
    for (const Choice& choice : item.choices) {
        id += mark;
        id += choice.id;
        mark = '+';
    }
    return id;
}

bool sameChoices(const Item& a, const Item& b) {
    return std::equal(a.choices.begin(), a.choices.end(), b.choices.begin(), b.choices.end(),
                      [](const Choice& x, const Choice& y) { return x.id == y.id; });
}

}  // namespace wrenlet::exercise
