// One answer, read through a bell curve: against closed forms, against published figures, and
// against another library's numerical integration (Boost.Math's Gauss-Kronrod rule).
#include "content/practice/gaussian.hpp"

#include <doctest/doctest.h>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <cmath>

using namespace wrenlet::practice;

namespace {

template <class Of>
double integral(const Gaussian& z, const Of& of) {
    const boost::math::normal curve(z.mean, std::sqrt(z.variance));
    const double reach = 12 * std::sqrt(z.variance);
    return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(
        [&](double at) { return boost::math::pdf(curve, at) * of(at); }, z.mean - reach,
        z.mean + reach, 12, 1e-12);
}

double likely(double at, Answering answering, bool right) {
    const double p = answering.guess + (1 - answering.guess - answering.slip) / (1 + std::exp(-at));
    return right ? p : 1 - p;
}

Gaussian posterior(const Gaussian& z, Answering answering, bool right) {
    const double total = integral(z, [&](double at) { return likely(at, answering, right); });
    const double mean =
        integral(z, [&](double at) { return at * likely(at, answering, right); }) / total;
    const double variance =
        integral(
            z,
            [&](double at) { return (at - mean) * (at - mean) * likely(at, answering, right); }) /
        total;
    return {mean, variance};
}

}  // namespace

TEST_CASE("Gaussian: the mean and variance after an answer are those of the true posterior") {
    for (const double mean : {-3.0, -0.7, 0.0, 1.5, 4.0})
        for (const double variance : {0.05, 0.6, 2.0, 5.0})
            for (const Answering answering : {Answering{0, 0}, {.25, .08}, {.55, .1}})
                for (const bool right : {true, false}) {
                    const Gaussian z{mean, variance};
                    const Gaussian ours = afterAnswer(z, answering, right);
                    const Gaussian theirs = posterior(z, answering, right);
                    const double spread = std::sqrt(variance);
                    CHECK(std::fabs(ours.mean - theirs.mean) < 3e-3 * spread);
                    CHECK(std::fabs(ours.variance / theirs.variance - 1) < 7e-3);
                }
}

TEST_CASE("Gaussian: the chance of a right answer is the integral over what is believed") {
    for (const double mean : {-2.0, 0.0, 1.0, 3.0})
        for (const double variance : {0.1, 1.0, 4.0}) {
            const Gaussian z{mean, variance};
            const Answering answering{1.0 / 3, .08};
            const double theirs =
                integral(z, [&](double at) { return likely(at, answering, true); });
            CHECK(std::fabs(chanceOfRight(z, answering) - theirs) < 1e-3);
            const double known = integral(z, [](double at) { return 1 / (1 + std::exp(-at)); });
            CHECK(std::fabs(aboutKnown(z) - known) < .02);
            CHECK(std::fabs(shareKnown(z) - known) < 1e-3);
        }
}

TEST_CASE("Gaussian: one right answer from N(0, 1) without guessing gives the known figures") {
    // .413242 and .829231 to six places, computed apart from this code.
    const Gaussian after = afterAnswer({0, 1}, {0, 0}, true);
    CHECK(std::fabs(after.mean - .413242) < 2e-5);
    CHECK(std::fabs(after.variance - .829231) < 2e-5);
}

TEST_CASE("Gaussian: the two-parameter logistic's closed forms") {
    // Birnbaum's model (1968) with a = 1.5, b = .5 at 0: P = .320821, information a^2 P (1 - P) =
    // .490264.
    const double p = logistic(1.5 * (0 - .5));
    CHECK(std::fabs(p - .320821) < 1e-6);
    CHECK(std::fabs(1.5 * 1.5 * p * (1 - p) - .490264) < 1e-6);
    CHECK(logistic(logit(.3)) == doctest::Approx(.3));
    // Where nearly nothing is uncertain, a right answer moves the mean by V (1 - P), to first
    // order.
    const double tiny = 1e-6;
    CHECK((afterAnswer({-.75, tiny}, {0, 0}, true).mean + .75) / tiny ==
          doctest::Approx(1 - p).epsilon(1e-4));
}

TEST_CASE("Gaussian: the share of the bell curve below a point is the table's") {
    const boost::math::normal curve;
    for (const double at : {-2.3263, -1.2816, 0.0, .5, 1.96})
        CHECK(normalBelow(at) == doctest::Approx(boost::math::cdf(curve, at)).epsilon(1e-12));
}
