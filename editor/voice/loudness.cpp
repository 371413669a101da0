#include "editor/voice/loudness.hpp"

#include <ebur128.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace wrenlet::desk {
namespace {

constexpr double kSilence = -100;

struct Destroy {
    void operator()(ebur128_state* state) const { ebur128_destroy(&state); }
};
using Meter = std::unique_ptr<ebur128_state, Destroy>;

Meter metered(const Pcm& clip, int mode, unsigned long window_ms) {
    Meter meter(ebur128_init(1, static_cast<unsigned long>(clip.rate), mode));
    if (!meter) return meter;
    ebur128_set_channel(meter.get(), 0, EBUR128_DUAL_MONO);
    if (window_ms > 0) ebur128_set_max_window(meter.get(), window_ms);
    ebur128_add_frames_float(meter.get(), clip.samples.data(), clip.samples.size());
    return meter;
}

}  // namespace

double loudness(const Pcm& clip) {
    const auto ms = static_cast<unsigned long>(clip.seconds() * 1000);
    if (ms == 0) return kSilence;
    const Meter meter = metered(clip, EBUR128_MODE_S, std::max(3000ul, ms));
    double lufs = kSilence;
    if (!meter || ebur128_loudness_window(meter.get(), ms, &lufs) != EBUR128_SUCCESS)
        return kSilence;
    return std::isfinite(lufs) ? lufs : kSilence;
}

double truePeak(const Pcm& clip) {
    const Meter meter = metered(clip, EBUR128_MODE_TRUE_PEAK, 0);
    double peak = 0;
    if (!meter || ebur128_true_peak(meter.get(), 0, &peak) != EBUR128_SUCCESS || peak <= 0)
        return kSilence;
    return 20 * std::log10(peak);
}

Pcm broughtTo(Pcm clip, double lufs) {
    const double now = loudness(clip);
    if (now <= kSilence) return clip;
    const double gain_db = std::min(lufs - now, kMostPeakDb - truePeak(clip));
    const auto gain = static_cast<float>(std::pow(10.0, gain_db / 20));
    for (float& sample : clip.samples) sample *= gain;
    return clip;
}

}  // namespace wrenlet::desk
