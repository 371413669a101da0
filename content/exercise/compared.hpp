// What is compared when an answer is explained: the part of a word that a question turns on, and
// what a letter says. Both the voice that is recorded and the game that plays it ask here.
#pragma once

#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// The clip of what decides in `word`: its rime, or its sound in the asked place, or its vowel.
/// Empty where the item does not turn on a part of its words.
std::string decidingClip(const Item& item, const Word& word);

/// Where in `word` that part stands.
Position decidingPlace(const Item& item, const Word& word);

/// The clips of what a letter says as this item asks it: its name, its sound, or both its sounds;
/// of the right two letters the sound that they have in the word.
/// REQUIRES: not of a word that is built.
std::vector<std::string> saidBy(const Item& item, const Letter& letter);

/// The letter that is taught with this sound first ("sound:b"); null when there is none.
const Letter* letterSaying(std::string_view clip);

}  // namespace wrenlet::exercise
