// One answer, read through a bell curve: how knowledge z, of which we believe N(mean, variance),
// is believed after an answer was right or wrong. z is on the scale of log-odds; what guessing and
// slips do to an answer stands between z and the answer.
//
//   P(right | z) = g + (1 - g - s) L(z),   L(z) = 1 / (1 + exp(-z))
//
// with g the chance of guessing right and s that of a slip (the four-parameter logistic of item
// response theory: Barton & Lord 1981). The belief after an answer is the bell curve with the mean
// and variance of the true posterior (assumed-density filtering: Opper 1998; Minka 2001), taken by
// Gauss-Hermite quadrature with 11 points (Abramowitz & Stegun, table 25.10).
#pragma once

#include <cmath>
#include <span>

namespace wrenlet::practice {

struct Gaussian {
    double mean = 0;
    double variance = 1;  // > 0
    bool operator==(const Gaussian&) const = default;
};

/// How an answer comes about. REQUIRES: 0 <= guess, 0 <= slip, guess + slip < 1.
struct Answering {
    double guess = 0;
    double slip = 0;
};

double logistic(double z);
/// REQUIRES: 0 < p < 1.
double logit(double p);
/// The share of the standard bell curve below x.
double normalBelow(double x);

/// Nodes and weights for a mean over N(0, 1).
struct Node {
    double at, weight;
};
std::span<const Node> nodes();
/// The mean of `of` at z.
template <class Of>
double meanOver(const Gaussian& z, const Of& of) {
    const double spread = std::sqrt(z.variance);
    double mean = 0;
    for (const Node& node : nodes()) mean += node.weight * of(z.mean + spread * node.at);
    return mean;
}

/// The mean of L(z).
double shareKnown(const Gaussian& z);
/// The chance that the next answer is right.
double chanceOfRight(const Gaussian& z, Answering answering);
/// The belief in z after that answer.
Gaussian afterAnswer(const Gaussian& z, Answering answering, bool right);
/// shareKnown() by MacKay's approximation (1992): within .02 of the integral, and quick.
double aboutKnown(const Gaussian& z);

}  // namespace wrenlet::practice
