#include "tests/ear/noise.hpp"

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "editor/voice/audio_file.hpp"
#include "editor/voice/filter.hpp"

namespace wrenlet::ear {
namespace {

using desk::Pcm;

constexpr double kFrame = 0.005;  // s
constexpr double kPeak = 0.25;    // -12 dBFS

std::vector<double> powers(const Pcm& sound) {
    const auto frame = static_cast<std::size_t>(std::lround(kFrame * sound.rate));
    std::vector<double> out(sound.samples.size() / frame, 0.0);
    for (std::size_t i = 0; i < out.size() * frame; ++i)
        out[i / frame] +=
            static_cast<double>(sound.samples[i] * sound.samples[i]) / static_cast<double>(frame);
    return out;
}

double meanPower(const Pcm& sound) {
    double sum = 0;
    for (const float sample : sound.samples) sum += static_cast<double>(sample * sample);
    return sum / static_cast<double>(std::max<std::size_t>(1, sound.samples.size()));
}

/// Of the frames within 40 dB of the loudest.
double soundingPower(const Pcm& sound) {
    const std::vector<double> all = powers(desk::withoutHum(sound));
    const double top = all.empty() ? 0 : *std::max_element(all.begin(), all.end());
    double sum = 0;
    std::size_t count = 0;
    for (const double power : all)
        if (power > top * 1e-4) sum += power, ++count;
    return count == 0 ? 0 : sum / static_cast<double>(count);
}

/// Pink by P. Kellet's three poles ("economy" filter, musicdsp.org), white as it comes.
Pcm noise(std::size_t samples, Colour colour, std::uint64_t seed) {
    Random random(seed);
    Pcm out{{}, desk::kClipRate};
    double a = 0, b = 0, c = 0;
    for (std::size_t i = 0; i < samples; ++i) {
        double white = 0;
        for (int k = 0; k < 4; ++k) white += random.unit() - 0.5;
        a = 0.99765 * a + white * 0.0990460;
        b = 0.96300 * b + white * 0.2965164;
        c = 0.57000 * c + white * 1.0526913;
        out.samples.push_back(
            static_cast<float>(colour == Colour::white ? white : a + b + c + white * 0.1848));
    }
    return out;
}

}  // namespace

Pcm inRoom(const Pcm& said, double snr_db, Colour colour, std::uint64_t seed, double before_s,
           double after_s) {
    const Pcm clip = desk::roughlyAtRate(said, desk::kClipRate);
    const auto before = static_cast<std::size_t>(before_s * clip.rate);
    const auto after = static_cast<std::size_t>(after_s * clip.rate);
    Pcm take = noise(before + clip.samples.size() + after, colour, seed);
    const double room = std::sqrt(soundingPower(clip) * std::pow(10, -snr_db / 10) /
                                  std::max(1e-20, meanPower(desk::withoutHum(take))));
    float top = 1e-6f;
    for (const float sample : clip.samples) top = std::max(top, std::fabs(sample));
    const float gain = static_cast<float>(kPeak) / top;
    for (float& sample : take.samples) sample *= static_cast<float>(room) * gain;
    for (std::size_t i = 0; i < clip.samples.size(); ++i)
        take.samples[before + i] += clip.samples[i] * gain;
    return take;
}

Audible audible(const Pcm& clean, double under_db) {
    const std::vector<double> all = powers(clean);
    const double top = all.empty() ? 0 : *std::max_element(all.begin(), all.end());
    const auto heard = [&](double power) { return power > top * std::pow(10, -under_db / 10); };
    const auto first = std::find_if(all.begin(), all.end(), heard);
    const auto last = std::find_if(all.rbegin(), all.rend(), heard).base();
    return {static_cast<double>(first - all.begin()) * kFrame,
            static_cast<double>(last - all.begin()) * kFrame};
}

}  // namespace wrenlet::ear
