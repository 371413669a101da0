// Runs one class of simulated children through ten sessions of forty items under one policy, and
// counts what came of it.
#pragma once

#include <cstdint>
#include <functional>

#include "tests/simulator/child.hpp"
#include "tests/simulator/classroom.hpp"
#include "tests/simulator/tally.hpp"

namespace wrenlet::simulator {

inline constexpr int kClassSize = 20;

/// Constants are tuned on one range of seeds and judged on another.
enum class Seeds : std::uint8_t { tune, judge };

struct ClassOfChildren {
    Generator generator = Generator::graded;
    Seeds seeds = Seeds::tune;
    int number = 0;  // from 0: its children depend on generator, seeds and this
    int children = kClassSize;
};

/// Told of every answer of an honest run.
using Listener = std::function<void(int child, int item, const practice::Response& response)>;

/// The same arguments give the same tally. `beside` (may be empty) is a classroom whose readers
/// read the same answers, for log_loss_bkt. Classrooms that watch for tapping are run a second
/// time, with every child tapping from some item of some session on to that session's end.
Tally runClass(const Bank& bank, const ClassOfChildren& children, const MakeClassroom& make,
               const MakeClassroom& beside = {}, const Listener& listener = {});

}  // namespace wrenlet::simulator
