// Bayesian knowledge tracing (Corbett & Anderson 1995): each cell known or not, learned with a
// constant chance at each answer, four parameters a cell. The formula, its fit by expectation
// maximization, and the classroom that practises what is not yet mastered.
#pragma once

#include <span>
#include <vector>

#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

struct BktCell {
    double known = 0.5, learn = 0.1, slip = 0.1, guess = 0.3;

    double pRight(double p_known) const { return p_known * (1 - slip) + (1 - p_known) * guess; }
    /// The chance that it is known after this answer and the practice that it was.
    double after(double p_known, bool right) const;
};

/// A child's answers in one cell, oldest first: 1 right, 0 wrong.
using Sequence = std::vector<std::uint8_t>;

/// The likeliest parameters, found from `start` by expectation maximization (Baum & Welch), each
/// with a few invented answers in the sense of `start` so that a cell seldom met stays sensible;
/// slip at most 0.3 and guess at most 0.6, so that known stays the better state.
BktCell fitBkt(std::span<const Sequence> sequences, BktCell start = {});

/// One BktCell for each row of the bank, of all children's answers; see Bank::cellOf().
using BktModel = std::vector<BktCell>;
/// `answers[child]` are pairs of item and right, in order.
BktModel fitBkt(const Bank& bank, const std::vector<std::vector<std::pair<int, bool>>>& answers);

/// Asks, of the cells not yet mastered (known with less than 0.95), the one that is nearest to it.
MakeClassroom makeBkt(BktModel model);

}  // namespace wrenlet::simulator
