// What is joined in each blending task: a compound's words, a word's syllables, its onset and its
// rime, or its sounds; which words suit the task; and what a foil beside them would tell.
#pragma once

#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// A word taken apart for one of the blending tasks.
struct Blend {
    const Word* word;
    std::vector<Part> parts;
    std::vector<speech::Pronunciation> sounds;  // of each part
};

/// Every word of the vocabulary that suits joining parts of this size, easiest first:
///   compound    its parts are words that are still heard in it;
///   syllable    2 or 3, and no doubt about their number or their border; compounds left out;
///   onset_rime  one syllable that begins with a consonant, single ones before clusters;
///   phoneme     one syllable of 3 or 4 sounds, CVC before others; without /l/, /ɹ/ or /ks/ at the
///               end or after the vowel, which change how it sounds (as RF.K.2.d excludes them).
std::vector<Blend> blends(const Vocabulary& vocabulary, Unit unit);

/// The sounds of every word of one syllable and two to five sounds, for taking apart: clusters, /l/
/// and /ks/ too, but no vowel that an /ɹ/ colours, for there the count varies.
std::vector<Blend> soundsOfWords(const Vocabulary& vocabulary);

/// The syllables of a word as they are counted, a compound's by its parts, as they sound in the
/// whole; empty when their number varies.
std::vector<speech::Pronunciation> countedSyllables(const Vocabulary& vocabulary, const Word& word);

/// The syllables of every word whose number of them is sure, as countedSyllables() gives them,
/// fewest first.
std::vector<Blend> syllablesOfWords(const Vocabulary& vocabulary);

/// True iff `word` is of the kind that may stand beside the answer: clusters are not mixed among
/// single consonants, and syllables are as many.
bool isFoil(const Blend& blend, const Word& word, Unit unit);

/// What choosing a foil would tell.
struct Telling {
    TurnsOn turns_on;   // what in the answer was not heard
    std::string means;  // "heard /h/ for /k/ first"
    bool sharp;         // it is that alone: all else is the same
};
Telling telling(const Blend& blend, const Word& foil, Unit unit);

/// The same of two words' sounds: the first place where `foil` is not like `word`.
Telling soundTelling(const speech::Pronunciation& word, const speech::Pronunciation& foil);

}  // namespace wrenlet::exercise
