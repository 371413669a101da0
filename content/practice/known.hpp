// What it takes to answer: the task and the sound. A child who can't take a word apart misses its
// sounds though she hears them, and one who doesn't hear a sound misses it in every task; neither
// makes up for the other. So what is known of a question is a product,
//
//   P(right) = g + (1 - g - s) L(task) L(sound),
//
// a noncompensatory model of two abilities (Sympson 1978). Its great use is to blame the right one:
// where the sound is likely the gap, a miss says little of the task.
#pragma once

#include "content/practice/gaussian.hpp"

namespace wrenlet::practice {

struct Known {
    Gaussian task, sound;
    bool operator==(const Known&) const = default;
};

/// The mean share known.
double shareKnown(const Known& known);
double chanceOfRight(const Known& known, Answering answering);
/// What is believed of both after an answer: for each the mean and variance of the true posterior,
/// since to each of them the other is but one more way of slipping.
Known afterAnswer(const Known& known, Answering answering, bool right);

/// The chance that less than `share` is known. REQUIRES: 0 < share < 1.
double chanceBelow(const Known& known, double share);
/// The share known that lies above so much of what is believed. REQUIRES: 0 < below < 1.
double quantile(const Known& known, double below);

}  // namespace wrenlet::practice
