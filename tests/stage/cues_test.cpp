#include "game/stage/cues.hpp"

#include <doctest/doctest.h>
#include <ebur128.h>

#include <algorithm>
#include <cmath>
#include <memory>
#include <string>
#include <vector>

using namespace wrenlet::game;

namespace {

// Loudness after EBU R 128 (libebur128) of the loudest 100 ms, as played: the same on both sides.
double loudest(const std::vector<std::int16_t>& mono) {
    constexpr std::size_t kStep = kSampleRate / 100;
    struct Forget {
        void operator()(ebur128_state* state) const { ebur128_destroy(&state); }
    };
    std::unique_ptr<ebur128_state, Forget> state(
        ebur128_init(2, kSampleRate, EBUR128_MODE_M | EBUR128_MODE_S));
    std::vector<std::int16_t> padded = mono;
    padded.resize((mono.size() / kStep + 12) * kStep, 0);
    double most = -HUGE_VAL;
    for (std::size_t at = 0; at + kStep <= padded.size(); at += kStep) {
        std::vector<short> both;
        for (std::size_t i = 0; i < kStep; ++i) both.insert(both.end(), 2, padded[at + i]);
        ebur128_add_frames_short(state.get(), both.data(), kStep);
        double now = -HUGE_VAL;
        ebur128_loudness_window(state.get(), 100, &now);
        most = std::max(most, now);
    }
    return most;
}

std::vector<std::int16_t> sine(double hertz, double dbfs, std::size_t samples) {
    std::vector<std::int16_t> out;
    const double level = std::pow(10.0, dbfs / 20) * 32767;
    for (std::size_t i = 0; i < samples; ++i)
        out.push_back(static_cast<std::int16_t>(
            std::lround(level * std::sin(2 * 3.14159265358979 * hertz * i / kSampleRate))));
    return out;
}

}  // namespace

// EBU Tech 3341, case 1: a stereo 1 kHz sine at -23 dBFS reads -23.0 LUFS, +-0.1.
TEST_CASE("cues: the meter reads what EBU Tech 3341 says") {
    CHECK(loudest(sine(1000, -23, kSampleRate)) == doctest::Approx(-23.0).epsilon(0.1 / 23));
}

TEST_CASE("cues: each lies under the voice by 9 LU, and can still be heard") {
    const Cues cues;
    CHECK(cues.all().size() == 6);
    for (const std::string name : {"lift", "settle", "join", "done", "water", "leaf"}) {
        CAPTURE(name);
        const Cue* cue = cues.find(name);
        REQUIRE(cue != nullptr);
        const double alone = loudest(cue->alone.samples);
        CHECK(alone <= kVoiceLufs - kCueBelowVoice);
        CHECK(alone >= kVoiceLufs - kCueBelowVoice - 12);
        CHECK(loudest(cue->under_speech.samples) <= kLoneSoundLufs - kCueBelowVoice);
        CHECK(cue->alone.samples.size() <= 900u * kSamplesPerMilli);
    }
    CHECK(cues.find("fanfare") == nullptr);
}

TEST_CASE("cues: what is left when one has faded lies under a lone sound by 9 LU") {
    const Cues cues;
    for (const auto& [name, cue] : cues.all()) {
        CAPTURE(name);
        const auto from = cue.fades_after * kSamplesPerMilli;
        REQUIRE(from > 0);
        REQUIRE(from < static_cast<std::int64_t>(cue.alone.samples.size()));
        const std::vector<std::int16_t> left(cue.alone.samples.begin() + from,
                                             cue.alone.samples.end());
        CHECK(loudest(left) <= kLoneSoundLufs - kCueBelowVoice);
        CHECK(cue.fades_after < 400);  // nobody waits long for a word
    }
}

TEST_CASE("cues: they begin and end softly, with no constant part") {
    const Cues cues;
    for (const auto& [name, cue] : cues.all()) {
        CAPTURE(name);
        REQUIRE(cue.alone.samples.size() > 1000);
        CHECK(std::abs(cue.alone.samples.front()) < 20);
        CHECK(std::abs(cue.alone.samples.back()) < 20);
        double sum = 0;
        for (const std::int16_t sample : cue.alone.samples) sum += sample;
        CHECK(std::abs(sum / static_cast<double>(cue.alone.samples.size())) < 40);
    }
}

// A buzzer's power lies in a long row of strong overtones; wood and water have little up there.
TEST_CASE("cues: nothing buzzes") {
    const Cues cues;
    for (const auto& [name, cue] : cues.all()) {
        CAPTURE(name);
        double whole = 0, sharp = 0, held = 0;
        const double keep = std::exp(-2 * 3.14159265358979 * 3000 / kSampleRate);
        for (const std::int16_t sample : cue.alone.samples) {
            held = keep * held + (1 - keep) * sample;  // one pole at 3 kHz
            whole += static_cast<double>(sample) * sample;
            sharp += (sample - held) * (sample - held);
        }
        CHECK(sharp / whole < 0.25);
    }
}

TEST_CASE("cues: computed again they are the same") {
    const Cues one, two;
    for (const auto& [name, cue] : one.all())
        CHECK(cue.alone.samples == two.find(name)->alone.samples);
}
