// Every policy that is simulated, by name, in the order in which they are shown. A policy of the
// project is added here: its own file, and a line in policies.cpp.
#pragma once

#include <string>
#include <vector>

#include "tests/simulator/bkt.hpp"
#include "tests/simulator/child.hpp"

namespace wrenlet::simulator {

struct NamedPolicy {
    std::string name;
    MakeClassroom make;
};

/// `bkt` is fitted to the generator's children; see fittedBkt().
std::vector<NamedPolicy> policies(const BktModel& bkt);
/// The names alone.
std::vector<std::string> policyNames();

/// Fitted by likelihood to the answers of 200 children of the generator, from seeds for tuning, to
/// items chosen at random.
BktModel fittedBkt(const Bank& bank, Generator generator);

}  // namespace wrenlet::simulator
