#include "game/stage/mixer.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::game {

namespace {

constexpr std::int32_t kOne = 1 << 15;
constexpr auto kCap = static_cast<std::int32_t>(kGainCap * 32767);

}  // namespace

std::int64_t Mixer::Voice::end() const {
    const std::int64_t whole = begin + static_cast<std::int64_t>(pcm->samples.size());
    return stopped < 0 ? whole : std::min(whole, stopped + kFadeSamples);
}

std::int64_t Mixer::begin(Lane lane, std::span<const Line> lines) {
    for (const Line& line : lines)
        if (line.pcm != nullptr && !line.pcm->samples.empty())
            voices_.push_back({line.pcm, lane, clock_ + std::max<std::int64_t>(line.after, 0), -1});
    return clock_;
}

void Mixer::stop(Lane lane) {
    std::erase_if(voices_, [&](const Voice& v) { return v.lane == lane && v.begin >= clock_; });
    for (Voice& voice : voices_)
        if (voice.lane == lane && voice.stopped < 0) voice.stopped = clock_;
}

void Mixer::setVolume(float volume) {
    const float inside = volume > 0 ? std::min(volume, 1.0f) : 0.0f;
    volume_ = static_cast<std::int32_t>(std::lround(inside * kOne));
}

void Mixer::mix(std::int16_t* stereo, std::size_t frames) {
    if (paused_) {
        std::fill_n(stereo, frames * 2, std::int16_t{0});
        return;
    }
    sum_.assign(frames, 0);
    const std::int64_t until = clock_ + static_cast<std::int64_t>(frames);
    for (const Voice& voice : voices_) {
        const std::int64_t from = std::max(voice.begin, clock_);
        const std::int64_t to = std::min(voice.end(), until);
        for (std::int64_t at = from; at < to; ++at) {
            std::int32_t sample = voice.pcm->samples[static_cast<std::size_t>(at - voice.begin)];
            if (voice.stopped >= 0)
                sample = sample * static_cast<std::int32_t>(voice.stopped + kFadeSamples - at) /
                         kFadeSamples;
            sum_[static_cast<std::size_t>(at - clock_)] += sample;
        }
    }
    const std::int64_t gain = static_cast<std::int64_t>(volume_) * kCap / 32767;
    const auto bound = static_cast<std::int32_t>(static_cast<std::int64_t>(volume_) * kCap / kOne);
    for (std::size_t i = 0; i < frames; ++i) {
        const auto loud = static_cast<std::int32_t>(sum_[i] * gain / kOne);
        const auto out = static_cast<std::int16_t>(std::clamp(loud, -bound, bound));
        stereo[2 * i] = out;
        stereo[2 * i + 1] = out;
    }
    clock_ = until;
    std::erase_if(voices_, [&](const Voice& v) { return v.end() <= clock_; });
}

}  // namespace wrenlet::game
