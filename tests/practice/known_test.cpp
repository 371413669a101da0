// Two abilities that both are needed: against another library's integration over both (Boost.Math).
#include "content/practice/known.hpp"

#include <doctest/doctest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

using namespace wrenlet::practice;

namespace {

double over(const Gaussian& z, const auto& of) {
    const boost::math::normal curve(z.mean, std::sqrt(z.variance));
    const double reach = 9 * std::sqrt(z.variance);
    return boost::math::quadrature::gauss_kronrod<double, 31>::integrate(
        [&](double at) { return boost::math::pdf(curve, at) * of(at); }, z.mean - reach,
        z.mean + reach, 8, 1e-9);
}

double overBoth(const Known& known, const auto& of) {
    return over(known.task, [&](double task) {
        return over(known.sound, [&](double sound) { return of(task, sound); });
    });
}

}  // namespace

TEST_CASE("Known: task and sound after an answer are those of the true posterior of both") {
    for (const Known& known : {Known{{1, 1}, {2, 3}}, {{3, .5}, {0, 2}}, {{-1, 2}, {1, .3}}})
        for (const Answering answering : {Answering{.38, .09}, {.55, .09}, {0, 0}})
            for (const bool right : {true, false}) {
                const auto likely = [&](double task, double sound) {
                    const double p = answering.guess + (1 - answering.guess - answering.slip) /
                                                           (1 + std::exp(-task)) /
                                                           (1 + std::exp(-sound));
                    return right ? p : 1 - p;
                };
                const double total = overBoth(known, likely);
                if (right) CHECK(std::fabs(chanceOfRight(known, answering) - total) < 2e-3);
                const double task =
                    overBoth(known, [&](double t, double s) { return t * likely(t, s); }) / total;
                const double sound =
                    overBoth(known, [&](double t, double s) { return s * likely(t, s); }) / total;
                const Known after = afterAnswer(known, answering, right);
                CHECK(std::fabs(after.task.mean - task) < .01 * std::sqrt(known.task.variance));
                CHECK(std::fabs(after.sound.mean - sound) < .01 * std::sqrt(known.sound.variance));
            }
}

TEST_CASE("Known: how likely less than a share is known, and the share at a quantile") {
    for (const Known& known : {Known{{1, 1}, {2, 3}}, {{3, .5}, {0, 2}}, {{-1, 2}, {1, .3}}})
        for (const double share : {.2, .6, .9}) {
            const double theirs = over(known.sound, [&](double sound) {
                const double needed = share * (1 + std::exp(-sound));
                if (needed >= 1) return 1.0;
                return boost::math::cdf(
                    boost::math::normal(known.task.mean, std::sqrt(known.task.variance)),
                    std::log(needed / (1 - needed)));
            });
            CHECK(std::fabs(chanceBelow(known, share) - theirs) < .04);
            CHECK(quantile(known, chanceBelow(known, share)) ==
                  doctest::Approx(share).epsilon(.01));
        }
}

TEST_CASE("Known: where the sound is likely the gap, a miss says little of the task") {
    const Known hard_sound{{2, 1}, {-2, 1}}, sure_sound{{2, 1}, {4, .1}};
    const auto fell = [](const Known& known) {
        return known.task.mean - afterAnswer(known, {.38, .09}, false).task.mean;
    };
    CHECK(fell(hard_sound) > 0);
    CHECK(fell(hard_sound) < fell(sure_sound) / 4);
}
