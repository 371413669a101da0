// One part of a word added, taken away or changed for another, so that a word with a picture comes
// out: which of these there are among a vocabulary's words. The result is computed from the sounds,
// and then looked up.
#pragma once

#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

struct Change {
    const Word* from;
    const Word* to;           // has a picture
    std::vector<Part> parts;  // what is heard after `from`; see Item
    TurnsOn turns_on;
    std::vector<const Word*> other_place;  // what the same change at another place gives
};

/// Task is add, remove or substitute in all three.
///
/// One-syllable words and single sounds. A sound that is taken away or changed stands in the word
/// once; a consonant is changed for a consonant, a vowel for a vowel. Left out are sounds that
/// colour each other (a vowel with the /l/ or /ɹ/ after it, the end of /ks/) and words that the
/// change leaves alike in some accent.
std::vector<Change> phonemeChanges(const Vocabulary& vocabulary, Task task);

/// The first or the last syllable of a word of two to four whose borders are sure; no compounds. A
/// consonant that belongs to both of two syllables is heard in both: puppet is pup and pet.
/// REQUIRES: task is not substitute.
std::vector<Change> syllableChanges(const Vocabulary& vocabulary, Task task);

/// Compounds of two parts. Links of chains come first, each chain's in order; see below.
std::vector<Change> compoundChanges(const Vocabulary& vocabulary, Task task);

/// Compounds with pictures that lead back to the first by changing a part, then another: rainbow,
/// raincoat ... found by search, of 3 to 6 links. Those that change the two parts in turns come
/// first; no two chains have the same words.
std::vector<std::vector<const Word*>> compoundChains(const Vocabulary& vocabulary);

}  // namespace wrenlet::exercise
