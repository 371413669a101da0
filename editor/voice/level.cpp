#include "editor/voice/level.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/audio_file.hpp"
#include "editor/voice/trim.hpp"

namespace wrenlet::desk {

double aimedLufs(const pack::VoiceNeed& need) {
    const bool lone = need.kind == pack::VoiceNeed::Kind::sound && !need.sounds.empty();
    const bool vowel =
        std::any_of(need.sounds.begin(), need.sounds.end(),
                    [](const speech::Sound& sound) { return speech::isVowel(sound.phoneme); });
    return lone && !vowel ? kSoundLufs : kWordLufs;
}

double spokenLufs(const Pcm& take, Stretch spoken, const pack::VoiceNeed& need) {
    using Kind = pack::VoiceNeed::Kind;
    const Pcm said = cutOut(take, spoken);
    const bool sentence = need.kind == Kind::sentence || need.kind == Kind::phrase;
    return sentence && said.seconds() >= 1 ? gatedLoudness(said) : loudness(said);
}

Pcm levelClip(const Pcm& take, Stretch kept, Stretch spoken, const pack::VoiceNeed& need) {
    Pcm clip = softened(atRate(cutOut(take, kept), kClipRate), kSoftEdge);
    const Stretch measured{std::max(kept.begin, spoken.begin), std::min(kept.end, spoken.end)};
    const double now = measured.empty() ? kSilenceLufs : spokenLufs(take, measured, need);
    if (now <= kSilenceLufs) return clip;
    return turnedUp(std::move(clip), aimedLufs(need) - now);
}

}  // namespace wrenlet::desk
