// Every asked-for policy over every asked-for generator's classes, on as many threads as are given.
#pragma once

#include <string>
#include <vector>

#include "tests/simulator/policies.hpp"
#include "tests/simulator/report.hpp"
#include "tests/simulator/run.hpp"

namespace wrenlet::simulator {

struct Simulation {
    int children = 700;  // in classes of kClassSize, the last one smaller
    Seeds seeds = Seeds::tune;
    std::vector<Generator> generators{std::begin(kGenerators), std::end(kGenerators)};
    std::vector<std::string> policies = policyNames();
};

/// In the order of the generators, then of policies(). The number of threads makes no difference.
std::vector<Result> simulate(const Bank& bank, const Simulation& simulation, int threads);

}  // namespace wrenlet::simulator
