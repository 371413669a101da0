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

TEST_CASE("Mastery: one who guesses between two is rarely called steady") {
    // Binomial tail: P(9 or 10 right of 10 by guessing between two) is .0107; that is the only way
    // to be called steady after ten answers.
    double chance = 0;
    double ways = 1;
    for (int right = 0; right <= 10; ++right) {
        if (after(right, 10, 2).standing == Standing::steady) chance += ways / 1024;
        ways = ways * (10 - right) / (right + 1);
    }
    CHECK(chance > 0);
    CHECK(chance <= .0108);
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
