#include "tests/simulator/draw.hpp"

#include <cmath>
#include <numbers>

namespace wrenlet::simulator {

double between(Random& random, double low, double high) {
    return low + (high - low) * random.unit();
}

bool chance(Random& random, double p) {
    return random.unit() < p;
}

double normal(Random& random) {
    const double radius = std::sqrt(-2 * std::log(1 - random.unit()));
    return radius * std::cos(2 * std::numbers::pi * random.unit());
}

double logNormal(Random& random, double spread) {
    return std::exp(spread * normal(random));
}

namespace {

double drawGamma(Random& random, double shape) {
    if (shape < 1) return drawGamma(random, shape + 1) * std::pow(1 - random.unit(), 1 / shape);
    const double d = shape - 1.0 / 3, c = 1 / std::sqrt(9 * d);
    for (;;) {
        const double x = normal(random), v = std::pow(1 + c * x, 3);
        if (v <= 0) continue;
        if (std::log(1 - random.unit()) < 0.5 * x * x + d - d * v + d * std::log(v)) return d * v;
    }
}

}  // namespace

double drawBeta(Random& random, double a, double b) {
    const double x = drawGamma(random, a), y = drawGamma(random, b);
    return x / (x + y);
}

}  // namespace wrenlet::simulator
