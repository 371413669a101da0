// Tiring in a session: what is told against what it is defined by, the chance of the answers under
// each moment of its beginning, with the day's offset integrated by another library (Boost.Math's
// Gauss-Kronrod rule); and what must not be taken for it.
#include "content/practice/tiredness.hpp"

#include <doctest/doctest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>
#include <vector>

#include "content/common/random.hpp"
#include "content/practice/policy.hpp"

using namespace wrenlet;
using namespace wrenlet::practice;

namespace {

using Signs = std::vector<Tiredness::Sign>;
constexpr int kSession = 40;

/// Attention lost at an answer when it begins to go at `from`: as the header has it.
double lost(double asked, double from) {
    return kAttending.tired_depth *
           std::min(1.0, std::max(0.0, asked - from) / kAttending.tired_grows);
}

double nats(const Signs& signs) {
    Tiredness tiredness;
    for (const Tiredness::Sign& sign : signs) tiredness.add(sign);
    return tiredness.nats();
}

double chanceOf(const Signs& signs, double from) {
    double answers = 1;
    for (std::size_t i = 0; i < signs.size(); ++i) {
        const double known = signs[i].known * (1 - lost(static_cast<double>(i), from));
        const double right = known + (1 - known) * signs[i].by_chance;
        if (signs[i].tells) answers *= signs[i].right ? right : 1 - right;
    }
    const boost::math::normal day(0, std::sqrt(kAttending.today_variance));
    const double times = boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
        [&](double offset) {
            double chance = boost::math::pdf(day, offset);
            for (std::size_t i = 0; i < signs.size(); ++i) {
                const double slowing =
                    std::log(1 + kAttending.tired_slowing * lost(static_cast<double>(i), from));
                const boost::math::normal time(offset + slowing, std::sqrt(signs[i].variance));
                chance *= boost::math::pdf(time, signs[i].slower);
            }
            return chance;
        },
        -4.0, 4.0, 15, 1e-12);
    return answers * times;
}

/// A session whose child has lost `gone` of attention at its end, from answer 15 on.
Signs session(std::uint64_t seed, double gone, double slow_day = 0) {
    Random random(seed);
    Signs signs;
    for (int i = 0; i < kSession; ++i) {
        const double share = gone * std::max(0.0, (i - 15.0) / (kSession - 15));
        Tiredness::Sign sign;
        sign.known = .8;
        sign.by_chance = .5;
        sign.variance = .09;
        sign.right = random.unit() < .8 * (1 - share) + (1 - .8 * (1 - share)) * .5;
        double bell = -6;  // twelve even throws make one that is near enough to a bell curve
        for (int n = 0; n < 12; ++n) bell += random.unit();
        sign.slower = slow_day + std::log(1 + .8 * share) + .3 * bell;
        signs.push_back(sign);
    }
    return signs;
}

int calledTired(double gone, double slow_day) {
    int called = 0;
    for (std::uint64_t seed = 1; seed <= 300; ++seed)
        called += nats(session(seed, gone, slow_day)) >= kAttending.tired_from;
    return called;
}

}  // namespace

TEST_CASE("Tiredness: before any answer nothing is told, and early answers tell nothing") {
    CHECK(nats({}) == 0);
    Signs early = session(3, 0);
    early.resize(static_cast<std::size_t>(kAttending.tires_first));
    CHECK(nats(early) == doctest::Approx(0));
}

TEST_CASE("Tiredness: is the ratio of the answers' chances, averaged over when it may begin") {
    for (const std::uint64_t seed : {1u, 2u, 3u})
        for (const double gone : {0., .4}) {
            const Signs signs = session(seed, gone, .2);
            double ratios = 0;
            for (int step = 0; step < 6; ++step)
                ratios += chanceOf(signs, kAttending.tires_first + kAttending.tires_step * step);
            const double never = chanceOf(signs, 1e9);
            CHECK(nats(signs) == doctest::Approx(std::log(ratios / 6 / never)).epsilon(1e-6));
        }
}

TEST_CASE("Tiredness: who tires is told oftener than who does not, on a slow day too") {
    const int awake = calledTired(0, 0), slow = calledTired(0, .35), tired = calledTired(.6, 0);
    CHECK(awake <= 15);
    CHECK(slow <= 30);
    CHECK(tired >= 120);
}

TEST_CASE("Tiredness: what is wrong along a shield speaks neither way") {
    Signs signs = session(5, 0);
    for (std::size_t i = 20; i < signs.size(); ++i) signs[i].tells = false;
    const double with_right = nats(signs);
    for (std::size_t i = 20; i < signs.size(); ++i) signs[i].right = false;
    CHECK(nats(signs) == with_right);
}
