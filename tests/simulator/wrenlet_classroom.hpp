// The project itself in the simulator: its estimator, its class priors, its scheduler; and the same
// estimator behind items that are chosen at random, which is what choosing must be measured
// against.
#pragma once

#include "content/practice/policy.hpp"
#include "tests/simulator/classroom.hpp"

namespace wrenlet::simulator {

MakeClassroom makeWrenlet(const practice::Policy& policy = practice::kPolicy);
MakeClassroom makeRandomSameEstimator();

}  // namespace wrenlet::simulator
