#include "editor/voice/voice_frames.hpp"

#include <algorithm>
#include <cmath>

#include "editor/voice/audio_file.hpp"
#include "editor/voice/filter.hpp"

namespace wrenlet::desk {
namespace {

constexpr double kLowFrom = 80, kMidFrom = 450, kHighFrom = 3'200;  // Hz
constexpr std::size_t kFrame = kVoiceRate / 200;                    // samples in 5 ms
// What repeats is looked for in every second sample: all of it lies below kHighFrom.
constexpr int kEvery = 2, kRepeatRate = kVoiceRate / kEvery;
constexpr std::size_t kWindow = kRepeatRate / 100;  // compared with itself, later
constexpr std::size_t kShortestLag = kRepeatRate / 400, kLongestLag = kRepeatRate / 65;

/// How much the 10 ms at `at` are like those a lag later.
double repeats(const std::vector<float>& sound, std::size_t at) {
    if (at + kWindow + kLongestLag > sound.size()) return 0;
    const float* here = sound.data() + at;
    float power = 1e-12f, later = 1e-12f, best = 0;
    for (std::size_t i = 0; i < kWindow; ++i) {
        power += here[i] * here[i];
        later += here[i + kShortestLag] * here[i + kShortestLag];
    }
    for (std::size_t lag = kShortestLag; lag <= kLongestLag; ++lag) {
        float both = 0;
        for (std::size_t i = 0; i < kWindow; ++i) both += here[i] * here[i + lag];
        best = std::max(best, both / std::sqrt(power * std::max(later, 1e-12f)));
        later += here[lag + kWindow] * here[lag + kWindow] - here[lag] * here[lag];
    }
    return static_cast<double>(best);
}

}  // namespace

std::vector<VoiceFrame> voiceFrames(const Pcm& sound) {
    const Pcm heard = roughlyAtRate(sound, kVoiceRate);
    SteepFilter above_hum = SteepFilter::highPass(kLowFrom, kVoiceRate);
    SteepFilter low = SteepFilter::lowPass(kMidFrom, kVoiceRate);
    SteepFilter above_low = SteepFilter::highPass(kMidFrom, kVoiceRate);
    SteepFilter mid = SteepFilter::lowPass(kHighFrom, kVoiceRate);
    SteepFilter high = SteepFilter::highPass(kHighFrom, kVoiceRate);
    SteepFilter voice = SteepFilter::lowPass(kHighFrom, kVoiceRate);
    const std::size_t count = heard.samples.size() / kFrame;
    std::vector<VoiceFrame> single(count), out(count);
    std::vector<float> voiced;
    for (std::size_t i = 0; i < count * kFrame; ++i) {
        const double sample = above_hum.next(static_cast<double>(heard.samples[i]));
        const double l = low.next(sample), m = mid.next(above_low.next(sample));
        const double h = high.next(sample);
        const double in_voice = voice.next(sample);
        if (i % kEvery == 0) voiced.push_back(static_cast<float>(in_voice));
        VoiceFrame& frame = single[i / kFrame];
        frame.low += l * l / kFrame;
        frame.mid += m * m / kFrame;
        frame.high += h * h / kFrame;
    }
    const std::size_t reach = (kWindow + kLongestLag / 2) / 2;  // so that a frame is in the middle
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t from = i == 0 ? 0 : i - 1, to = std::min(i + 2, count);
        const auto near = static_cast<double>(to - from);
        for (std::size_t k = from; k < to; ++k) {
            out[i].low += single[k].low / near;
            out[i].mid += single[k].mid / near;
            out[i].high += single[k].high / near;
        }
        const std::size_t middle = (i * kFrame + kFrame / 2) / kEvery;
        out[i].again = repeats(voiced, middle - std::min(middle, reach));
    }
    return out;
}

}  // namespace wrenlet::desk
