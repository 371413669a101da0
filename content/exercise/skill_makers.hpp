// The makers of each task's items. Each takes the words as they are and gives items in an order
// that depends on them alone; which words a task excludes, and why, is said in each maker.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// Beyond these a skill's items add variety that no child will see; those that a word or a rime
/// needs to be asked at all are kept in any case.
inline constexpr std::size_t kEnoughItems = 600;

std::vector<Item> makeRhymeSorts(const Vocabulary& vocabulary);
/// REQUIRES: unit is compound, syllable, onset_rime or phoneme.
std::vector<Item> makeBlends(const Vocabulary& vocabulary, Unit unit);
std::vector<Item> makeWordCounts(const Vocabulary& vocabulary);

/// A number that a text always gives, on every machine: to vary without chance.
std::uint32_t stableHash(std::string_view text);

}  // namespace wrenlet::exercise
