#include "tests/simulator/beta.hpp"

#include <cmath>

namespace wrenlet::simulator {

namespace {

/// By the modified Lentz method.
double continuedFraction(double x, double a, double b) {
    constexpr double kTiny = 1e-300;
    const auto apart = [](double value) { return std::fabs(value) < kTiny ? kTiny : value; };
    double c = 1, d = 1 / apart(1 - (a + b) * x / (a + 1)), result = d;
    for (int m = 1; m < 300; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        d = 1 / apart(1 + even * d);
        c = apart(1 + even / c);
        result *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        d = 1 / apart(1 + odd * d);
        c = apart(1 + odd / c);
        const double step = d * c;
        result *= step;
        if (std::fabs(step - 1) < 1e-12) break;
    }
    return result;
}

}  // namespace

double betaBelow(double x, double a, double b) {
    if (x <= 0) return 0;
    if (x >= 1) return 1;
    const double front = std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) +
                                  a * std::log(x) + b * std::log(1 - x));
    if (x < (a + 1) / (a + b + 2)) return front * continuedFraction(x, a, b) / a;
    return 1 - front * continuedFraction(1 - x, b, a) / b;
}

double betaQuantile(double p, double a, double b) {
    double low = 0, high = 1;
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (betaBelow(middle, a, b) < p ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace wrenlet::simulator
