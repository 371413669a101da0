#include "content/speech/features.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace wrenlet::speech {

// The tables follow the usual chart of General American (the International Phonetic Association's
// chart of consonants and vowels); /w/ is counted by its lips, /ɹ/ as a glide behind the ridge.
ConsonantFeatures consonantFeatures(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::p:
            return {Place::lips, Manner::stop, false};
        case Phoneme::b:
            return {Place::lips, Manner::stop, true};
        case Phoneme::m:
            return {Place::lips, Manner::nasal, true};
        case Phoneme::w:
            return {Place::lips, Manner::glide, true};
        case Phoneme::f:
            return {Place::lip_teeth, Manner::fricative, false};
        case Phoneme::v:
            return {Place::lip_teeth, Manner::fricative, true};
        case Phoneme::th:
            return {Place::teeth, Manner::fricative, false};
        case Phoneme::dh:
            return {Place::teeth, Manner::fricative, true};
        case Phoneme::t:
            return {Place::ridge, Manner::stop, false};
        case Phoneme::d:
            return {Place::ridge, Manner::stop, true};
        case Phoneme::s:
            return {Place::ridge, Manner::fricative, false};
        case Phoneme::z:
            return {Place::ridge, Manner::fricative, true};
        case Phoneme::n:
            return {Place::ridge, Manner::nasal, true};
        case Phoneme::l:
            return {Place::ridge, Manner::lateral, true};
        case Phoneme::r:
            return {Place::behind_ridge, Manner::glide, true};
        case Phoneme::sh:
            return {Place::behind_ridge, Manner::fricative, false};
        case Phoneme::zh:
            return {Place::behind_ridge, Manner::fricative, true};
        case Phoneme::ch:
            return {Place::behind_ridge, Manner::affricate, false};
        case Phoneme::jh:
            return {Place::behind_ridge, Manner::affricate, true};
        case Phoneme::y:
            return {Place::palate, Manner::glide, true};
        case Phoneme::k:
            return {Place::velum, Manner::stop, false};
        case Phoneme::g:
            return {Place::velum, Manner::stop, true};
        case Phoneme::ng:
            return {Place::velum, Manner::nasal, true};
        default:
            return {Place::throat, Manner::fricative, false};  // h
    }
}

VowelFeatures vowelFeatures(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::iy:
            return {Height::high, Backness::front, true, true, Movement::none};
        case Phoneme::ih:
            return {Height::high, Backness::front, false, false, Movement::none};
        case Phoneme::ey:
            return {Height::mid, Backness::front, true, true, Movement::to_front};
        case Phoneme::eh:
            return {Height::mid, Backness::front, false, false, Movement::none};
        case Phoneme::ae:
            return {Height::low, Backness::front, false, false, Movement::none};
        case Phoneme::ah:
            return {Height::mid, Backness::central, false, false, Movement::none};
        case Phoneme::ax:
            return {Height::mid, Backness::central, false, false, Movement::none};
        case Phoneme::er:
            return {Height::mid, Backness::central, true, true, Movement::to_r};
        case Phoneme::aa:
            return {Height::low, Backness::back, false, false, Movement::none};
        case Phoneme::ao:
            return {Height::mid, Backness::back, false, true, Movement::none};
        case Phoneme::ow:
            return {Height::mid, Backness::back, true, true, Movement::to_back};
        case Phoneme::uh:
            return {Height::high, Backness::back, false, false, Movement::none};
        case Phoneme::uw:
            return {Height::high, Backness::back, true, true, Movement::none};
        case Phoneme::ay:
            return {Height::low, Backness::central, true, true, Movement::to_front};
        case Phoneme::aw:
            return {Height::low, Backness::central, true, true, Movement::to_back};
        default:
            return {Height::mid, Backness::back, true, true, Movement::to_front};  // oy
    }
}

bool isContinuant(Phoneme phoneme) {
    if (isVowel(phoneme)) return true;
    const Manner manner = consonantFeatures(phoneme).manner;
    return manner != Manner::stop && manner != Manner::affricate;
}

bool isChecked(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::ih:
        case Phoneme::eh:
        case Phoneme::ae:
        case Phoneme::ah:
        case Phoneme::uh:
        case Phoneme::aa:
            return true;
        default:
            return false;
    }
}

bool glidesFar(Phoneme phoneme) {
    return phoneme == Phoneme::ay || phoneme == Phoneme::aw || phoneme == Phoneme::oy;
}

namespace {

template <class Scale>
int steps(Scale a, Scale b) {
    return std::abs(static_cast<int>(a) - static_cast<int>(b));
}

int placeDistance(Place a, Place b) {
    const int apart = steps(a, b);
    return apart == 0 ? 0 : apart <= 3 ? 1 : 2;
}

/// Stops, affricates and fricatives lie one step from each other (θ said as t, ʃ as tʃ), a nasal
/// one from a stop, a lateral one from a glide.
int mannerDistance(Manner a, Manner b) {
    if (a == b) return 0;
    const auto obstructs = [](Manner manner) { return manner <= Manner::fricative; };
    const auto flows = [](Manner manner) { return manner >= Manner::lateral; };
    const bool near = (obstructs(a) && obstructs(b)) || (flows(a) && flows(b)) ||
                      std::minmax(a, b) == std::minmax(Manner::stop, Manner::nasal);
    return near ? 1 : 2;
}

int consonantDistance(Phoneme a, Phoneme b) {
    const ConsonantFeatures left = consonantFeatures(a);
    const ConsonantFeatures right = consonantFeatures(b);
    return placeDistance(left.place, right.place) + mannerDistance(left.manner, right.manner) +
           (left.voiced != right.voiced ? 1 : 0);
}

int vowelDistance(Phoneme a, Phoneme b) {
    const VowelFeatures left = vowelFeatures(a);
    const VowelFeatures right = vowelFeatures(b);
    const int apart = steps(left.height, right.height) + steps(left.backness, right.backness) +
                      (left.tense != right.tense ? 1 : 0) +
                      (left.movement != right.movement ? 1 : 0);
    // /ʌ/ and /ə/ are one sound, stressed and not.
    return std::clamp(apart, 1, 5);
}

/// A glide or /l/ is half a vowel; a stop is as far from one as a sound can be.
int crossDistance(Phoneme consonant) {
    switch (consonantFeatures(consonant).manner) {
        case Manner::glide:
        case Manner::lateral:
            return 4;
        case Manner::nasal:
        case Manner::fricative:
            return 5;
        default:
            return 6;
    }
}

int distanceByFeatures(Phoneme a, Phoneme b) {
    if (a == b) return 0;
    if (isVowel(a) && isVowel(b)) return vowelDistance(a, b);
    if (!isVowel(a) && !isVowel(b)) return consonantDistance(a, b);
    return crossDistance(isVowel(a) ? b : a);
}

using Table = std::array<std::array<std::uint8_t, kPhonemeCount>, kPhonemeCount>;

Table everyDistance() {
    Table table{};
    for (std::size_t a = 0; a < kPhonemeCount; ++a)
        for (std::size_t b = 0; b < kPhonemeCount; ++b)
            table[a][b] = static_cast<std::uint8_t>(
                distanceByFeatures(static_cast<Phoneme>(a), static_cast<Phoneme>(b)));
    return table;
}

}  // namespace

int distance(Phoneme a, Phoneme b) {
    static const Table kTable = everyDistance();  // asked for each pair of sounds of each two words
    return kTable[static_cast<std::size_t>(a)][static_cast<std::size_t>(b)];
}

}  // namespace wrenlet::speech
