// What a child's first answers say of each sound in each task: how likely it is that she misses it,
// and in what range her knowing it lies. A Bayesian model of two abilities that both are needed
// (known.hpp), each the sum of parts (feature.hpp) with one belief a part, kept apart from each
// other (a diagonal covariance): so an answer on one sound tells something of the sounds and tasks
// beside it.
//
// An answer moves z of the task, and z of the sound, from (m, v) to (m', v'), and each part by its
// own share k = share x V / v of that:
//       mean += k (m' - m),    variance -= (c k / share + (1 - c) k^2) (v - v')
// which for c = 0 is the Kalman filter's gain (Kalman 1960) for one observation; c is `together` in
// policy.hpp. Then practice teaches (each part practised gains a little, the more the better the
// other ability carries it), a night takes some of it back, and beliefs widen with time. The
// constants are kModel's. One response goes in at a time, and the same responses in the same order
// give the same state to the last bit.
//
// P(missed) is the chance that she knows less than .6 of a place; the range of the share known is
// 80 % wide. Both speak of knowing: guessing and slips are out of them, and they are read a little
// above the beliefs (task_reads_low in policy.hpp). Simulated children are what the constants were
// set on, and no evidence about real ones.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "content/practice/class_priors.hpp"
#include "content/practice/feature.hpp"
#include "content/practice/heard.hpp"
#include "content/practice/known.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

inline constexpr double kRangeZ = 1.2816;  // 80 %, two-sided

/// What may be said of a place: shares of it known, and how likely it is missed.
struct Reading {
    double p_missed = .5;
    double low = 0, middle = .5, high = 1;  // 80 % range of the share known
};
Reading readingOf(const Known& known);
/// The range of the share known that holds so much of what is believed: {low, high}.
/// REQUIRES: 0 < covers < 1.
struct Range {
    double low = 0, high = 1;
};
Range rangeOf(const Known& known, double covers);

/// Ends of Wilson's score interval (JASA 22, 1927) for `right` of `seen`.
/// REQUIRES: 0 <= right <= seen, seen > 0.
struct Interval {
    double low, high;
};
Interval wilson(int right, int seen, double z);

class Mastery {
  public:
    struct Belief {
        Gaussian now;
        double gained = 0;                  // by practice on `day`
        std::int32_t day = 0;               // up to which nights are counted: days since 1970-01-01
        std::int32_t last_day = 0;          // on which it was met; 0: never
        std::uint16_t seen = 0, right = 0;  // first tries; at their most they stay there
        std::uint8_t right_running = 0;     // right since the last one missed
        std::uint8_t missed_running = 0;    // missed since the last one right
        Family family = Family::child;
        bool operator==(const Belief&) const = default;
    };
    struct Met {
        FeatureKey key = 0;
        Belief belief;
        bool operator==(const Met&) const = default;
    };

    /// `shields` are the child's (shield.hpp): a wrong answer along one moves no belief.
    explicit Mastery(std::shared_ptr<const ClassPriors> priors = std::make_shared<ClassPriors>(),
                     std::vector<std::string> shields = {});

    /// Learns from a first try; later tries are practice and change nothing. A day before one that
    /// was added already counts as that one.
    void add(const Response& response);

    /// Learns from what was asked aloud: right or wrong; almost changes nothing.
    void hear(const Heard& heard);

    /// What an answer may change, so that it can be taken back: taking back the newest answers,
    /// last one first, leaves the very state that was before them.
    struct Before {
        std::vector<FeatureKey> keys;  // of the parts it asks
        std::vector<Met> met;          // those of them that were met
        std::int32_t day = 0;
    };
    Before before(const Response& response) const;
    void takeBack(const Before& before);

    /// What is known of such a question on the newest day that was added.
    Known known(const Features& features) const;
    /// z of some parts, or of parts averaged over a place's questions.
    Gaussian sum(double ease, std::span<const Feature> parts) const;
    /// Of one part: the prior, if it was never met.
    Belief belief(const Feature& part) const;

    const ClassPriors& priors() const { return *priors_; }
    /// Every part met, by ascending key.
    std::span<const Met> met() const { return met_; }
    /// What the beliefs take in memory.
    std::size_t bytes() const { return sizeof(*this) + met_.capacity() * sizeof(Met); }

  private:
    void dayIs(std::int64_t day);
    void take(const Features& features, Answering answering, bool right);
    Belief& meet(const Feature& part);
    void move(std::span<const Feature> parts, const Gaussian& before, const Gaussian& after,
              double learned, bool right);

    std::shared_ptr<const ClassPriors> priors_;
    std::vector<std::string> shields_;
    std::vector<Met> met_;
    std::int32_t day_ = 0;
};

}  // namespace wrenlet::practice
