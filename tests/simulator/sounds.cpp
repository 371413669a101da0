#include "tests/simulator/sounds.hpp"

#include <algorithm>
#include <cmath>

#include "tests/simulator/miller_nicely.hpp"

namespace wrenlet::simulator {

using speech::Phoneme;

SoundClass classOf(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::p:
        case Phoneme::t:
        case Phoneme::k:
            return SoundClass::voiceless_stop;
        case Phoneme::b:
        case Phoneme::d:
        case Phoneme::g:
            return SoundClass::voiced_stop;
        case Phoneme::f:
        case Phoneme::th:
        case Phoneme::s:
        case Phoneme::sh:
        case Phoneme::hh:
            return SoundClass::voiceless_fricative;
        case Phoneme::v:
        case Phoneme::dh:
        case Phoneme::z:
        case Phoneme::zh:
            return SoundClass::voiced_fricative;
        case Phoneme::ch:
        case Phoneme::jh:
            return SoundClass::affricate;
        case Phoneme::m:
        case Phoneme::n:
        case Phoneme::ng:
            return SoundClass::nasal;
        case Phoneme::l:
        case Phoneme::r:
        case Phoneme::w:
        case Phoneme::y:
            return SoundClass::glide;
        case Phoneme::ae:
        case Phoneme::ah:
        case Phoneme::ax:
        case Phoneme::eh:
        case Phoneme::ih:
        case Phoneme::uh:
        case Phoneme::aa:
            return SoundClass::short_vowel;
        default:
            return SoundClass::long_vowel;
    }
}

int expectedAge(Phoneme phoneme) {
    switch (phoneme) {
        case Phoneme::b:
        case Phoneme::n:
        case Phoneme::m:
        case Phoneme::p:
        case Phoneme::hh:
        case Phoneme::w:
        case Phoneme::d:
            return 2;
        case Phoneme::v:
        case Phoneme::jh:
        case Phoneme::s:
        case Phoneme::ch:
        case Phoneme::l:
        case Phoneme::sh:
        case Phoneme::z:
            return 4;
        case Phoneme::r:
        case Phoneme::dh:
        case Phoneme::zh:
            return 5;
        case Phoneme::th:
            return 6;
        default:
            return 3;
    }
}

namespace {

int placeInTable(Phoneme phoneme) {
    const auto* found = std::find(std::begin(kHeard), std::end(kHeard), phoneme);
    return found == std::end(kHeard) ? -1 : static_cast<int>(found - std::begin(kHeard));
}

bool differInVoiceAlone(Phoneme a, Phoneme b) {
    const auto is = [&](Phoneme x, Phoneme y) { return (a == x && b == y) || (a == y && b == x); };
    return is(Phoneme::ch, Phoneme::jh);  // the only such pair that the table lacks
}

}  // namespace

double likeness(Phoneme a, Phoneme b) {
    if (a == b) return 1;
    const int row = placeInTable(a), column = placeInTable(b);
    if (row >= 0 && column >= 0) {
        const int high = std::max(row, column), low = std::min(row, column);
        const int likest = *std::max_element(std::begin(kConfused), std::end(kConfused));
        return static_cast<double>(kConfused[high * (high - 1) / 2 + low]) / likest;
    }
    if (differInVoiceAlone(a, b)) return 0.8;
    return 0.6 * std::exp(-0.7 * (speech::distance(a, b) - 1));
}

double likenessToNothing(exercise::Position position) {
    switch (position) {
        case exercise::Position::first:
            return 0.05;
        case exercise::Position::last:
            return 0.2;
        default:
            return 0.3;
    }
}

}  // namespace wrenlet::simulator
