#include "editor/voice/take_checks.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/added_vowel.hpp"
#include "editor/voice/clipped_tops.hpp"
#include "editor/voice/level.hpp"

namespace wrenlet::desk {
namespace {

using Kind = pack::VoiceNeed::Kind;

constexpr double kSilentDb = -65;     // dBFS of speech: nothing that could be made louder
constexpr double kSoftestLufs = -45;  // a word; made louder, it would bring the room with it
constexpr double kSofterSound = 15;   // dB that a lone consonant may be softer than a word
constexpr double kAtTheEdge = 0.02;   // s from a take's end: what sounds there goes on outside it
constexpr double kClosure = 0.04;  // s of silence at the end that p, t, k, ch may be missing after
constexpr double kRelease = 0.13;  // s that they sound at most, once let go
constexpr double kBetweenTries = 0.25;  // s
constexpr double kBetweenSentences = 1.0;
constexpr double kShortestTry = 0.08, kShortestSound = 0.02;  // s
constexpr double kLikeTries = 12;                             // dB between two tries at most

bool isLong(const pack::VoiceNeed& need) {
    return need.kind == Kind::sentence || need.kind == Kind::phrase;
}

/// True iff the take may end in the silence of a last p, t, k or ch: none was heard let go.
bool mayEndClosed(const Pcm& take, const HeardSpeech& heard, const pack::VoiceNeed& need) {
    using speech::Phoneme;
    if (need.sounds.size() < 2) return false;
    const Phoneme last = need.sounds.back().phoneme;
    if (last != Phoneme::p && last != Phoneme::t && last != Phoneme::k && last != Phoneme::ch)
        return false;
    const bool after_quiet = heard.last_sound.begin > heard.bursts.back().begin;
    const double seconds = static_cast<double>(heard.last_sound.size()) / take.rate;
    return !after_quiet || seconds > kRelease;
}

double powerIn(const Pcm& take, Stretch stretch) {
    double sum = 1e-12;
    for (std::size_t i = stretch.begin; i < std::min(stretch.end, take.samples.size()); ++i)
        sum += static_cast<double>(take.samples[i]) * static_cast<double>(take.samples[i]);
    return sum / static_cast<double>(std::max<std::size_t>(1, stretch.size()));
}

/// The last two stretches of speech that a long pause parts, when both could be the whole.
std::optional<Finding> twoTries(const Pcm& take, const HeardSpeech& heard,
                                const pack::VoiceNeed& need) {
    const auto seconds = [&](std::size_t samples) {
        return static_cast<double>(samples) / take.rate;
    };
    const double pause = isLong(need) ? kBetweenSentences : kBetweenTries;
    std::vector<Stretch> tries;
    for (const Stretch& burst : heard.bursts) {
        if (!tries.empty() && seconds(burst.begin - tries.back().end) < pause)
            tries.back().end = burst.end;
        else
            tries.push_back(burst);
    }
    const double shortest = isWithoutVowel(need) ? kShortestSound : kShortestTry;
    std::erase_if(tries, [&](const Stretch& one) { return seconds(one.size()) < shortest; });
    if (tries.size() < 2) return std::nullopt;
    const Stretch before = tries[tries.size() - 2], later = tries.back();
    const double apart = 10 * std::log10(powerIn(take, before) / powerIn(take, later));
    if (std::fabs(apart) > kLikeTries) return std::nullopt;
    // A sentence with a long pause in it is no sentence said twice: those are about as long.
    const auto [less, more] = std::minmax(seconds(before.size()), seconds(later.size()));
    if (isLong(need) && less < 0.6 * more) return std::nullopt;
    return Finding{Trouble::two_tries, seconds(before.begin), seconds(before.end), 0, {}};
}

}  // namespace

std::vector<Finding> checkTake(const Pcm& take, const HeardSpeech& heard,
                               const pack::VoiceNeed& need) {
    const double softer = isWithoutVowel(need) ? kSofterSound : 0;
    if (heard.bursts.empty() || heard.speech_db < kSilentDb - softer)
        return {{Trouble::silent, 0, 0, 0, {}}};
    std::vector<Finding> found;
    const Stretch spoken = heard.all();
    const auto edge = static_cast<std::size_t>(kAtTheEdge * take.rate);
    const double room_after = mayEndClosed(take, heard, need) ? kClosure : kAtTheEdge;
    const double begin = static_cast<double>(spoken.begin) / take.rate;
    const double end = static_cast<double>(spoken.end) / take.rate;
    if (const auto clipped = clippedTops(take)) found.push_back(*clipped);
    if (spoken.begin < edge)
        found.push_back({Trouble::cut_off_start, 0, std::min(end, 2 * kAtTheEdge), 0, {}});
    if (spoken.end + static_cast<std::size_t>(room_after * take.rate) > take.samples.size())
        found.push_back(
            {Trouble::cut_off_end, std::max(begin, end - 2 * kAtTheEdge), take.seconds(), 0, {}});
    if (const auto twice = twoTries(take, heard, need)) found.push_back(*twice);
    const double wanted = kSoftestLufs - softer, lufs = spokenLufs(take, spoken, need);
    if (lufs < wanted) found.push_back({Trouble::too_quiet, 0, 0, wanted - lufs, {}});
    if (heard.room_db > -100 && heard.aboveRoomDb() < kWantedAboveRoomDb - softer)
        found.push_back({Trouble::noisy, 0, 0, heard.aboveRoomDb(), {}});
    return found;
}

}  // namespace wrenlet::desk
