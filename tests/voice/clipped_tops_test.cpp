#include "editor/voice/clipped_tops.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/fixtures/sounds.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using namespace wrenlet::fixtures;

namespace {

/// A bell-like wave that dies away: its first top is by far its highest.
Pcm ringing(double hertz, double top, double fall_s) {
    Pcm out = silence(0.3);
    for (std::size_t i = 0; i < out.samples.size(); ++i) {
        const double s = static_cast<double>(i) / kClipRate;
        out.samples[i] = static_cast<float>(top * std::exp(-s / fall_s) *
                                            std::sin(2 * std::numbers::pi * hertz * s + 0.1));
    }
    return joined({silence(0.2), out});
}

Pcm cutAt(Pcm take, float most) {
    for (float& sample : take.samples) sample = std::clamp(sample, -most, most);
    return take;
}

Pcm inSteps(Pcm take, float gain = 1) {
    for (float& sample : take.samples) sample = std::round(gain * sample * 32768) / 32768;
    return take;
}

}  // namespace

TEST_CASE("Clipped: a single top that was cut is found, also turned down, and where it lies") {
    const Pcm bell = ringing(700, 0.35, 0.002);
    CHECK_FALSE(clippedTops(inSteps(bell)));
    for (const float gain : {1.0f, 0.5f, 0.2f}) {
        CAPTURE(gain);
        const auto found = clippedTops(inSteps(cutAt(bell, 0.25f), gain));
        REQUIRE(found);
        CHECK(std::fabs(found->begin_s - 0.2003) < 0.0003);
        CHECK(found->end_s > found->begin_s);
        CHECK(found->end_s < 0.201);
    }
}

TEST_CASE("Clipped: of a fast wave only pairs of samples are cut, and two pairs tell") {
    // At 6 kHz, eight samples a turn, two of them near each top.
    const Pcm hiss = ringing(6000, 0.3, 0.003);
    CHECK_FALSE(clippedTops(inSteps(hiss)));
    CHECK(clippedTops(inSteps(cutAt(hiss, 0.15f))));
}

TEST_CASE("Clipped: one equal pair at the top is chance") {
    Pcm bell = inSteps(ringing(700, 0.3, 0.01));
    const auto top = std::max_element(bell.samples.begin(), bell.samples.end());
    *(top + 1) = *top;
    CHECK_FALSE(clippedTops(bell));
}

TEST_CASE("Clipped: tops that rounding alone makes flat are not cut") {
    for (const double hertz : {60.0, 101.0, 153.0, 333.0, 707.0})
        for (const double db : {-38.0, -30.0, -20.0}) {
            CAPTURE(hertz);
            CAPTURE(db);
            CHECK_FALSE(clippedTops(inSteps(joined({silence(0.2), tone(hertz, db, 0.4)}))));
        }
}

TEST_CASE("Clipped: nothing, one sample and a constant are not") {
    CHECK_FALSE(clippedTops({}));
    CHECK_FALSE(clippedTops({{0.5f}, kClipRate}));
    CHECK_FALSE(clippedTops({std::vector<float>(100, 0.5f), kClipRate}));
}
