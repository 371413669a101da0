// The Beta distribution, for rows that are read by counts.
#pragma once

namespace wrenlet::simulator {

/// P(X <= x), X ~ Beta(a, b): the regularized incomplete beta function, by its continued fraction
/// (Abramowitz & Stegun 26.5.8). REQUIRES: a > 0, b > 0.
double betaBelow(double x, double a, double b);

/// The x of which a share p lies below. REQUIRES: 0 < p < 1.
double betaQuantile(double p, double a, double b);

}  // namespace wrenlet::simulator
