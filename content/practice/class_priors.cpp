#include "content/practice/class_priors.hpp"

#include <algorithm>
#include <map>
#include <vector>

#include "content/practice/mastery.hpp"
#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

/// What is believed of one part, of each child who met it.
struct Pooled {
    Family family = Family::child;
    std::vector<Gaussian> all;
};

}  // namespace

ClassPriors::ClassPriors() {
    std::copy(std::begin(kModel.variance), std::end(kModel.variance), variance_.begin());
}

ClassPriors ClassPriors::fittedTo(std::span<const Mastery* const> children) {
    // In the order of keys, so that sums come out the same in whatever order children are handed in
    // but for their own.
    std::map<FeatureKey, Pooled> parts;
    for (const Mastery* child : children)
        for (const auto& [key, belief] : child->met()) {
            Pooled& part = parts[key];
            part.family = belief.family;
            part.all.push_back(belief.now);
        }
    ClassPriors priors;
    std::array<double, kFamilyCount> squares{}, counts{};
    for (const auto& [key, part] : parts) {
        const auto family = static_cast<std::size_t>(part.family);
        double sum = 0;
        for (const Gaussian& one : part.all) sum += one.mean;
        const double mean = sum / (static_cast<double>(part.all.size()) +
                                   kModel.variance[family] / kModel.class_variance[family]);
        priors.means_[key] = mean;
        for (const Gaussian& one : part.all) {
            squares[family] += (one.mean - mean) * (one.mean - mean) + one.variance;
            counts[family] += 1;
        }
    }
    for (std::size_t family = 0; family < kFamilyCount; ++family)
        priors.variance_[family] =
            (kModel.family_weight * kModel.variance[family] + squares[family]) /
            (kModel.family_weight + counts[family]);
    return priors;
}

Gaussian ClassPriors::of(const Feature& feature) const {
    const auto mean = means_.find(feature.key);
    return {mean == means_.end() ? 0 : mean->second,
            variance_[static_cast<std::size_t>(feature.family)]};
}

}  // namespace wrenlet::practice
