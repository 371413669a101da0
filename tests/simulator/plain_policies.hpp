// Policies that bring no model of the child; their rows are read by counts.
#pragma once

#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

/// The items in teaching order, spread so that the sessions reach its end.
MakeClassroom makeFixed();
/// Any item, all equally likely.
MakeClassroom makeRandom();
/// Leitner's boxes, one card a cell: right moves it up a box, wrong back to the first; cards of box
/// 1 to 5 are due after 0, 1, 2, 4 and 8 days, lowest box first; new ones, in teaching order, when
/// nothing is due.
MakeClassroom makeLeitner();
/// Thompson sampling: a Beta for each cell's success, one draw from each, and the cell whose draw
/// promises most gain, p (1 - p), which is most where it is neither known nor out of reach.
MakeClassroom makeThompson();

/// A classroom of policies of one kind over readers of counts, for tests and for other files.
MakeClassroom withCounts(std::function<std::shared_ptr<Policy>(const Bank&, const Pupil&)> make);

}  // namespace wrenlet::simulator
