#include "content/practice/learner.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "tests/practice/small_class.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;
using samples::SmallChild;

namespace {

bool sameMastery(const Mastery& a, const Mastery& b) {
    return std::equal(a.met().begin(), a.met().end(), b.met().begin(), b.met().end());
}

/// Three honest sessions and one that ends in quick touches.
struct Tapper {
    explicit Tapper(std::uint64_t seed, int taps_from = 15) : child(seed, .8) {
        for (int session = 1; session <= 3; ++session) child.play(learner, session);
        found = child.play(learner, 4, taps_from, {});
    }
    SmallChild child;
    Learner learner;
    int found = 0;
};

}  // namespace

TEST_CASE("Learner: what was guessed is taken out again to the last bit") {
    const Tapper tapper(11);
    REQUIRE(tapper.found > 0);
    const int left_out = tapper.learner.notCounted("t-1", 4);
    CHECK(left_out >= 23);
    CHECK(left_out <= 27);
    CHECK(tapper.learner.notCounted() == left_out);
    CHECK(tapper.learner.notCounted("t-1", 3) == 0);
    CHECK(answersByDay(tapper.learner.leftOut()) ==
          std::map<std::int64_t, int>{{20'004, left_out}});
    Mastery without;
    const auto& given = tapper.child.given();
    for (std::size_t i = 0; i + static_cast<std::size_t>(left_out) < given.size(); ++i)
        without.add(given[i]);
    CHECK(tapper.learner.isCounted(given[given.size() - 1 - static_cast<std::size_t>(left_out)]));
    CHECK_FALSE(tapper.learner.isCounted(given[given.size() - static_cast<std::size_t>(left_out)]));
    CHECK(sameMastery(tapper.learner.mastery(), without));
}

TEST_CASE("Learner: a replay of all responses gives the same state to the last bit") {
    const Tapper tapper(12);
    Learner replayed;
    for (const Response& response : tapper.child.given()) replayed.add(response);
    CHECK(sameMastery(replayed.mastery(), tapper.learner.mastery()));
    CHECK(replayed.attention() == tapper.learner.attention());
    CHECK(answersByDay(replayed.leftOut()) == answersByDay(tapper.learner.leftOut()));
    CHECK(replayed.notCounted() > 0);
}

TEST_CASE("Learner: counts again from the next session on") {
    Tapper tapper(13);
    const int left_out = tapper.learner.notCounted();
    REQUIRE(left_out > 0);
    CHECK(tapper.child.play(tapper.learner, 5) == 0);
    CHECK(tapper.learner.notCounted() == left_out);
    CHECK(tapper.learner.attention().state() != Attention::State::guessing);
    const auto& given = tapper.child.given();
    const auto seen = std::count_if(
        given.begin(), given.end(),
        [&tapper](const Response& response) { return tapper.learner.isCounted(response); });
    CHECK(seen == 200 - left_out);
}

TEST_CASE("Learner: second tries say nothing of attention") {
    Tapper tapper(14);
    const Attention before = tapper.learner.attention();
    Response second = tapper.child.given().back();
    second.try_number = 2;
    tapper.learner.add(second);
    CHECK(tapper.learner.attention() == before);
}

TEST_CASE("Mastery: answers taken back leave the state that was before them") {
    SmallChild child(15, .7);
    Learner unused;
    child.play(unused, 1);
    child.play(unused, 2);
    Mastery mastery, half;
    std::vector<Mastery::Before> befores;
    const auto& given = child.given();
    for (std::size_t i = 0; i < given.size(); ++i) {
        if (i < 30) half.add(given[i]);
        if (i >= 30) befores.push_back(mastery.before(given[i]));
        mastery.add(given[i]);
    }
    CHECK_FALSE(sameMastery(mastery, half));
    for (auto before = befores.rbegin(); before != befores.rend(); ++before)
        mastery.takeBack(*before);
    CHECK(sameMastery(mastery, half));
}

TEST_CASE("Learner: in a simulated class tappers are found and honest children are not") {
    // A fixed class; figures over all of the project's simulated children are the simulator's. Who
    // knows little is left out of the slow tappers here: from her own guesses nothing tells them.
    int sessions = 0, alarms = 0, fast = 0, fast_found = 0, slow = 0, slow_found = 0;
    for (std::uint64_t number = 0; number < 160; ++number) {
        const double level = static_cast<double>(number % 11) / 10;
        SmallChild child(stepSeed(41, number), level);
        Learner learner;
        for (int session = 1; session <= 5; ++session) {
            ++sessions;
            alarms += child.play(learner, session) > 0;
        }
        const int from = 8 + static_cast<int>(number % 17);
        const samples::Tapping tapping{level > .55 && number % 2 == 1,
                                       static_cast<int>(number / 2 % 3)};
        const int at = child.play(learner, 6, from, tapping);
        const bool in_time = at > from && at <= from + 12;
        ++(tapping.slow ? slow : fast);
        (tapping.slow ? slow_found : fast_found) += in_time;
    }
    MESSAGE(alarms << " of " << sessions << " honest sessions, " << fast_found << " of " << fast
                   << " quick tappers, " << slow_found << " of " << slow << " slow ones");
    CHECK(alarms <= sessions / 100);
    CHECK(fast_found >= fast * 98 / 100);
    CHECK(slow_found >= slow * 4 / 5);
    CHECK(fast_found + slow_found >= (fast + slow) * 95 / 100);
}

TEST_CASE("Learner: who misses nearly everything but listens is not found guessing") {
    int sessions = 0, alarms = 0, right = 0, answers = 0;
    for (std::uint64_t number = 0; number < 150; ++number) {
        SmallChild child(stepSeed(42, number), .1);
        Learner learner;
        for (int session = 1; session <= 4; ++session) {
            ++sessions;
            alarms += child.play(learner, session) > 0;
        }
        for (const Response& response : child.given()) right += response.isRight();
        answers += static_cast<int>(child.given().size());
    }
    MESSAGE(alarms << " of " << sessions << " honest sessions, right " << right << " of "
                   << answers);
    CHECK(right < answers * 6 / 10);
    // One in a hundred over all children; these are those for whom it is hardest.
    CHECK(alarms <= sessions / 50);
}
