#include "content/practice/tiredness.hpp"

#include <algorithm>
#include <cmath>

#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

/// Attention lost at answer `asked`, when tiredness begins with the `onset`th of those weighed.
double lost(std::size_t asked, std::size_t onset) {
    const auto& a = kAttending;
    const double from = a.tires_first + a.tires_step * static_cast<double>(onset);
    return a.tired_depth * std::clamp((static_cast<double>(asked) - from) / a.tired_grows, 0., 1.);
}

}  // namespace

void Tiredness::add(const Sign& sign) {
    const double weight = 1 / sign.variance;
    const auto likely = [&](double known) {
        const double right = known + (1 - known) * sign.by_chance;
        return std::log(sign.right ? right : 1 - right);
    };
    for (std::size_t onset = 0; onset < kOnsets; ++onset) {
        const double gone = lost(asked_, onset);
        if (gone == 0) continue;
        Since& since = since_[onset];
        if (sign.tells) since.answers += likely(sign.known * (1 - gone)) - likely(sign.known);
        const double slowing = std::log(1 + kAttending.tired_slowing * gone);
        since.slowing += weight * slowing;
        since.slowing_squares += weight * slowing * slowing;
        since.slower_slowing += weight * sign.slower * slowing;
    }
    weight_ += weight;
    slower_ += weight * sign.slower;
    ++asked_;
}

// Of times r with variances 1 / w about an offset N(0, v), the log-likelihood ratio of x + offset
// against offset alone is  Swxr - k Swx Swr - (Swxx - k Swx^2) / 2,  k = v / (1 + v Sw).
double Tiredness::nats() const {
    if (asked_ == 0) return 0;
    const double k = kAttending.today_variance / (1 + kAttending.today_variance * weight_);
    std::array<double, kOnsets> nats{};
    for (std::size_t i = 0; i < kOnsets; ++i) {
        const Since& since = since_[i];
        nats[i] = since.answers + since.slower_slowing - k * since.slowing * slower_ -
                  (since.slowing_squares - k * since.slowing * since.slowing) / 2;
    }
    const double most = *std::max_element(nats.begin(), nats.end());
    double sum = 0;
    for (const double one : nats) sum += std::exp(one - most);
    return most + std::log(sum / kOnsets);
}

}  // namespace wrenlet::practice
