// What a voice of festival's calls our phonemes. Voices of other tongues stand in for more speakers
// of lone sounds: their stops, hisses and hums are the same, and in the place of "uh" stands the
// nearest vowel that their diphones have.
#pragma once

#include <string>
#include <string_view>

#include "content/speech/phoneme.hpp"

namespace wrenlet::ear {

struct Tongue {
    enum class Name { english, italian, czech, finnish } name;
    std::string_view pause;

    /// Empty for a phoneme that the tongue has not.
    std::string nameOf(speech::Phoneme phoneme) const;
};

/// By the voice's name, "kal_diphone".
Tongue tongueOf(std::string_view voice);

}  // namespace wrenlet::ear
