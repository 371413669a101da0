// Elo's rating, as used for practice (Pelánek 2016, "Applications of the Elo rating system in
// adaptive educational systems"): a child and an item play against each other, and an answer moves
// both ratings. A child has a rating of its own and one for each cell; items are rated by a class.
#pragma once

#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

/// The score that a player expects against one opponent, in chess points (400 for a factor of ten).
double eloExpected(double rating, double opponent);
/// The rating after games in which `score` points were won where `expected` were.
double eloAfter(double rating, double k, double score, double expected);

/// Asks the item whose chance of success lies nearest to 85 %.
MakeClassroom makeElo();

}  // namespace wrenlet::simulator
