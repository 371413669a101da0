#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "tests/simulator/child.hpp"
#include "tests/simulator/draw.hpp"
#include "tests/simulator/sounds.hpp"
#include "tests/simulator/tapper.hpp"

using namespace wrenlet;
using namespace wrenlet::simulator;
using speech::Phoneme;

TEST_CASE("Simulator: draws have the means of their distributions") {
    Random random(1);
    constexpr int kDraws = 20'000;
    double normal_sum = 0, normal_squares = 0, beta_sum = 0;
    for (int i = 0; i < kDraws; ++i) {
        const double x = normal(random);
        normal_sum += x;
        normal_squares += x * x;
        beta_sum += drawBeta(random, 2, 0.5);
    }
    CHECK(std::fabs(normal_sum / kDraws) < 0.03);
    CHECK(std::fabs(normal_squares / kDraws - 1) < 0.05);
    CHECK(std::fabs(beta_sum / kDraws - 0.8) < 0.01);
}

TEST_CASE("Simulator: profiles come in their shares, and their children know accordingly") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    Random natures(7);
    std::array<int, 4> of_profile{};
    constexpr int kChildren = 4000;
    for (int i = 0; i < kChildren; ++i)
        ++of_profile[static_cast<std::size_t>(drawNature(natures).profile)];
    constexpr double kShares[] = {0.12, 0.2, 0.5, 0.18};
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(std::fabs(of_profile[i] / double(kChildren) - kShares[i]) < 0.03);

    for (const Generator generator : kGenerators) {
        CAPTURE(letterOf(generator));
        std::array<double, 4> known{}, rows{};
        for (std::uint64_t seed = 0; seed < 120; ++seed) {
            const auto child = makeChild(generator, bank, stepSeed(3, seed));
            const auto profile = static_cast<std::size_t>(child->nature().profile);
            for (std::size_t row = 0; row < bank.rows; ++row) {
                const double share = child->knownOf(bank.components[row]);
                REQUIRE(share >= 0);
                REQUIRE(share <= 1);
                known[profile] += share;
                rows[profile] += 1;
            }
        }
        for (std::size_t i = 0; i + 1 < 4; ++i)
            CHECK(known[i] / rows[i] < known[i + 1] / rows[i + 1]);
    }
}

TEST_CASE("Simulator: children learn by practice, forget some of it, and answer as they say") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    const auto all = [&bank](const Child& child) {
        double sum = 0;
        for (std::size_t row = 0; row < bank.rows; ++row)
            sum += child.knownOf(bank.components[row]);
        return sum;
    };
    for (const Generator generator : kGenerators) {
        CAPTURE(letterOf(generator));
        double before = 0, evening = 0, morning = 0, promised = 0, right = 0, answers = 0;
        for (std::uint64_t seed = 0; seed < 40; ++seed) {
            const auto child = makeChild(generator, bank, seed);
            const auto twin = makeChild(generator, bank, seed);
            Random random(seed), of_twin(seed);
            before += all(*child);
            for (std::size_t i = 0; i < bank.items.size(); i += 3) {
                const int item = static_cast<int>(i);
                const Answer answer = child->answer(item, 0, random);
                CHECK(answer.choice == twin->answer(item, 0, of_twin).choice);
                CHECK(answer.took_ms > 0);
                promised += child->pRight(item, 1);
                right += answer.choice == bank.items[i].item.answer;
                answers += 1;
                child->practise(item, random);
                twin->practise(item, of_twin);
            }
            evening += all(*child);
            child->night(random);
            morning += all(*child);
        }
        CHECK(evening > before);
        CHECK(morning < evening);
        CHECK(morning > before);
        CHECK(std::fabs(right - promised) / answers < 0.02);
    }
}

namespace {

bool isShielded(const Contrast& contrast, const std::vector<std::string>& shields) {
    return std::any_of(std::begin(kShields), std::end(kShields), [&](const Shield& shield) {
        return std::find(shields.begin(), shields.end(), shield.name) != shields.end() &&
               isAlong(contrast, shield);
    });
}

}  // namespace

TEST_CASE("Simulator: a shielded contrast is never told apart, and never held against the child") {
    const Bank bank = makeBank(WRENLET_TEST_SHARE);
    int shielded = 0;
    double known = 0, right = 0, items = 0;
    std::set<std::string> names;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const auto child = makeChild(Generator::confusions, bank, stepSeed(11, seed));
        if (child->shields().empty()) continue;
        ++shielded;
        CHECK(child->shields().size() <= 2);
        names.insert(child->shields().begin(), child->shields().end());
        if (child->nature().profile < Profile::typical) continue;
        for (std::size_t i = 0; i < bank.items.size(); ++i) {
            const auto& contrasts = bank.items[i].contrasts;
            const bool along = std::any_of(contrasts.begin(), contrasts.end(), [&](int index) {
                return index >= 0 && isShielded(bank.contrasts[static_cast<std::size_t>(index)],
                                                child->shields());
            });
            if (!along) continue;
            known += child->known(static_cast<int>(i));
            right += child->pRight(static_cast<int>(i), 1);
            items += 1;
        }
    }
    CHECK(std::fabs(shielded / 400.0 - 0.25) < 0.06);
    CHECK(names.size() == 5);
    REQUIRE(items > 0);
    CHECK(known / items > 0.6);   // as if the contrast were made
    CHECK(right / items < 0.55);  // though it is not: at best one of two
}

TEST_CASE("Simulator: sounds are alike as Miller and Nicely's listeners heard them") {
    CHECK(likeness(Phoneme::p, Phoneme::k) == doctest::Approx(1));
    CHECK(likeness(Phoneme::k, Phoneme::p) == doctest::Approx(1));
    CHECK(likeness(Phoneme::m, Phoneme::n) == doctest::Approx(0.151 / 0.432));
    CHECK(likeness(Phoneme::v, Phoneme::dh) == doctest::Approx(0.338 / 0.432));
    CHECK(likeness(Phoneme::t, Phoneme::d) < likeness(Phoneme::t, Phoneme::p));
    CHECK(likeness(Phoneme::ih, Phoneme::iy) > likeness(Phoneme::ih, Phoneme::ow));
    CHECK(likeness(Phoneme::ch, Phoneme::jh) > likeness(Phoneme::ch, Phoneme::m));
}

TEST_CASE("Simulator: a tapper keeps to a habit, in a session's middle") {
    const std::vector<std::size_t> order{2, 0, 1};
    const Answer honest{0, 4000, 2};
    Random random(5);
    Tapping same{Tapping::Habit::same, false, 3, 12, 1};
    CHECK_FALSE(same.at(3, 11));
    CHECK(same.at(3, 12));
    CHECK_FALSE(same.at(4, 12));
    for (int item = 12; item < 20; ++item) {
        const Answer tapped = same.answer(honest, order, item, random);
        CHECK(tapped.choice == 0);
        CHECK(tapped.took_ms >= 500);
        CHECK(tapped.took_ms <= 1200);
    }
    const Tapping turns{Tapping::Habit::alternating, true, 3, 12, 0};
    CHECK(turns.answer(honest, order, 12, random).choice == 2);
    CHECK(turns.answer(honest, order, 13, random).choice == 0);
    CHECK(turns.answer(honest, order, 13, random).took_ms == 4000);
}
