#include "content/practice/timing.hpp"

#include <algorithm>
#include <cmath>

#include "content/practice/policy.hpp"

namespace wrenlet::practice {

double logTime(std::int64_t took_ms) {
    return std::log(std::max(kAttending.shortest_ms, static_cast<double>(took_ms)));
}

Timing::Timing()
    : own_{std::log(kAttending.usual_ms), kAttending.own_variance},
      slope_{kAttending.slope, kAttending.slope_variance},
      squares_(kAttending.spread * kAttending.spread * kAttending.spread_weight),
      weight_(kAttending.spread_weight),
      replayed_(kAttending.replays * kAttending.replays_weight),
      prompts_(kAttending.replays_weight) {
    kinds_.fill({0, kAttending.kind_variance});
}

double Timing::spread() const {
    return std::sqrt(squares_ / weight_);
}

Gaussian Timing::expected(std::size_t kind, double unsure) const {
    Gaussian log_ms{own_.mean + slope_.mean * unsure,
                    own_.variance + slope_.variance * unsure * unsure + squares_ / weight_};
    if (kind < kKinds) {
        log_ms.mean += kinds_[kind].mean;
        log_ms.variance += kinds_[kind].variance;
    }
    return log_ms;
}

void Timing::learn(std::size_t kind, double unsure, double log_ms, bool replayed) {
    const Gaussian before = expected(kind, unsure);
    const double reach = kAttending.farthest * std::sqrt(before.variance);
    const double off = std::clamp(log_ms - before.mean, -reach, reach);
    const auto move = [&before, off](Gaussian& belief, double share) {
        const double gain = belief.variance * share / before.variance;
        belief.mean += gain * off;
        belief.variance -= gain * share * belief.variance;
    };
    // Of the squared residual, what the beliefs were unsure of is no spread of hers.
    const double known = squares_ / weight_ / before.variance;
    const auto count = [](double& sum, double& weight, double more) {
        const double kept = std::min(1.0, (kAttending.memory - 1) / weight);
        sum = kept * sum + more;
        weight = kept * weight + 1;
    };
    count(squares_, weight_, known * off * off);
    count(replayed_, prompts_, replayed ? 1 : 0);
    move(own_, 1);
    move(slope_, unsure);
    if (kind < kKinds) move(kinds_[kind], 1);
}

void Timing::newSession() {
    own_.variance = std::min(kAttending.own_variance, own_.variance + kAttending.day_variance);
}

}  // namespace wrenlet::practice
