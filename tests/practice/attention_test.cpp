#include "content/practice/attention.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "content/common/random.hpp"
#include "content/practice/policy.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

constexpr double kClose = 1e-9;

/// Answered in the very time that is expected of her.
Glance glance(double expected, bool right, std::size_t choices, std::size_t place = 0) {
    Glance one{expected, right};
    one.choices = choices;
    one.place = place;
    one.log_ms = std::log(kAttending.usual_ms);
    return one;
}

/// Odds of guessing at her own pace against listening, after one answer.
double oddsAfter(const Glance& one) {
    Attention attention;
    attention.add(one);
    return attention.chanceOf(Attention::kOwnPace) / attention.chanceOf(Attention::kListening);
}

}  // namespace

TEST_CASE("Attention: what a question tells is the divergence of guessing from listening") {
    // .5 ln(.5 / .9) + .5 ln(.5 / .1), computed by hand; nothing where she cannot but guess.
    CHECK(std::fabs(tellsListening(.9, 2) - .510826) < 1e-6);
    CHECK(std::fabs(tellsListening(.9, 3) - .933663) < 1e-6);
    CHECK(tellsListening(.5, 2) == 0);
    CHECK(tellsListening(.2, 4) == 0);
    CHECK(tellsListening(1, 1) == 0);
    CHECK(tellsListening(.9, 4) > tellsListening(.8, 4));
}

TEST_CASE("Attention: a wrong answer speaks for guessing by what she was believed to know") {
    // Odds, against an answer that she could but guess: 1 / (1 - k), with k = c (p - g) / (1 - g)
    // and c what is held to be kept of it at first.
    const double c = kAttending.sure_at_first;
    const double even = oddsAfter(glance(1. / 3, false, 3));
    CHECK(std::fabs(oddsAfter(glance(2. / 3, false, 3)) / even - 1 / (1 - c / 2)) < kClose);
    CHECK(std::fabs(oddsAfter(glance(5. / 6, false, 3)) / even - 1 / (1 - c * 3 / 4)) < kClose);
    // Less than chance is chance.
    CHECK(oddsAfter(glance(.1, false, 3)) == even);
    // And a right one against it: h / (k + (1 - k) h), with h = g at a session's first touch.
    const double right = oddsAfter(glance(2. / 3, true, 3));
    const double known = c / 2;
    CHECK(std::fabs(right / oddsAfter(glance(1. / 3, true, 3)) -
                    (1. / 3) / (known + (1 - known) / 3)) < kClose);
    // Along a shielded contrast it says nothing of the kind.
    Glance shielded = glance(.9, false, 2);
    shielded.tells = false;
    CHECK(oddsAfter(shielded) < oddsAfter(glance(.9, false, 2)) / 3);
}

TEST_CASE("Attention: a prompt heard again speaks for listening") {
    Glance again = glance(.5, false, 2);
    const double once = oddsAfter(again);
    again.replayed = true;
    const double ratio = (kAttending.tapper_replays / kAttending.replays) /
                         ((1 - kAttending.tapper_replays) / (1 - kAttending.replays));
    CHECK(std::fabs(oddsAfter(again) / once - ratio) < kClose);
}

TEST_CASE("Habit: places touched before are told from any place") {
    Habit same, alternating, none;
    for (int i = 0; i < 12; ++i) {
        same.touched(1, 3);
        alternating.touched(static_cast<std::size_t>(i % 2), 2);
    }
    CHECK(same.likely(1, 3) > .7);
    CHECK(alternating.likely(0, 2) > .7);
    CHECK(std::fabs(none.likely(2, 4) - .25) < kClose);
    for (const Habit& habit : {same, alternating, none})
        for (const std::size_t choices : {2u, 3u, 8u}) {
            double all = 0;
            for (std::size_t place = 0; place < choices; ++place)
                all += habit.likely(place, choices);
            CHECK(std::fabs(all - 1) < kClose);
        }
}

TEST_CASE("Timing: one answer moves what is usual by Kalman's gain") {
    Timing timing;
    const double usual = std::log(kAttending.usual_ms);
    const double v = kAttending.own_variance, s = kAttending.spread * kAttending.spread;
    CHECK(std::fabs(timing.expected(Timing::kNoKind, 0).variance - (v + s)) < kClose);
    timing.learn(Timing::kNoKind, 0, usual + .5, false);
    CHECK(std::fabs(timing.own().mean - (usual + .5 * v / (v + s))) < kClose);
    CHECK(std::fabs(timing.own().variance - v * s / (v + s)) < kClose);
}

TEST_CASE("Timing: learns a child's own times, and no pause spoils them") {
    Random random(7);
    Timing timing;
    const double own = std::log(1'800);
    for (int i = 0; i < 200; ++i) {
        // A uniform throw with standard deviation .3.
        const double off = (random.unit() - .5) * std::sqrt(12) * .3;
        timing.learn(0, 0, own + off, i % 4 == 0);
        if (i % 40 == 39) timing.learn(0, 0, logTime(600'000), false);  // called away
    }
    CHECK(std::fabs(timing.expected(0, 0).mean - own) < .1);
    CHECK(timing.spread() > .25);
    CHECK(timing.spread() < .4);
    CHECK(std::fabs(timing.replays() - .25) < .03);
    CHECK(logTime(0) == std::log(kAttending.shortest_ms));
}

TEST_CASE("Attention: who misses what she was believed to miss is never found guessing") {
    for (const std::size_t choices : {2u, 3u, 4u}) {
        Attention attention;
        double most = 0;
        for (std::size_t i = 0; i < 200; ++i) {
            attention.add(glance(1. / static_cast<double>(choices), false, choices, i % choices));
            most = std::max(most, attention.guessing());
            CHECK(attention.state() != Attention::State::guessing);
        }
        // Wrong answers said nothing; that no prompt was heard again did, until it was usual.
        CHECK(most < .3);
    }
}

TEST_CASE("Attention: who is quick from the start, but right, is not found guessing") {
    for (const std::size_t every : {100u, 5u}) {  // one of so many is missed
        Attention attention;
        for (std::size_t i = 1; i <= 40; ++i) {
            Glance quick = glance(.75, i % every != 0, 3, i % 3);
            quick.log_ms = logTime(i % 3 == 0 ? 500 : 900);
            attention.add(quick);
            CHECK(attention.state() != Attention::State::guessing);
        }
        CHECK(attention.timing().own().mean < logTime(1'200));
    }
    // Right no more often than by chance, as quickly from the first answer on: found.
    Attention attention;
    bool found = false;
    for (std::size_t i = 0; i < 40; ++i) {
        Glance quick = glance(.75, i % 3 == 0, 3, i * 2 % 3);
        quick.log_ms = logTime(i % 2 == 0 ? 500 : 900);
        attention.add(quick);
        found |= attention.state() == Attention::State::guessing;
    }
    CHECK(found);
}

TEST_CASE("Attention: quick touches after honest ones are found, and where they began") {
    Attention attention;
    for (std::size_t i = 0; i < 20; ++i) attention.add(glance(.85, i % 7 != 3, 3, i % 3));
    CHECK(attention.state() != Attention::State::guessing);
    const Timing before = attention.timing();
    std::size_t touches = 0;
    while (attention.state() != Attention::State::guessing && touches < 12) {
        Glance quick = glance(.85, touches % 3 == 0, 3, touches * 2 % 3);
        quick.log_ms = logTime(700);
        attention.add(quick);
        ++touches;
    }
    CHECK(attention.state() == Attention::State::guessing);
    CHECK(touches <= 6);
    CHECK(attention.guessed() == touches);
    // Her own times stay what they were before.
    CHECK(std::fabs(attention.timing().own().mean - before.own().mean) < 1e-12);
    CHECK(std::fabs(attention.timing().spread() - before.spread()) < 1e-12);

    SUBCASE("and while it lasts it stays found, until she listens again") {
        for (std::size_t i = 0; i < 14; ++i) attention.add(glance(.92, true, 4, i * 3 % 4));
        CHECK(attention.state() != Attention::State::guessing);
    }
    SUBCASE("and another session begins anew, with her times kept") {
        attention.beginSession();
        CHECK(attention.state() == Attention::State::listening);
        CHECK(attention.guessing() < .05);
        CHECK(attention.timing().own().mean == before.own().mean);
    }
}

TEST_CASE("Attention: slower and less right than usual, but not by chance, is tired") {
    Attention attention;
    Random random(3);
    for (std::size_t i = 0; i < 60; ++i) attention.add(glance(.9, i % 12 != 5, 3, i % 3));
    bool found = false;
    for (std::size_t i = 0; i < 40 && !found; ++i) {
        Glance slow = glance(.9, i % 3 != 1, 3, random.below(3));
        slow.log_ms += .35;
        attention.add(slow);
        CHECK(attention.state() != Attention::State::guessing);
        found = attention.state() == Attention::State::tired;
    }
    CHECK(found);
}
