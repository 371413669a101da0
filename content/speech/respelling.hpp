// A word's sounds in plain letters, for whoever does not read the phonetic alphabet: "RAB-it",
// "goht", "cheez". One sound has one way to be written; it is for adults, and no spelling.
#pragma once

#include <string>
#include <string_view>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// "oh" for the vowel of goat, "th" for that of thin and "dh" for that of then.
std::string_view plainLetters(Phoneme phoneme);

/// Syllables parted by hyphens, the one with the main stress in capitals where there are several.
/// "eye" for aɪ where it begins a syllable. Empty for no sounds.
std::string respelling(const Pronunciation& word);

}  // namespace wrenlet::speech
