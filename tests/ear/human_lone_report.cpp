#include "tests/ear/human_lone_report.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "content/common/random.hpp"
#include "content/speech/features.hpp"
#include "editor/voice/added_vowel.hpp"
#include "editor/voice/voice_frames.hpp"
#include "tests/ear/noise.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;

constexpr double kVowelUnder =
    15;  // dB below 3200 Hz under the word's loudest frame: a voice is there
constexpr double kUnsure = 0.015;           // s before that which may be either
constexpr double kVowels[] = {0.06, 0.12};  // s of vowel left on
constexpr double kRoomDb = 40;              // of the room around what was cut

/// s at which the voice begins; nothing where it does with the word.
std::optional<double> vowelBegins(const Pcm& word) {
    const auto frames = desk::voiceFrames(word);
    double top = 0;
    const auto power = [](const desk::VoiceFrame& frame) { return frame.low + frame.mid; };
    for (const auto& frame : frames) top = std::max(top, power(frame));
    const auto at = std::find_if(frames.begin(), frames.end(), [&](const auto& frame) {
        return power(frame) > top * std::pow(10, -kVowelUnder / 10);
    });
    if (at == frames.end() || at - frames.begin() < 6) return std::nullopt;
    return static_cast<double>(at - frames.begin()) * desk::kVoiceFrame;
}

bool isVoicelessConsonant(speech::Phoneme phoneme) {
    return !speech::isVowel(phoneme) && !speech::consonantFeatures(phoneme).voiced;
}

Pcm cut(const Pcm& word, double begin, double end) {
    const auto at = [&](double s) {
        return static_cast<std::size_t>(std::max(0.0, s) * word.rate);
    };
    return desk::softened(desk::cutOut(word, {at(begin), at(end)}), 0.004);
}

}  // namespace

std::vector<Line> humanLoneReport(const std::vector<Word>& words, desk::WordEar* ear) {
    int count = 0, blamed = 0, found[std::size(kVowels)] = {};
    for (std::size_t i = 0; i < words.size(); ++i) {
        const Word& word = words[i];
        if (word.sounds.size() < 2 || !speech::isVowel(word.sounds[1].phoneme)) continue;
        const pack::VoiceNeed need{"sound", "/x/", {word.sounds[0]}, pack::VoiceNeed::Kind::sound};
        if (!isVoicelessConsonant(word.sounds[0].phoneme)) continue;
        const double begin = std::max(0.0, audible(word.clean, 45).begin - 0.005);
        const auto vowel = vowelBegins(word.clean);
        if (!vowel || *vowel - kUnsure < begin + 0.02) continue;
        const auto heard = [&](double end) {
            const Pcm take =
                inRoom(cut(word.clean, begin, end), kRoomDb, Colour::pink, stepSeed(83, i));
            return desk::addedVowel(desk::vowelEvidence(take, desk::heardIn(take), need, ear))
                .has_value();
        };
        ++count;
        blamed += heard(*vowel - kUnsure) ? 1 : 0;
        for (std::size_t k = 0; k < std::size(kVowels); ++k)
            found[k] += heard(*vowel + kVowels[k]) ? 1 : 0;
    }
    std::vector<Line> lines;
    if (count == 0) return lines;
    const std::string condition = "a human voice, cut from words; ";
    for (std::size_t k = 0; k < std::size(kVowels); ++k)
        lines.push_back(share(
            "added vowel",
            condition + std::to_string(std::lround(1000 * kVowels[k])) + " ms of the vowel left on",
            "found", found[k], count));
    Line wrong = share("added vowel", condition + "none left on", "heard where there is none",
                       blamed, count);
    wrong.more_is_better = false;
    lines.push_back(wrong);
    return lines;
}

}  // namespace wrenlet::ear
