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

namespace {

/// Two colours that meet on some screen, and where.
struct Pair {
    Colour front, ground;
    const char* where;
};

}  // namespace

// WCAG 2.2, SC 1.4.3 Contrast (Minimum): text 4.5:1 at least.
TEST_CASE("palette: text can be read on every ground it stands on") {
    const Pair pairs[] = {
        {kInk, kPaper, "adult's pages, captions, the note of a pause"},
        {kInk, kCard, "letters on tiles, controls of the adult's page"},
        {kInk, kMist, "buttons of the adult's pages, names over the sky"},
        {kInk, kMoss, "a button that is held down, names over the far bank"},
        {kInk, kWater, "names below badges"},
        {kInk, kBank, "names over the near bank"},
        {kInk, kSun, "marks on what is to be touched next"},
        {kBerry, kPaper, "what an adult is to look at"},
        {kDeep, kPaper, "the desk"},
        {kDeep, kMist, "the desk"},
        {kBark, kPaper, "the desk"},
        {kBark, kMist, "the desk"},
        {kCard, kDeep, "the desk"},
        {kCard, kBerry, "the desk"},
    };
    for (const Pair& pair : pairs) {
        CAPTURE(pair.where);
        CHECK(contrast(pair.front, pair.ground) >= 4.5);
    }
}

// WCAG 2.2, SC 1.4.11 Non-text Contrast: what is needed to know a control, or its state, 3:1.
TEST_CASE("palette: edges of what can be touched stand out from the ground") {
    const Pair pairs[] = {
        {kInk, kPaper, "controls and buttons, the bars of the mark on their rim"},
        {kInk, kCard, "pips and drawings of the adult's page, what is on a card"},
        {kInk, kMist, "cards over the sky, drawings on buttons"},
        {kInk, kWater, "cards and tiles over the pond"},
        {kInk, kMoss, "cards over the far bank, a control that is held down"},
        {kInk, kBank, "cards over the near bank"},
        {kInk, kSun, "the edge of what is to be touched next"},
        {kDeep, kPaper, "drawings of the adult's page, the paper of an explanation"},
        {kDeep, kMist, "replay and the way out, which stay on the sky"},
        {kDeep, kCard, "drawings of controls"},
        {kBark, kBank, "homes over the near bank"},
        {kBark, kMist, "homes over the sky"},
        {kReed, kPaper, "plants in drawings"},
    };
    for (const Pair& pair : pairs) {
        CAPTURE(pair.where);
        CHECK(contrast(pair.front, pair.ground) >= 3);
    }
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
