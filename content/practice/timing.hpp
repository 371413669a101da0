// How long one child takes to answer and how often she hears the prompt again, told from her own
// answers: children differ by more than a tapper differs from a quick child, so what is slow or
// quick is only known beside her usual.
//
//   ln(took) ~ N(own + of the mechanic + slope x unsure, spread^2)
//
// that is, log-normal times (van der Linden 2006). The three parts are believed as bell curves,
// updated with the Kalman gain (Kalman 1960) of one observation each, and the spread by a running
// mean of squared residuals that starts from a prior. An answer far out (a pause, a slip of the
// finger) moves them only as far as one at 2.5 spreads would (Huber 1964).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

#include "content/practice/gaussian.hpp"

namespace wrenlet::practice {

/// ln of the milliseconds, with a floor: an answer given before the prompt ended took none.
double logTime(std::int64_t took_ms);

class Timing {
  public:
    /// How the game plays: exercise::Mechanic as a number, or kNoKind.
    static constexpr std::size_t kKinds = 6;
    static constexpr std::size_t kNoKind = kKinds;

    Timing();

    /// Of the next ln(took), were she to listen. `unsure`: 0 when she surely knows the answer, 1
    /// when she cannot but guess.
    Gaussian expected(std::size_t kind, double unsure) const;
    /// `log_ms` as logTime() has it, of an answer that she listened to.
    void learn(std::size_t kind, double unsure, double log_ms, bool replayed);
    /// A new session: children are quicker on one day than on another.
    void newSession();

    /// Her usual ln(took) where she is sure, over all mechanics.
    const Gaussian& own() const { return own_; }
    /// How often she hears a prompt again, as a chance.
    double replays() const { return replayed_ / prompts_; }
    /// Of ln(took) about what is expected, as a standard deviation.
    double spread() const;

    bool operator==(const Timing&) const = default;

  private:
    Gaussian own_, slope_;
    std::array<Gaussian, kKinds> kinds_;
    double squares_;             // weighted sum of squared residuals
    double weight_;              // of the answers in it
    double replayed_, prompts_;  // likewise
};

}  // namespace wrenlet::practice
