// What is measured of a policy and its reader: sums that add up over children and classes, the
// figures made of them, and how sure they are (a bootstrap over classes).
#pragma once

#include <array>
#include <cstdint>
#include <functional>
#include <span>
#include <string_view>
#include <vector>

#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

/// Figures that are a sum over a count.
enum class Measure : std::uint8_t {
    weak_gain,            // mean gain of rows that were missed at first
    total_gain,           // mean gain of all rows
    very_low_total_gain,  // the same of the very low children alone
    bad_sessions,         // share of sessions under 60 % right
    very_low_bad_sessions,
    top8_precision,   // of the 8 rows likeliest missed after 160 items: share truly missed then
    missed_at_90,     // share truly missed of rows with p_missed >= 0.9
    coverage80,       // share of true shares known within their 80 % range
    log_loss,         // of each answer after the first session, natural logarithm
    log_loss_child,   // of the child's own chance of a right answer, on the same answers: the floor
    log_loss_bkt,     // of the fitted BKT's reader on the same answers
    tap_found,        // share of tappers found within 12 items
    tap_found_slow,   // of those who take their time
    tap_false,        // share of honest sessions with an alarm
    missed_at_first,  // share of rows missed before any practice
    right,            // share of right answers
};
inline constexpr std::size_t kMeasures = 16;
std::string_view nameOf(Measure measure);

struct Share {
    double sum = 0, count = 0;
    void add(double value) {
        sum += value;
        count += 1;
    }
};

/// Lines of the desk's report by how often their sound or skill was asked: from so many first
/// answers up to those of the next.
inline constexpr int kSaidFrom[] = {3, 5, 8, 12};
inline constexpr std::size_t kSaidSteps = 4;
struct Said {
    double lines = 0, missed = 0;  // of these truly missed
    double said = 0, both = 0;     // said to be missed; of these truly missed
    double in80 = 0, in90 = 0;     // the truth lies within the range
};

/// Sessions by what they were, and what was held of them first.
enum class Truly : std::uint8_t { fresh, tired, tapping };
inline constexpr std::size_t kWaysTruly = 3, kWaysHeld = 3;

class Tally {
  public:
    Share& of(Measure measure) { return shares_[static_cast<std::size_t>(measure)]; }
    /// A row's reading against the truth: calibration, missed_at_90, coverage80.
    void addReading(const Reading& reading, double known);
    /// A line of the report against the truth.
    void addSaid(const SaidLine& line, double known);
    void addSession(Truly truly, Held held) {
        sessions_[static_cast<std::size_t>(truly)][static_cast<std::size_t>(held)] += 1;
    }
    /// Of a fresh or tired session: how far its answers speak for tiredness (a log-likelihood
    /// ratio) to somebody who knows the child.
    void addTells(Truly truly, double nats) {
        tells_[static_cast<std::size_t>(truly)].push_back(nats);
    }
    void add(const Tally& other);

    const Said& said(std::size_t step) const { return said_[step]; }
    double sessions(Truly truly, Held held) const {
        return sessions_[static_cast<std::size_t>(truly)][static_cast<std::size_t>(held)];
    }
    /// The share of tired sessions that somebody who knows the child could tell from her answers
    /// and times, taking that share of the fresh ones for tired (the most powerful test there is of
    /// two simple hypotheses: Neyman & Pearson 1933). NaN when none was counted.
    double tiredAtBest(double false_alarms) const;
    /// Lines with wrong answers, all along a shield; and how many of them were called missed.
    double onlyShielded() const { return only_shielded_; }
    double shieldedMissed() const { return shielded_missed_; }

    /// NaN when nothing was counted.
    double value(Measure measure) const;
    /// Expected calibration error of p_missed over 10 equal bins: the mean of how far the mean
    /// chance of a bin lies from its share truly missed, weighed by its rows.
    double calibrationError() const;

    static constexpr std::size_t kBins = 10;
    struct Bin {
        double rows = 0, chance = 0, missed = 0;
    };
    std::span<const Bin> bins() const { return bins_; }

  private:
    std::array<Share, kMeasures> shares_{};
    std::array<Bin, kBins> bins_{};
    std::array<Said, kSaidSteps> said_{};
    std::array<std::array<double, kWaysHeld>, kWaysTruly> sessions_{};
    std::array<std::vector<double>, kWaysTruly> tells_{};
    double only_shielded_ = 0, shielded_missed_ = 0;
};

/// A figure of one policy's classes, or of two policies' same classes.
using Figure = std::function<double(const Tally& own, const Tally& other)>;

enum class Better : std::uint8_t { higher, lower, within };

struct Bounded {
    double value = 0;
    double bound = 0;  // the 95 % bound on the side that is against the policy
};

/// `own[i]` and `other[i]` are of the same class; classes are drawn with replacement, 2000 times,
/// by a fixed seed. The bound of `within` is the end of the two-sided 90 % range that lies farther
/// from `middle`. REQUIRES: equal sizes, at least one class.
Bounded bounded(std::span<const Tally> own, std::span<const Tally> other, const Figure& figure,
                Better better, double middle = 0);

}  // namespace wrenlet::simulator
