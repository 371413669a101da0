// The labelled set: lone consonants with and without a vowel after them, and words, said by many
// voices. It has parts by voice, pitch and pace: limits are chosen on one and judged on another.
// The third is for a rule that was changed after its failures on the second had been seen.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "content/speech/lexicon.hpp"
#include "tests/ear/synth.hpp"

namespace wrenlet::ear {

enum class Part : std::uint8_t { tune, judge, fresh };

/// The voices of a part that are on this machine; `missing` names the others. `few`: a quick look.
std::vector<Voice> voicesOf(Part part, bool few, std::vector<std::string>& missing);

struct LoneSound {
    Voice voice;
    speech::Phoneme consonant;
    bool with_vowel;
    desk::Pcm clean;
    double vowel_at = -1, vowel_s = 0;  // of clean, where the voice tells; else -1
    pack::VoiceNeed need() const;
};

/// p b t d k g ch jh, f v th s z sh, m n by one voice, each without a vowel and with two.
std::vector<LoneSound> loneSounds(const Voice& voice, const std::filesystem::path& scratch);

struct Word {
    Voice voice;
    std::string text;
    speech::Pronunciation sounds;
    desk::Pcm clean;
    pack::VoiceNeed need() const;
};

/// Empty for a voice of another tongue.
std::vector<Word> words(const Voice& voice, const std::vector<std::string>& texts,
                        const speech::Lexicon& lexicon, const std::filesystem::path& scratch);

}  // namespace wrenlet::ear
