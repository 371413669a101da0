#include "content/practice/mastery.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <type_traits>
#include <utility>

#include "content/practice/policy.hpp"
#include "content/practice/shield.hpp"

namespace wrenlet::practice {
namespace {

/// What nights do between the belief's day and this one.
void sleepUntil(Mastery::Belief& belief, std::int32_t day) {
    if (day <= belief.day) return;
    const auto nights = std::min(static_cast<double>(day - belief.day), kModel.most_nights);
    const bool practised = belief.gained != 0;
    belief.now.mean -= kModel.taken_back * belief.gained;
    belief.gained = 0;
    if (belief.family == Family::child)
        belief.now.variance += nights * kModel.night_variance_child;
    else if (practised)
        belief.now.variance += nights * kModel.night_variance;
    belief.day = day;
}

/// True iff practising a question with it teaches it.
bool isTaught(Family family) {
    return family == Family::skill || family == Family::class_at || family == Family::sound ||
           family == Family::sound_at;
}

constexpr std::size_t kMoreParts = 32;

bool isBefore(const Mastery::Met& met, FeatureKey key) {
    return met.key < key;
}

void count(Mastery::Belief& belief, bool right) {
    const auto up = [](auto& number) {
        if (number < std::numeric_limits<std::decay_t<decltype(number)>>::max()) ++number;
    };
    up(belief.seen);
    if (right) {
        up(belief.right);
        up(belief.right_running);
        belief.missed_running = 0;
    } else {
        up(belief.missed_running);
        belief.right_running = 0;
    }
}

/// A place a little above its beliefs, and less sure (task_reads_low in policy.hpp).
Known asRead(const Known& known) {
    return {
        {known.task.mean + kModel.task_reads_low, known.task.variance + kModel.task_variance},
        {known.sound.mean + kModel.sound_reads_low, known.sound.variance + kModel.sound_variance}};
}

}  // namespace

Reading readingOf(const Known& known) {
    const Known place = asRead(known);
    const Range range = rangeOf(known, .8);
    return {chanceBelow(place, kModel.known_from), range.low, quantile(place, .5), range.high};
}

Range rangeOf(const Known& known, double covers) {
    Known place = asRead(known);
    place.task.variance *= kModel.range_variance;
    place.sound.variance *= kModel.range_variance;
    const double low = quantile(place, (1 - covers) / 2), high = quantile(place, (1 + covers) / 2);
    return {low < kModel.closed ? 0 : low, high > 1 - kModel.closed ? 1 : high};
}

Interval wilson(int right, int seen, double z) {
    const double n = seen;
    const double p = right / n;
    const double z2 = z * z;
    const double middle = p + z2 / (2 * n);
    const double half = z * std::sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    const double scale = 1 + z2 / n;
    // At none and at all right the end is exact; the arithmetic would miss it by a rounding.
    return {right == 0 ? 0.0 : (middle - half) / scale,
            right == seen ? 1.0 : (middle + half) / scale};
}

Mastery::Mastery(std::shared_ptr<const ClassPriors> priors, std::vector<std::string> shields)
    : priors_(std::move(priors)), shields_(std::move(shields)) {}

Mastery::Belief Mastery::belief(const Feature& part) const {
    const auto found = std::lower_bound(met_.begin(), met_.end(), part.key, isBefore);
    Belief belief;
    if (found == met_.end() || found->key != part.key) {
        belief.now = priors_->of(part);
        belief.day = day_;
        belief.family = part.family;
    } else {
        belief = found->belief;
        sleepUntil(belief, day_);
    }
    return belief;
}

Mastery::Belief& Mastery::meet(const Feature& part) {
    auto found = std::lower_bound(met_.begin(), met_.end(), part.key, isBefore);
    if (found == met_.end() || found->key != part.key) {
        const auto at = found - met_.begin();
        // By a little each time: doubling would keep nearly twice what is needed.
        if (met_.size() == met_.capacity()) met_.reserve(met_.size() + kMoreParts);
        found = met_.insert(met_.begin() + at, {part.key, belief(part)});
    } else {
        sleepUntil(found->belief, day_);
    }
    return found->belief;
}

Gaussian Mastery::sum(double ease, std::span<const Feature> parts) const {
    Gaussian z{ease, 0};
    for (const Feature& part : parts) {
        const Gaussian now = belief(part).now;
        z.mean += part.share * now.mean;
        z.variance += part.share * part.share * now.variance;
    }
    return z;
}

Known Mastery::known(const Features& features) const {
    return {sum(features.task_ease, features.task()), sum(features.sound_ease, features.sound())};
}

void Mastery::move(std::span<const Feature> parts, const Gaussian& before, const Gaussian& after,
                   double learned, bool right) {
    for (const Feature& part : parts) {
        Belief& belief = meet(part);
        const double gain = part.share * belief.now.variance / before.variance;
        belief.now.mean += gain * (after.mean - before.mean);
        belief.now.variance -=
            (kModel.together * gain / part.share + (1 - kModel.together) * gain * gain) *
            (before.variance - after.variance);
        count(belief, right);
        belief.last_day = day_;
        if (!isTaught(part.family)) continue;
        belief.now.mean += part.share * learned;
        belief.gained += part.share * learned;
        belief.now.variance += part.share * part.share * kModel.learned_variance;
    }
}

void Mastery::dayIs(std::int64_t day) {
    day_ = std::max(day_, static_cast<std::int32_t>(std::clamp<std::int64_t>(
                              day, 0, std::numeric_limits<std::int32_t>::max())));
}

void Mastery::hear(const Heard& heard) {
    dayIs(heard.day);
    if (heard.mark == HeardAs::almost) return;
    take(featuresOf(heard.skill, heard.turns_on), {kModel.heard_guess, kModel.heard_slip},
         heard.mark == HeardAs::right);
}

void Mastery::add(const Response& response) {
    if (!response.isEvidence()) return;
    dayIs(response.day);
    // With a single choice every answer is right and tells nothing.
    if (response.choices.size() < 2) return;
    const bool right = response.isRight();
    if (!right && isShielded(response.turns_on, response.means, shields_)) return;

    take(featuresOf(response.skill, response.turns_on), answeringAmong(response.choices.size()),
         right);
}

void Mastery::take(const Features& features, Answering answering, bool right) {
    const Known before = known(features);
    const Known after = afterAnswer(before, answering, right);
    const auto carried = [](const Gaussian& other) {
        return kModel.learned_alone + (1 - kModel.learned_alone) * aboutKnown(other);
    };
    move(features.task(), before.task, after.task, kModel.learned_task * carried(after.sound),
         right);
    move(features.sound(), before.sound, after.sound, kModel.learned_sound * carried(after.task),
         right);
}

Mastery::Before Mastery::before(const Response& response) const {
    Before before;
    before.day = day_;
    const Features features = featuresOf(response.skill, response.turns_on);
    before.keys.reserve(features.count);
    before.met.reserve(features.count);
    for (const Feature& part : features) {
        before.keys.push_back(part.key);
        const auto found = std::lower_bound(met_.begin(), met_.end(), part.key, isBefore);
        if (found != met_.end() && found->key == part.key) before.met.push_back(*found);
    }
    return before;
}

void Mastery::takeBack(const Before& before) {
    day_ = before.day;
    for (const FeatureKey key : before.keys) {
        const auto found = std::lower_bound(met_.begin(), met_.end(), key, isBefore);
        if (found != met_.end() && found->key == key) met_.erase(found);
    }
    for (const Met& met : before.met)
        met_.insert(std::lower_bound(met_.begin(), met_.end(), met.key, isBefore), met);
}

}  // namespace wrenlet::practice
