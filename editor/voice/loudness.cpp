#include "editor/voice/loudness.hpp"

#include <ebur128.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace wrenlet::desk {
namespace {

constexpr double kNoPeak = -100;

struct Destroy {
    void operator()(ebur128_state* state) const { ebur128_destroy(&state); }
};
using Meter = std::unique_ptr<ebur128_state, Destroy>;

Meter meterFor(const Pcm& clip, int mode) {
    Meter meter(ebur128_init(1, static_cast<unsigned long>(clip.rate), mode));
    if (meter) ebur128_set_channel(meter.get(), 0, EBUR128_DUAL_MONO);
    return meter;
}

}  // namespace

// libebur128 1.2.6 takes a thousand times the memory that a window past its usual 3 s needs, so a
// longer clip is measured in pieces, whose powers are averaged.
double loudness(const Pcm& clip) {
    const Meter meter = meterFor(clip, EBUR128_MODE_S);
    if (!meter) return kSilenceLufs;
    const auto rate = static_cast<std::size_t>(clip.rate), piece = 3 * rate;
    double power = 0, measured_ms = 0;
    for (std::size_t at = 0; at < clip.samples.size(); at += piece) {
        const std::size_t frames = std::min(piece, clip.samples.size() - at);
        ebur128_add_frames_float(meter.get(), clip.samples.data() + at, frames);
        const auto ms = static_cast<unsigned long>(frames * 1000 / rate);
        double lufs = kSilenceLufs;
        if (ms == 0 || ebur128_loudness_window(meter.get(), ms, &lufs) != EBUR128_SUCCESS) continue;
        power += std::pow(10, lufs / 10) * static_cast<double>(ms);
        measured_ms += static_cast<double>(ms);
    }
    const double lufs = measured_ms > 0 ? 10 * std::log10(power / measured_ms) : kSilenceLufs;
    return std::isfinite(lufs) ? lufs : kSilenceLufs;
}

double gatedLoudness(const Pcm& clip) {
    const Meter meter = meterFor(clip, EBUR128_MODE_I);
    double lufs = kSilenceLufs;
    if (!meter) return kSilenceLufs;
    ebur128_add_frames_float(meter.get(), clip.samples.data(), clip.samples.size());
    if (ebur128_loudness_global(meter.get(), &lufs) != EBUR128_SUCCESS) return kSilenceLufs;
    return std::isfinite(lufs) ? lufs : kSilenceLufs;
}

double truePeak(const Pcm& clip) {
    const Meter meter = meterFor(clip, EBUR128_MODE_TRUE_PEAK);
    double peak = 0;
    if (!meter) return kNoPeak;
    ebur128_add_frames_float(meter.get(), clip.samples.data(), clip.samples.size());
    if (ebur128_true_peak(meter.get(), 0, &peak) != EBUR128_SUCCESS || peak <= 0) return kNoPeak;
    return 20 * std::log10(peak);
}

Pcm turnedUp(Pcm clip, double db) {
    const double gain_db = std::min(db, kMostPeakDb - truePeak(clip));
    const auto gain = static_cast<float>(std::pow(10.0, gain_db / 20));
    for (float& sample : clip.samples) sample *= gain;
    return clip;
}

Pcm broughtTo(Pcm clip, double lufs) {
    const double now = loudness(clip);
    return now <= kSilenceLufs ? clip : turnedUp(std::move(clip), lufs - now);
}

}  // namespace wrenlet::desk
