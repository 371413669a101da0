// What makes one speech sound differ from another: place, manner and voice of a consonant; height,
// backness, tenseness and length of a vowel. Foils are graded by these, never by spelling.
#pragma once

#include <cstdint>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

enum class Place : std::uint8_t {
    lips,
    lip_teeth,
    teeth,
    ridge,
    behind_ridge,
    palate,
    velum,
    throat
};
enum class Manner : std::uint8_t { stop, affricate, fricative, nasal, lateral, glide };
enum class Height : std::uint8_t { high, mid, low };
enum class Backness : std::uint8_t { front, central, back };
/// Where a vowel moves to: toward /ɪ/ (say), toward /ʊ/ (go), into /ɹ/ (bird), or nowhere.
enum class Movement : std::uint8_t { none, to_front, to_back, to_r };

struct ConsonantFeatures {
    Place place;
    Manner manner;
    bool voiced;
};

struct VowelFeatures {
    Height height;
    Backness backness;
    bool tense;
    bool is_long;  // the long vowels and the diphthongs, as the trade counts them by ear
    Movement movement;
};

/// REQUIRES: a consonant.
ConsonantFeatures consonantFeatures(Phoneme phoneme);
/// REQUIRES: a vowel.
VowelFeatures vowelFeatures(Phoneme phoneme);

/// True iff the sound can be held (/s/, /m/, a vowel), false for stops and affricates, which are
/// harder to blend and must be said without a vowel added.
bool isContinuant(Phoneme phoneme);

/// True iff the vowel is short and, when stressed, needs a consonant after it in its syllable.
bool isChecked(Phoneme phoneme);

/// True iff the vowel moves so far that some hear half a beat before an /l/ or /ɹ/ after it: /aɪ/,
/// /aʊ/, /ɔɪ/.
bool glidesFar(Phoneme phoneme);

}  // namespace wrenlet::speech
