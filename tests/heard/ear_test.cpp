#include "tests/heard/ear.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "content/common/random.hpp"

using namespace wrenlet;
using heard::places;

namespace {

/// A second of something like a voice: a few tones that swell, and breath.
std::vector<std::int16_t> spoken(std::uint64_t seed, std::size_t samples = 24'000) {
    Random random(seed);
    const double low = 90 + 60 * random.unit(), high = 400 + 900 * random.unit();
    std::vector<std::int16_t> clip;
    for (std::size_t i = 0; i < samples; ++i) {
        const double t = static_cast<double>(i) / 48'000;
        const double swell =
            std::sin(3.14159265 * static_cast<double>(i) / static_cast<double>(samples));
        clip.push_back(static_cast<std::int16_t>(swell * (5000 * std::sin(6.2831853 * low * t) +
                                                          3000 * std::sin(6.2831853 * high * t) +
                                                          1500 * (random.unit() - 0.5))));
    }
    return clip;
}

void lay(std::vector<std::int16_t>& recording, std::size_t at,
         const std::vector<std::int16_t>& clip, double gain) {
    for (std::size_t i = 0; i < clip.size(); ++i)
        recording[at + i] = static_cast<std::int16_t>(recording[at + i] + gain * clip[i]);
}

}  // namespace

TEST_CASE("Ear: a clip is heard where it lies, to the sample, softer and under another sound too") {
    const auto clip = spoken(1), other = spoken(2), over = spoken(3);
    std::vector<std::int16_t> recording(150'000, 0);
    lay(recording, 10'001, clip, 0.7);
    lay(recording, 50'000, other, 0.7);
    lay(recording, 90'123, clip, 0.3);
    lay(recording, 95'000, over, 0.08);
    const auto heard = places(recording, 0, recording.size(), clip);
    REQUIRE(heard.size() == 2);
    CHECK(heard[0].at == 10'001);
    CHECK(heard[1].at == 90'123);
    CHECK(heard[0].like > 0.999);
    CHECK(places(recording, 0, recording.size(), other).size() == 1);
    CHECK(places(recording, 0, recording.size(), spoken(4)).empty());
    CHECK(places(recording, 0, 30'000, other).empty());
}

TEST_CASE("Ear: a clip that begins a sample later is heard a sample later") {
    const auto clip = spoken(5);
    for (const std::size_t at : {2'000u, 2'001u, 2'002u, 2'015u}) {
        std::vector<std::int16_t> recording(40'000, 0);
        lay(recording, at, clip, 0.5);
        const auto heard = places(recording, 0, recording.size(), clip);
        REQUIRE(heard.size() == 1);
        CHECK(heard[0].at == at);
    }
}

TEST_CASE("Ear: loudness is read as EBU Tech 3341 says") {
    // Case 1: a stereo sine of 1 kHz at -23 dBFS is -23.0 LUFS, within 0.1.
    std::vector<std::int16_t> tone;
    for (int i = 0; i < 20 * 48'000; ++i)
        tone.push_back(static_cast<std::int16_t>(std::lround(
            32767 * std::pow(10, -23 / 20.0) * std::sin(6.283185307 * 1000 * i / 48'000))));
    CHECK(std::fabs(heard::loudness(tone) - -23) < 0.1);
    CHECK(std::fabs(heard::loudestMoment(tone) - -23) < 0.3);
}
