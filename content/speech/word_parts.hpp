// A one-syllable word taken apart: the onset (the consonants before the vowel) and the rime (the
// vowel and all after it), as onset-and-rime tasks hear them; and how far two words are apart.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

struct OnsetRime {
    Pronunciation onset;  // empty in "egg"
    Pronunciation rime;
};

/// Nothing for a word of no syllable or of several.
std::optional<OnsetRime> onsetAndRime(const Pronunciation& word);

/// C for each consonant, V for each vowel: "CVC" for cat and ship, "CCVC" for stop.
std::string shape(const Pronunciation& word);

/// How far apart two words are to the ear: the least sum of distances that turns one into the
/// other, a sound too many or too few counting kSoundAdded. 0 iff they have the same phonemes.
inline constexpr int kSoundAdded = 3;
int wordDistance(const Pronunciation& a, const Pronunciation& b);

/// Two words laid side by side on the cheapest way from one to the other: each pair is a sound of
/// `word` and the sound of `other` that stands for it; one of them is missing where a sound is
/// left out or added.
struct Aligned {
    std::optional<std::size_t> word;   // index into the one
    std::optional<std::size_t> other;  // index into the other
};
std::vector<Aligned> align(const Pronunciation& word, const Pronunciation& other);

/// The places in `word` where it is not like `other`: sounds that are changed, and sounds that
/// `other` lacks. Empty when `other` only has more.
std::vector<std::size_t> placesApart(const Pronunciation& word, const Pronunciation& other);

}  // namespace wrenlet::speech
