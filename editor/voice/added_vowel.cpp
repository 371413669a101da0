#include "editor/voice/added_vowel.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/voice_frames.hpp"

namespace wrenlet::desk {
namespace {

using speech::Phoneme;

// Chosen on the tuning part of the labelled set (tests/ear), never on those that judge them.
constexpr double kRepeats = 0.5;      // VoiceFrame::again of a voice
constexpr double kSurelyAgain = 0.8;  // the same of a voice and nothing else
constexpr double kOverRoom = 3;       // times the room's power
constexpr double kNotBreath = -16;    // dB, low to mid: a breath has no low
constexpr double kNotHiss = -3;       // dB, low and mid to high
constexpr double kOpen = -6;          // dB, mid of low and mid: a closed mouth hums low alone
constexpr double kOpenUnder = 16;     // dB that an open vowel may lie under the loudest frame
constexpr double kMuffled = -20;      // dB, the same once the consonant has burst: "uh" is dark
constexpr double kMuffledUnder = 4;   // dB
constexpr double kTop = 1;            // dB: the loudest voiced moment lies in the vowel
constexpr double kShortest = 0.035;   // s
constexpr std::size_t kBridged = 1;   // frames inside a vowel that may look like none
constexpr std::size_t kBurst = 2;     // frames from the loudest hiss to where the burst is over
constexpr double kAround = 0.2;       // s of the take looked at beside speech
constexpr double kRoomAround = 0.15;  // s of the take that the recogniser hears beside speech
constexpr double kStillAgain = 0.3;   // VoiceFrame::again of a voice that comes or goes
constexpr double kStillUnder = 24;    // dB that it may lie under the vowel's loudest moment

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

/// What the frames of one clip are held against.
struct Clip {
    const std::vector<VoiceFrame>& frames;
    bool hums;
    double loudest = -200, voiced = -200;  // dB, of all and of low and mid
    double room = 0;                       // power in mid
    std::size_t burst = 0;                 // where hiss is loudest

    Clip(const std::vector<VoiceFrame>& all, bool hums_itself) : frames(all), hums(hums_itself) {
        std::vector<double> mids;
        for (std::size_t i = 0; i < frames.size(); ++i) {
            loudest = std::max(loudest, db(frames[i].all()));
            voiced = std::max(voiced, db(frames[i].low + frames[i].mid));
            if (frames[i].high > frames[burst].high) burst = i;
            mids.push_back(frames[i].mid);
        }
        std::sort(mids.begin(), mids.end());
        if (!mids.empty()) room = mids[mids.size() / 10];
    }

    bool isVowel(std::size_t i) const {
        const VoiceFrame& frame = frames[i];
        const double low_and_mid = frame.low + frame.mid, mid_part = db(frame.mid / low_and_mid);
        if (frame.again <= kRepeats || frame.mid <= kOverRoom * room ||
            db(frame.low / frame.mid) <= kNotBreath || db(low_and_mid / frame.high) <= kNotHiss)
            return false;
        const bool open = mid_part > kOpen && db(frame.mid) > loudest - kOpenUnder;
        const bool muffled = !hums && i >= burst + kBurst && mid_part > kMuffled &&
                             db(low_and_mid) > loudest - kMuffledUnder;
        return open || muffled;
    }
    bool isTop(std::size_t i) const { return db(frames[i].low + frames[i].mid) > voiced - kTop; }
};

struct Frames {
    std::size_t begin = 0, count = 0;
};

Frames longestVowel(const Clip& clip) {
    Frames best, now;
    std::size_t missed = 0;
    bool has_top = false;
    for (std::size_t i = 0; i < clip.frames.size(); ++i) {
        if (clip.isVowel(i)) {
            if (now.count == 0) {
                now.begin = i;
                has_top = false;
            }
            now.count = i + 1 - now.begin;
            has_top = has_top || clip.isTop(i);
            missed = 0;
            if (has_top && now.count > best.count) best = now;
        } else if (++missed > kBridged) {
            now.count = 0;
        }
    }
    return best;
}

/// The vowel as far as the voice goes on around what is surely one: where it may be cut off. A
/// sound that hums itself goes on the same way, so there what is sure is all.
Frames wholeVowel(const Clip& clip, Frames sure) {
    if (clip.hums || sure.count == 0) return sure;
    std::size_t first = sure.begin, last = sure.begin + sure.count - 1;
    double loudest = -200;
    for (std::size_t i = first; i <= last; ++i)
        loudest = std::max(loudest, db(clip.frames[i].low + clip.frames[i].mid));
    const auto goes_on = [&](std::size_t i) {
        const VoiceFrame& frame = clip.frames[i];
        const double low_and_mid = frame.low + frame.mid;
        return frame.again > kStillAgain && db(low_and_mid) > loudest - kStillUnder &&
               db(frame.mid / low_and_mid) > kMuffled && low_and_mid > frame.high;
    };
    while (first > 0 && goes_on(first - 1)) --first;
    while (last + 1 < clip.frames.size() && goes_on(last + 1)) ++last;
    return {first, last + 1 - first};
}

/// A take's frames around speech.
struct Looked {
    double begin_s;  // of the first, in the take
    std::vector<VoiceFrame> frames;
};

std::optional<Finding> byRule(const Looked& looked, const pack::VoiceNeed& need) {
    const Clip clip(looked.frames, std::any_of(need.sounds.begin(), need.sounds.end(), hums));
    const Frames sure = longestVowel(clip);
    if (static_cast<double>(sure.count) * kVoiceFrame < kShortest - 1e-9) return std::nullopt;
    const Frames whole = wholeVowel(clip, sure);
    const double length = static_cast<double>(whole.count) * kVoiceFrame;
    const double begin = looked.begin_s + static_cast<double>(whole.begin) * kVoiceFrame;
    return Finding{Trouble::added_vowel, begin, begin + length, length, {}};
}

/// s between two moments of the take in which a voice is surely heard.
double voicedBetween(const Looked& looked, double begin_s, double end_s) {
    const double room = Clip(looked.frames, false).room;
    double voiced = 0, at = looked.begin_s;
    for (const VoiceFrame& frame : looked.frames) {
        const bool surely = frame.again > kSurelyAgain && frame.mid > kOverRoom * room;
        if (surely && at >= begin_s && at < end_s) voiced += kVoiceFrame;
        at += kVoiceFrame;
    }
    return voiced;
}

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

VowelEvidence vowelEvidence(const Pcm& take, const HeardSpeech& heard, const pack::VoiceNeed& need,
                            WordEar* ear) {
    if (!canTellAddedVowel(need) || heard.bursts.empty()) return {};
    const auto seconds = [&](Stretch stretch) {
        return static_cast<double>(stretch.begin) / take.rate;
    };
    const Stretch around = widened(heard.all(), kAround, take);
    const Looked looked{seconds(around), voiceFrames(cutOut(take, around))};
    VowelEvidence evidence;
    evidence.by_rule = byRule(looked, need);
    if (ear == nullptr) return evidence;
    const Stretch listened = widened(heard.all(), kRoomAround, take);
    evidence.by_ear = ear->vowelAfter(cutOut(take, listened), need.sounds);
    if (evidence.by_ear) {
        evidence.by_ear->begin_s += seconds(listened);
        evidence.by_ear->end_s += seconds(listened);
        evidence.voiced_s = voicedBetween(looked, evidence.by_ear->begin_s, evidence.by_ear->end_s);
    }
    return evidence;
}

std::optional<Finding> addedVowel(const VowelEvidence& evidence, VowelLimits limits) {
    if (!evidence.by_ear) return evidence.by_rule;
    const auto& [margin, begin_s, end_s] = *evidence.by_ear;
    if (margin >= (evidence.by_rule ? limits.with_rule : limits.surely) ||
        evidence.voiced_s < limits.voiced_s - 1e-9)
        return std::nullopt;
    return Finding{Trouble::added_vowel, begin_s, end_s, end_s - begin_s, {}};
}

}  // namespace wrenlet::desk
