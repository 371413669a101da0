// The baselines against published or closed values, and that each does what its name says.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "content/common/random.hpp"
#include "tests/simulator/beta.hpp"
#include "tests/simulator/bkt.hpp"
#include "tests/simulator/counts_reader.hpp"
#include "tests/simulator/draw.hpp"
#include "tests/simulator/elo.hpp"
#include "tests/simulator/policies.hpp"
#include "tests/simulator/run.hpp"

using namespace wrenlet;
using namespace wrenlet::simulator;
using doctest::Approx;

TEST_CASE("Simulator: BKT is Corbett and Anderson's (1995)") {
    const BktCell cell{0.5, 0.4, 0.2, 0.2};
    double known = cell.known;
    known = cell.after(known, false);
    CHECK(known == Approx(0.52).epsilon(1e-9));
    known = cell.after(known, false);
    CHECK(known == Approx(0.527869).epsilon(1e-6));
    known = cell.after(known, true);
    CHECK(known == Approx(0.890355).epsilon(1e-6));
    CHECK(cell.pRight(0.25) == Approx(0.25 * 0.8 + 0.75 * 0.2));
}

TEST_CASE("Simulator: BKT's fit finds the parameters that made the answers") {
    const BktCell made{0.4, 0.15, 0.08, 0.3};
    Random random(21);
    std::vector<Sequence> sequences(3000);
    for (Sequence& answers : sequences) {
        bool known = chance(random, made.known);
        for (int i = 0; i < 8; ++i) {
            answers.push_back(chance(random, known ? 1 - made.slip : made.guess));
            known = known || chance(random, made.learn);
        }
    }
    const BktCell fitted = fitBkt(sequences);
    CHECK(std::fabs(fitted.known - made.known) < 0.06);
    CHECK(std::fabs(fitted.learn - made.learn) < 0.04);
    CHECK(std::fabs(fitted.slip - made.slip) < 0.03);
    CHECK(std::fabs(fitted.guess - made.guess) < 0.05);
}

// A player rated 1613 who scores 2.5 against these five, K = 32: the worked example that many
// texts on Elo's rating give (from memory; the sum agrees to the last digit).
TEST_CASE("Simulator: Elo's rating gives the known example") {
    double expected = 0;
    for (const double opponent : {1609.0, 1477.0, 1388.0, 1586.0, 1720.0})
        expected += eloExpected(1613, opponent);
    CHECK(expected == Approx(2.86657).epsilon(1e-5));
    CHECK(eloAfter(1613, 32, 2.5, expected) == Approx(1601.27).epsilon(1e-5));
}

TEST_CASE("Simulator: the Beta distribution against a published interval and closed forms") {
    CHECK(betaQuantile(0.025, 20, 25) == Approx(0.3039).epsilon(2e-4));
    CHECK(betaQuantile(0.975, 20, 25) == Approx(0.5897).epsilon(2e-4));
    for (const double x : {0.05, 0.3, 0.5, 0.9}) {
        CHECK(betaBelow(x, 1, 1) == Approx(x));
        CHECK(betaBelow(x, 3, 1) == Approx(x * x * x));
        CHECK(betaBelow(x, 0.5, 0.5) == Approx(2 / std::numbers::pi * std::asin(std::sqrt(x))));
    }
}

namespace {

practice::Response answered(const Bank& bank, int item, bool right) {
    const exercise::Item& asked = bank.items[static_cast<std::size_t>(item)].item;
    practice::Response response;
    response.right = asked.choices[asked.answer].id;
    response.chosen = right ? response.right.string() : asked.choices[asked.answer == 0 ? 1 : 0].id;
    return response;
}

/// Asks `session` of a child who answers by `answer`, and gives the items asked.
template <class ByRule>
std::vector<int> played(const Bank& bank, Policy& policy, int session, ByRule answer) {
    std::vector<int> items;
    std::vector<std::uint8_t> resting(bank.items.size(), 0);
    for (int i = 0; i < kItems; ++i) {
        const auto seed = static_cast<std::uint64_t>(session * kItems + i);
        const int item = policy.choose({session, i, 100 + session, seed, resting});
        REQUIRE(item >= 0);
        REQUIRE(resting[static_cast<std::size_t>(item)] == 0);
        resting[static_cast<std::size_t>(item)] = 1;
        auto response = answered(bank, item, answer(item));
        response.day = 100 + session;
        policy.saw(item, response);
        items.push_back(item);
    }
    return items;
}

}  // namespace

TEST_CASE("Simulator: each policy does what its name says") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    BktModel model(bank.rows);
    const auto make = [&](const char* name) {
        for (const NamedPolicy& policy : policies(model))
            if (policy.name == name) return policy.make(bank);
        FAIL(name);
        return std::unique_ptr<Classroom>();
    };
    const auto always = [](int) { return true; };

    const auto fixed = make("fixed");
    const auto in_order = played(bank, *fixed->seat({}).policy, 0, always);
    CHECK(std::is_sorted(in_order.begin(), in_order.end()));

    const auto random = make("random");
    const auto scattered = played(bank, *random->seat({}).policy, 0, always);
    std::set<int> skills;
    for (const int item : scattered)
        skills.insert(bank.items[static_cast<std::size_t>(item)].skill);
    CHECK(skills.size() >= 15);

    // What was wrong yesterday comes first today; what was right comes later.
    const auto leitner = make("leitner");
    const auto of_leitner = leitner->seat({}).policy;
    const auto even = [&](int item) {
        return bank.cellOf(static_cast<std::size_t>(item)) % 2 == 0;
    };
    const auto yesterday = played(bank, *of_leitner, 0, even);
    std::set<int> wrong;
    for (const int item : yesterday)
        if (!even(item)) wrong.insert(bank.cellOf(static_cast<std::size_t>(item)));
    REQUIRE_FALSE(wrong.empty());
    const auto today = played(bank, *of_leitner, 1, always);
    CHECK(wrong.count(bank.cellOf(static_cast<std::size_t>(today.front()))) == 1);

    // A cell that is always right is mastered and left.
    const auto bkt = make("bkt");
    const auto of_bkt = bkt->seat({}).policy;
    const Seat seat = bkt->seat({});
    std::set<int> cells;
    std::vector<std::uint8_t> resting(bank.items.size(), 0);
    for (int i = 0; i < 60; ++i) {
        const int item = seat.policy->choose({0, i, 100, static_cast<std::uint64_t>(i), resting});
        seat.reader->saw(item, answered(bank, item, true));
        cells.insert(bank.cellOf(static_cast<std::size_t>(item)));
    }
    CHECK(cells.size() >= 10);

    // Elo keeps success at its target.
    const auto elo = make("elo");
    const Seat of_elo = elo->seat({});
    Random dice(9);
    double right = 0;
    for (int i = 0; i < 400; ++i) {
        const int item = of_elo.policy->choose({0, i, 100, static_cast<std::uint64_t>(i), resting});
        const bool knows = bank.items[static_cast<std::size_t>(item)].skill % 2 == 0;
        const bool is_right = chance(dice, knows ? 0.95 : 0.4);
        if (i >= 200) right += is_right;
        of_elo.reader->saw(item, answered(bank, item, is_right));
    }
    CHECK(std::fabs(right / 200 - 0.85) < 0.12);

    // Thompson comes to ask what is neither known nor out of reach.
    const auto thompson = make("thompson");
    const auto of_thompson = thompson->seat({}).policy;
    double middling = 0;
    for (int i = 0; i < 3000; ++i) {
        const int item = of_thompson->choose({0, i, 100, static_cast<std::uint64_t>(i), resting});
        const int kind = bank.cellOf(static_cast<std::size_t>(item)) % 3;
        if (i >= 2000) middling += kind == 1;
        of_thompson->saw(item, answered(bank, item,
                                        chance(dice, kind == 0   ? 0.98
                                                     : kind == 1 ? 0.5
                                                                 : 0.02)));
    }
    CHECK(middling / 1000 > 0.9);
}

TEST_CASE("Simulator: counts are read with chance taken off") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    const int row = bank.cellOf(0);
    const int item = bank.components[static_cast<std::size_t>(row)].items.front();
    CountsReader good(bank), poor(bank), unseen(bank);
    for (int i = 0; i < 20; ++i) {
        good.saw(item, answered(bank, item, true));
        poor.saw(item, answered(bank, item, i % 2 == 0));
    }
    CHECK(good.row(row).p_missed < 0.01);
    CHECK(good.row(row).low > 0.8);
    CHECK(good.row(row).high == Approx(1));
    CHECK(poor.row(row).p_missed > 0.8);
    CHECK(poor.row(row).p_missed > unseen.row(row).p_missed);
    CHECK(poor.row(row).high - poor.row(row).low < unseen.row(row).high - unseen.row(row).low);
    CHECK(good.pRight(item) > 0.9);
}
