#include "content/practice/mastery.hpp"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

/// `right` of `seen` first tries at one cell, among `choices` choices.
Evidence after(int right, int seen, int choices) {
    Mastery mastery;
    Response response = samples::response();
    response.choices.clear();
    for (int i = 0; i < choices; ++i) response.choices.push_back("w" + std::to_string(i));
    response.right = "w0";
    for (int i = 0; i < seen; ++i) {
        response.chosen = i < right ? "w0" : "w1";
        response.means = i < right ? "" : "heard another rime";
        mastery.add(response);
    }
    return mastery.evidence(cellOf(response));
}

}  // namespace

TEST_CASE("Mastery: Wilson's interval gives the published values") {
    // 25 of 100 at 95 %: .175451 to .343046, a published worked example; 1 of 11 computed from the
    // same formula (Wilson 1927).
    const Interval a = wilson(25, 100, 1.96);
    CHECK(std::fabs(a.low - .175451) < 2e-6);
    CHECK(std::fabs(a.high - .343046) < 2e-6);
    const Interval b = wilson(1, 11, 1.96);
    CHECK(std::fabs(b.low - .016232) < 2e-6);
    CHECK(std::fabs(b.high - .377365) < 2e-6);
}

TEST_CASE("Mastery: the four words, at the counts where they change") {
    CHECK(after(0, 0, 2).standing == Standing::too_little);
    CHECK(after(2, 2, 4).standing == Standing::too_little);
    CHECK(after(7, 7, 2).standing == Standing::steady);
    CHECK(after(6, 6, 2).standing != Standing::steady);
    CHECK(after(4, 4, 4).standing == Standing::steady);
    CHECK(after(3, 11, 3).standing == Standing::missed);
    CHECK(after(20, 25, 3).standing == Standing::growing);
    CHECK(standingWord(Standing::too_little) == "too little to say");
}

namespace {

/// How likely one who guesses among `choices` is right `fewest` times or more of `seen` (binomial
/// tail); and how likely that gets a standing of steady.
struct Guessing {
    double tail = 0, steady = 0;
};

Guessing guessing(int fewest, int seen, int choices) {
    Guessing chance;
    const double p = 1.0 / choices;
    double ways = 1;
    for (int right = 0; right <= seen; ++right) {
        const double likely = ways * std::pow(p, right) * std::pow(1 - p, seen - right);
        if (right >= fewest) chance.tail += likely;
        if (after(right, seen, choices).standing == Standing::steady) chance.steady += likely;
        ways = ways * (seen - right) / (right + 1);
    }
    return chance;
}

}  // namespace

TEST_CASE("Mastery: one who guesses is rarely called steady") {
    // Tails of the binomial distribution, as tables have them.
    CHECK(guessing(9, 10, 2).tail == doctest::Approx(.0107).epsilon(.005));
    CHECK(guessing(8, 10, 2).tail == doctest::Approx(.0547).epsilon(.005));
    CHECK(guessing(7, 10, 3).tail == doctest::Approx(.0197).epsilon(.005));
    CHECK(guessing(6, 10, 4).tail == doctest::Approx(.0197).epsilon(.005));
    CHECK(guessing(4, 4, 2).tail == doctest::Approx(.0625).epsilon(.005));
    // Ten answers: 9 right of two choices, more than 7 of three, more than 6 of four; never 4 of 4
    // thumbs up or down.
    CHECK(guessing(9, 10, 2).steady > 0);
    CHECK(guessing(9, 10, 2).steady <= .0108);
    CHECK(guessing(7, 10, 3).steady > 0);
    CHECK(guessing(7, 10, 3).steady <= .0197);
    CHECK(guessing(6, 10, 4).steady > 0);
    CHECK(guessing(6, 10, 4).steady <= .0197);
    CHECK(after(4, 4, 2).standing != Standing::steady);
}

TEST_CASE("Mastery: practice after a miss is no evidence, and foils are counted by their meaning") {
    Mastery mastery;
    Response response = samples::response();
    response.chosen = response.choices.back() == response.right ? response.choices.front()
                                                                : response.choices.back();
    response.means = "heard another rime";
    mastery.add(response);
    response.try_number = 2;
    response.chosen = response.right;
    mastery.add(response);
    const Evidence evidence = mastery.evidence(cellOf(response));
    CHECK(evidence.seen == 1);
    CHECK(evidence.right == 0);
    CHECK(evidence.taken.at("heard another rime") == 1);
}
