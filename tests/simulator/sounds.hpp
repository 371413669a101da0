// What the simulated children share about sounds: which class a sound belongs to, when it is
// expected, and how alike two sounds are to the ear.
#pragma once

#include "content/exercise/item.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::simulator {

/// Holes in what a child hears come in classes: stops, fricatives, short vowels.
enum class SoundClass : std::uint8_t {
    voiceless_stop,
    voiced_stop,
    voiceless_fricative,
    voiced_fricative,
    affricate,
    nasal,
    glide,  // /l/ and /ɹ/ too
    short_vowel,
    long_vowel,
};
inline constexpr std::size_t kSoundClasses = 9;
SoundClass classOf(speech::Phoneme phoneme);

/// The age in years by which 90 % of English-speaking children say the consonant (Crowe & McLeod
/// 2020); 3 for vowels, which come early (from memory).
int expectedAge(speech::Phoneme phoneme);

/// How alike two sounds are to the ear, 0 to 1 (1: the likest pair of all, /p/ and /k/). Consonants
/// in Miller & Nicely's table by that; the others, which it lacks, by what they share of voice,
/// place and manner (of height, backness and length), a step of speech::distance() each. Where that
/// rule decides, a difference in voice alone counts as the likest (Treiman et al. 1998); the table
/// itself, from speech in noise, has voice as the safest: the two sources differ, and this child
/// follows the table where it speaks.
double likeness(speech::Phoneme a, speech::Phoneme b);

/// How alike a sound in this place is to no sound at all, on the same scale: ends are lost most,
/// beginnings least (Treiman & Weatherston 1992; the figures from memory).
double likenessToNothing(exercise::Position position);

}  // namespace wrenlet::simulator
