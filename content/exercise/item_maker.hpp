// Turns a unit's words into items of one skill. Foils are graded by the distance of their sounds,
// never by spelling, and an item with two right answers is never made.
#pragma once

#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// Every item of `skill` that these words and sentences give, in an order that depends on them
/// alone. Empty when there are too few.
std::vector<Item> makeItems(const Vocabulary& vocabulary, Skill skill);

/// Why `item` would be unfair with these words, or empty if it is fair: no right answer or two,
/// a foil that is right too, a word without a picture where one is shown, a clip that no word has.
std::vector<std::string> unfairness(const Item& item, const Vocabulary& vocabulary);

}  // namespace wrenlet::exercise
