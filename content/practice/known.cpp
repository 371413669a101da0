#include "content/practice/known.hpp"

#include <cmath>

namespace wrenlet::practice {
namespace {

/// To one of the two, when the other is known so often.
Answering besides(Answering answering, double other_known) {
    const double slope = (1 - answering.guess - answering.slip) * other_known;
    return {answering.guess, 1 - answering.guess - slope};
}

}  // namespace

double shareKnown(const Known& known) {
    return shareKnown(known.task) * shareKnown(known.sound);
}

double chanceOfRight(const Known& known, Answering answering) {
    return answering.guess + (1 - answering.guess - answering.slip) * shareKnown(known);
}

Known afterAnswer(const Known& known, Answering answering, bool right) {
    return {afterAnswer(known.task, besides(answering, shareKnown(known.sound)), right),
            afterAnswer(known.sound, besides(answering, shareKnown(known.task)), right)};
}

double chanceBelow(const Known& known, double share) {
    const double spread = std::sqrt(known.task.variance);
    return meanOver(known.sound, [&](double sound) {
        const double needed = share / logistic(sound);  // of the task
        return needed >= 1 ? 1 : normalBelow((logit(needed) - known.task.mean) / spread);
    });
}

double quantile(const Known& known, double below) {
    double low = 0, high = 1;
    for (int halving = 0; halving < 24; ++halving) {
        const double middle = (low + high) / 2;
        (chanceBelow(known, middle) < below ? low : high) = middle;
    }
    return (low + high) / 2;
}

}  // namespace wrenlet::practice
