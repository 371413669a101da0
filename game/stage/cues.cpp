#include "game/stage/cues.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "content/common/random.hpp"

namespace wrenlet::game {

namespace {

constexpr double kPi = 3.14159265358979323846;

using Sound = std::vector<double>;

double seconds(std::size_t samples) {
    return static_cast<double>(samples) / kSampleRate;
}

// A rise of 4 ms: nothing in here begins with a click.
double softStart(double t) {
    return t < 0.004 ? 0.5 - 0.5 * std::cos(kPi * t / 0.004) : 1;
}

void add(Sound& sound, double at, const Sound& other) {
    const auto first = static_cast<std::size_t>(at * kSampleRate);
    if (sound.size() < first + other.size()) sound.resize(first + other.size(), 0.0);
    for (std::size_t i = 0; i < other.size(); ++i) sound[first + i] += other[i];
}

// A small wooden bar. Its overtones lie where those of a free bar lie (Fletcher & Rossing, The
// Physics of Musical Instruments: 1 : 2.76 : 5.40) and die away the faster the higher they are.
Sound wood(double hertz, double decay, double loudness) {
    struct Mode {
        double ratio, level, decay;
    };
    constexpr Mode kModes[] = {{1, 1, 1}, {2.76, 0.22, 0.4}, {5.40, 0.05, 0.2}};
    Sound sound(static_cast<std::size_t>(decay * 6 * kSampleRate));
    for (std::size_t i = 0; i < sound.size(); ++i) {
        const double t = seconds(i);
        for (const Mode& mode : kModes)
            sound[i] += loudness * softStart(t) * mode.level * std::exp(-t / (decay * mode.decay)) *
                        std::sin(2 * kPi * hertz * mode.ratio * t);
    }
    return sound;
}

// A drop: an air bubble's tone, rising as it nears the surface.
Sound drop(double hertz, double rise, double decay, double loudness) {
    Sound sound(static_cast<std::size_t>(decay * 6 * kSampleRate));
    double turn = 0;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        const double t = seconds(i);
        turn += 2 * kPi * hertz * (1 + rise * t / (6 * decay)) / kSampleRate;
        sound[i] = loudness * softStart(t) * std::exp(-t / decay) * std::sin(turn);
    }
    return sound;
}

// A leaf: breath-like noise, dull and short, that swells and goes.
Sound leaf(double length, double loudness, std::uint64_t seed) {
    Random random(seed);
    Sound sound(static_cast<std::size_t>(length * kSampleRate));
    double low = 0, lower = 0;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        low += 0.12 * (random.unit() * 2 - 1 - low);
        lower += 0.03 * (low - lower);
        const double swell = std::sin(kPi * seconds(i) / length);
        sound[i] = loudness * (low - lower) * swell * swell;
    }
    return sound;
}

Pcm toPcm(const Sound& sound) {
    Pcm pcm;
    const auto fade = static_cast<std::size_t>(kFadeSamples);
    for (std::size_t i = 0; i < sound.size(); ++i) {
        const std::size_t left = sound.size() - i;
        const double out =
            left < fade ? static_cast<double>(left) / static_cast<double>(fade) : 1.0;
        pcm.samples.push_back(
            static_cast<std::int16_t>(std::lround(std::clamp(sound[i] * out, -1.0, 1.0) * 32767)));
    }
    return pcm;
}

constexpr double kUnderSpeech = 0.47;  // of its loudness alone: 6.6 dB

Cue cue(Sound sound, Millis fades_after) {
    Cue cue{toPcm(sound), {}, fades_after};
    for (double& sample : sound) sample *= kUnderSpeech;
    cue.under_speech = toPcm(sound);
    return cue;
}

}  // namespace

Cues::Cues() {
    Sound lift = wood(620, 0.035, 0.075);
    Sound settle = wood(392, 0.055, 0.060);
    Sound join = wood(466, 0.045, 0.050);
    add(join, 0.09, wood(587, 0.05, 0.055));
    add(join, 0.15, drop(700, 0.9, 0.04, 0.040));
    Sound done = wood(440, 0.06, 0.046);
    add(done, 0.16, wood(523, 0.06, 0.046));
    add(done, 0.32, wood(659, 0.08, 0.048));
    Sound water = drop(520, 1.2, 0.05, 0.062);
    add(water, 0.11, drop(760, 1.0, 0.04, 0.042));

    cues_["lift"] = cue(lift, 40);
    cues_["settle"] = cue(settle, 40);
    cues_["join"] = cue(join, 180);
    cues_["done"] = cue(done, 380);
    cues_["water"] = cue(water, 120);
    cues_["leaf"] = cue(leaf(0.32, 0.14, 11), 200);
}

const Cue* Cues::find(std::string_view name) const {
    const auto at = cues_.find(name);
    return at == cues_.end() ? nullptr : &at->second;
}

}  // namespace wrenlet::game
