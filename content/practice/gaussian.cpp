#include "content/practice/gaussian.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wrenlet::practice {
namespace {

constexpr Node kNodes[] = {
    {0, 0.36940836940836924},
    {0.92886899738106410, 0.24224029987397006},
    {-0.92886899738106410, 0.24224029987397006},
    {1.8760350201548459, 0.066138746071057811},
    {-1.8760350201548459, 0.066138746071057811},
    {2.8651231606436447, 0.0067202852355372636},
    {-2.8651231606436447, 0.0067202852355372636},
    {3.9361666071299775, 0.00019567193027122308},
    {-3.9361666071299775, 0.00019567193027122308},
    {5.1880012243748714, 8.1218497902148962e-7},
    {-5.1880012243748714, 8.1218497902148962e-7},
};

double chanceAt(double z, Answering answering) {
    return answering.guess + (1 - answering.guess - answering.slip) * logistic(z);
}

}  // namespace

std::span<const Node> nodes() {
    return kNodes;
}

double logistic(double z) {
    return 1 / (1 + std::exp(-z));
}

double logit(double p) {
    return std::log(p / (1 - p));
}

double normalBelow(double x) {
    return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

double shareKnown(const Gaussian& z) {
    return meanOver(z, logistic);
}

double chanceOfRight(const Gaussian& z, Answering answering) {
    return answering.guess + (1 - answering.guess - answering.slip) * shareKnown(z);
}

Gaussian afterAnswer(const Gaussian& z, Answering answering, bool right) {
    const double spread = std::sqrt(z.variance);
    double total = 0, first = 0, second = 0;  // moments of (z - mean) / spread
    for (const Node& node : kNodes) {
        const double chance = chanceAt(z.mean + spread * node.at, answering);
        const double likely = node.weight * (right ? chance : 1 - chance);
        total += likely;
        first += likely * node.at;
        second += likely * node.at * node.at;
    }
    if (!(total > 0)) return z;
    first /= total;
    second /= total;
    return {z.mean + spread * first, z.variance * std::max(second - first * first, 1e-6)};
}

double aboutKnown(const Gaussian& z) {
    return logistic(z.mean / std::sqrt(1 + std::numbers::pi * z.variance / 8));
}

}  // namespace wrenlet::practice
