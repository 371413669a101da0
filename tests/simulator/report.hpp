// The table of a simulation, its lines of JSON, and the goals that the project set itself.
#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "tests/simulator/child.hpp"
#include "tests/simulator/tally.hpp"

namespace wrenlet::simulator {

/// One policy over one generator's classes; classes stand in the same order for every policy.
struct Result {
    std::string policy;
    Generator generator = Generator::graded;
    int children = 0;
    std::vector<Tally> classes;
};

void printTable(std::ostream& out, const std::vector<Result>& results);
/// One line each; a figure that was not measured is null.
void printJson(std::ostream& out, const std::vector<Result>& results);
/// What the desk would say of these children, against the truth: how often "missed" is right and
/// how much of what is missed it names, by how often a sound was asked; what the ranges hold;
/// sessions of fresh and tired children and of such as tap; sounds missed along shields alone. Of
/// policies whose classroom says something.
void printSaid(std::ostream& out, const std::vector<Result>& results);
/// What the project's policy must show, one line a goal: value, bound, target, and whether the
/// bound holds it. Nothing for a generator without the policy "wrenlet".
void printGoals(std::ostream& out, const std::vector<Result>& results);

}  // namespace wrenlet::simulator
