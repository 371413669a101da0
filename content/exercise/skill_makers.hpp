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

/// No skill has more.
inline constexpr std::size_t kMostItems = 2'000;

std::vector<Item> makeRhymeSorts(const Vocabulary& vocabulary);
/// REQUIRES: task is rhyme_judge, odd_one_out or rhyme_pick.
std::vector<Item> makeRhymePicks(const Vocabulary& vocabulary, Task task);
/// REQUIRES: unit is compound, syllable, onset_rime or phoneme.
std::vector<Item> makeBlends(const Vocabulary& vocabulary, Unit unit);
std::vector<Item> makeWordCounts(const Vocabulary& vocabulary);
std::vector<Item> makeSyllableCounts(const Vocabulary& vocabulary);
std::vector<Item> makeTunes(const Vocabulary& vocabulary);
/// REQUIRES: unit is compound, syllable, onset_rime or phoneme.
std::vector<Item> makeSplits(const Vocabulary& vocabulary, Unit unit);
/// REQUIRES: task is first, last or middle.
std::vector<Item> makeIsolations(const Vocabulary& vocabulary, Task task);
std::vector<Item> makeLongShorts(const Vocabulary& vocabulary);
/// REQUIRES: unit is compound, syllable or phoneme; task is add, remove or, but for syllables,
/// substitute.
std::vector<Item> makeChanges(const Vocabulary& vocabulary, Skill skill);
/// REQUIRES: the skill is one of the letter's.
std::vector<Item> makeLetterItems(const Vocabulary& vocabulary, Task task);

/// A number that a text always gives, on every machine: to vary without chance.
std::uint32_t stableHash(std::string_view text);

}  // namespace wrenlet::exercise
