// Long and short vowels as the trade tells them apart by ear: long is how a vowel letter is named
// (cake, bee, bike, boat, moon), short are the vowels of cat, bed, pig, dog-like pot, and cup.
#pragma once

#include <cstddef>
#include <optional>

#include "content/speech/phoneme.hpp"

namespace wrenlet::exercise {

struct VowelLength {
    std::size_t place;  // of the vowel in the word
    bool is_long;
};

/// Nothing where the trade says neither, or a child's ear may: words of several syllables, the
/// vowels of book, cow, boy, saw and bird, vowels before /l/, /ɹ/ or /ŋ/, which colour them, and a
/// short vowel's sound at the end of a word (spa).
std::optional<VowelLength> lengthOf(const speech::Pronunciation& sounds);

}  // namespace wrenlet::exercise
