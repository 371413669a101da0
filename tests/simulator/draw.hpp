// Draws from common distributions on the project's own seeded numbers, so that a simulated child is
// the same child on every machine.
#pragma once

#include "content/common/random.hpp"

namespace wrenlet::simulator {

/// Uniform in [low, high).
double between(Random& random, double low, double high);
bool chance(Random& random, double p);
/// Standard normal (Box & Muller 1958; one of the pair is thrown away).
double normal(Random& random);
/// exp of a normal with mean 0: median 1.
double logNormal(Random& random, double spread);
/// Beta(a, b). REQUIRES: a > 0, b > 0. By gamma draws (Marsaglia & Tsang 2000).
double drawBeta(Random& random, double a, double b);

inline double clamp01(double x) {
    return x < 0 ? 0 : x > 1 ? 1 : x;
}

}  // namespace wrenlet::simulator
