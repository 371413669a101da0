#include "editor/voice/added_vowel.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/voice_frames.hpp"

namespace wrenlet::desk {
namespace {

using speech::Phoneme;

constexpr double kRepeats = 0.6;      // VoiceFrame::again of a voice
constexpr double kUnderPeak = 22;     // dB that a vowel may lie under the loudest frame
constexpr double kOverRoom = 3;       // times the room's power
constexpr double kNotVoiceBar = -16;  // dB, mid of low and mid: closed lips hum low alone
constexpr double kNotNasal = -6;      // dB, the same for sounds that hum themselves
constexpr double kNotBreath = -16;    // dB, low to mid: a breath has no low
constexpr double kNotHiss = -3;       // dB, low and mid to high
constexpr double kShortest = 0.04;    // s
constexpr double kAround = 0.2;       // s of the take looked at beside speech

double db(double power) {
    return 10 * std::log10(power + 1e-15);
}

bool isOneOf(Phoneme phoneme, std::initializer_list<Phoneme> these) {
    return std::find(these.begin(), these.end(), phoneme) != these.end();
}

/// Sounds that are voiced as long as they last.
bool hums(const speech::Sound& sound) {
    return isOneOf(sound.phoneme, {Phoneme::m, Phoneme::n, Phoneme::ng, Phoneme::v, Phoneme::z,
                                   Phoneme::zh, Phoneme::dh});
}

struct Rules {
    double loudest, room, voice_bar;
    bool isVowel(const VoiceFrame& frame) const {
        return frame.again > kRepeats && db(frame.mid) > loudest - kUnderPeak &&
               frame.mid > kOverRoom * room &&
               db(frame.mid / (frame.mid + frame.low)) > voice_bar &&
               db(frame.low / frame.mid) > kNotBreath &&
               db((frame.low + frame.mid) / frame.high) > kNotHiss;
    }
};

}  // namespace

bool isWithoutVowel(const pack::VoiceNeed& need) {
    return !need.sounds.empty() &&
           std::none_of(need.sounds.begin(), need.sounds.end(),
                        [](const speech::Sound& sound) { return speech::isVowel(sound.phoneme); });
}

bool canTellAddedVowel(const pack::VoiceNeed& need) {
    return isWithoutVowel(need) &&
           std::none_of(need.sounds.begin(), need.sounds.end(), [](const speech::Sound& sound) {
               return isOneOf(sound.phoneme, {Phoneme::l, Phoneme::r, Phoneme::w, Phoneme::y});
           });
}

std::optional<Finding> addedVowel(const Pcm& take, const HeardSpeech& heard,
                                  const pack::VoiceNeed& need) {
    if (!canTellAddedVowel(need) || heard.bursts.empty()) return std::nullopt;
    const Stretch looked = widened(heard.all(), kAround, take);
    const std::vector<VoiceFrame> frames = voiceFrames(cutOut(take, looked));
    if (frames.empty()) return std::nullopt;
    std::vector<double> mids;
    Rules rules{-200, 0, kNotVoiceBar};
    for (const VoiceFrame& frame : frames) {
        rules.loudest = std::max(rules.loudest, db(frame.all()));
        mids.push_back(frame.mid);
    }
    std::sort(mids.begin(), mids.end());
    rules.room = mids[mids.size() / 10];
    if (std::any_of(need.sounds.begin(), need.sounds.end(), hums)) rules.voice_bar = kNotNasal;

    std::size_t best_begin = 0, best = 0;
    for (std::size_t i = 0; i < frames.size();) {
        const std::size_t begin = i;
        while (i < frames.size() && rules.isVowel(frames[i])) ++i;
        if (i - begin > best) best_begin = begin, best = i - begin;
        if (i == begin) ++i;
    }
    const double length = static_cast<double>(best) * kVoiceFrame;
    if (length < kShortest - 1e-9) return std::nullopt;
    const double begin = static_cast<double>(looked.begin) / take.rate +
                         static_cast<double>(best_begin) * kVoiceFrame;
    return Finding{Trouble::added_vowel, begin, begin + length, length, {}};
}

}  // namespace wrenlet::desk
