#include "content/practice/place.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "content/practice/mastery.hpp"

namespace wrenlet::practice {
namespace {

/// The bell curve of that variance under which so much is known.
Gaussian withShare(double share, double variance) {
    const double kept = std::clamp(share, 1e-4, 1 - 1e-4);
    return {logit(kept) * std::sqrt(1 + std::numbers::pi * variance / 8), variance};
}

}  // namespace

Place::Place(std::span<const Features> questions) : questions_(questions.begin(), questions.end()) {
    const double each = 1 / static_cast<double>(questions.size());
    std::map<FeatureKey, Feature> task, sound;
    const auto add = [each](std::map<FeatureKey, Feature>& to, std::span<const Feature> parts) {
        for (const Feature& part : parts) {
            auto [found, is_new] = to.try_emplace(part.key, part);
            if (is_new) found->second.share = 0;
            found->second.share += each * part.share;
        }
    };
    for (const Features& question : questions_) {
        add(task, question.task());
        add(sound, question.sound());
    }
    for (const auto& [key, part] : task) task_.push_back(part);
    for (const auto& [key, part] : sound) sound_.push_back(part);
}

Known Place::known(const Mastery& mastery) const {
    double task = 0, sound = 0;
    for (const Features& question : questions_) {
        const Known known = mastery.known(question);
        task += aboutKnown(known.task);
        sound += aboutKnown(known.sound);
    }
    const auto count = static_cast<double>(questions_.size());
    return {withShare(task / count, mastery.sum(0, task_).variance),
            withShare(sound / count, mastery.sum(0, sound_).variance)};
}

}  // namespace wrenlet::practice
