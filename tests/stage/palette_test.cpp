#include "game/stage/palette.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

using namespace wrenlet::game;
using namespace wrenlet::game::palette;

// WCAG 2.2: contrast runs from 1:1 to 21:1; #767676 is the well-known last grey that passes 4.5:1
// on white and #777777 the first that does not.
TEST_CASE("palette: the contrast formula gives WCAG's own figures") {
    CHECK(contrast({0, 0, 0}, {255, 255, 255}) == doctest::Approx(21).epsilon(1e-6));
    CHECK(contrast(kSun, kSun) == doctest::Approx(1));
    CHECK(contrast(kInk, kPaper) == contrast(kPaper, kInk));
    CHECK(contrast({0x76, 0x76, 0x76}, kCard) >= 4.5);
    CHECK(contrast({0x77, 0x77, 0x77}, kCard) < 4.5);
}

// 1.4.3: text 4.5:1 at least.
TEST_CASE("palette: text can be read on every ground it stands on") {
    for (const Colour ground : {kPaper, kCard, kMist, kWater, kMoss, kBank, kSun})
        CHECK(contrast(kInk, ground) >= 4.5);
    for (const Colour ground : {kPaper, kMist}) {
        CHECK(contrast(kDeep, ground) >= 4.5);
        CHECK(contrast(kBark, ground) >= 4.5);
    }
    CHECK(contrast(kCard, kDeep) >= 4.5);
    CHECK(contrast(kCard, kBerry) >= 4.5);
    CHECK(contrast(kBerry, kPaper) >= 4.5);
}

// 1.4.11: what is needed to know a control 3:1 at least.
TEST_CASE("palette: edges of what can be touched stand out from the ground") {
    CHECK(contrast(kDeep, kPaper) >= 3);
    CHECK(contrast(kDeep, kMist) >= 3);
    CHECK(contrast(kDeep, kCard) >= 3);
    CHECK(contrast(kReed, kPaper) >= 3);
    CHECK(contrast(kBark, kBank) >= 3);
    CHECK(contrast(kInk, kWater) >= 3);
}

TEST_CASE("palette: the pairs that must not be used are known to fail") {
    CHECK(contrast(kDeep, kWater) < 3);
    CHECK(contrast(kSun, kPaper) < 3);  // sun is never an edge by itself
}

TEST_CASE("palette: the look's page quotes these figures") {
    struct Quote {
        Colour a, b;
        double said;
    };
    const Quote quotes[] = {
        {kInk, kPaper, 12.4}, {kInk, kCard, 13.4}, {kInk, kMist, 11.3},  {kInk, kWater, 6.9},
        {kInk, kMoss, 8.7},   {kInk, kBank, 8.1},  {kInk, kSun, 6.4},    {kDeep, kPaper, 5.3},
        {kDeep, kMist, 4.8},  {kCard, kDeep, 5.7}, {kDeep, kWater, 2.9}, {kReed, kPaper, 3.7},
        {kBark, kPaper, 6.3}, {kBark, kMist, 5.7}, {kBark, kBank, 4.1},  {kBerry, kPaper, 5.0},
        {kCard, kBerry, 5.4},
    };
    for (const Quote& quote : quotes) {
        CAPTURE(quote.said);
        CHECK(std::abs(contrast(quote.a, quote.b) - quote.said) <= 0.06);
    }
}
