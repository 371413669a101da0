#include "content/exercise/vowel_length.hpp"

#include "content/speech/syllable.hpp"

namespace wrenlet::exercise {

using speech::Phoneme;

std::optional<VowelLength> lengthOf(const speech::Pronunciation& sounds) {
    if (speech::syllableCount(sounds) != 1 || speech::countVaries(sounds)) return std::nullopt;
    std::size_t place = 0;
    while (!speech::isVowel(sounds[place].phoneme)) ++place;
    const bool is_last = place + 1 == sounds.size();
    if (!is_last) {
        const Phoneme next = sounds[place + 1].phoneme;
        if (next == Phoneme::l || next == Phoneme::r || next == Phoneme::ng) return std::nullopt;
    }
    switch (sounds[place].phoneme) {
        case Phoneme::ey:
        case Phoneme::iy:
        case Phoneme::ay:
        case Phoneme::ow:
        case Phoneme::uw:
            return VowelLength{place, true};
        case Phoneme::ae:
        case Phoneme::eh:
        case Phoneme::ih:
        case Phoneme::aa:
        case Phoneme::ah:
            if (is_last) return std::nullopt;
            return VowelLength{place, false};
        default:
            return std::nullopt;
    }
}

}  // namespace wrenlet::exercise
