// A child who, from some item in the middle of a session on, answers without listening: quickly or
// taking the time, by chance, always in one place, or from side to side.
#pragma once

#include <cstddef>
#include <vector>

#include "content/common/random.hpp"
#include "tests/simulator/child.hpp"

namespace wrenlet::simulator {

struct Tapping {
    enum class Habit : std::uint8_t { any, same, alternating } habit = Habit::any;
    bool slow = false;  // in the child's own honest times; else 0.5 to 1.2 s
    int session = 0;
    int from_item = 0;
    std::size_t place = 0;

    bool at(int session_now, int item_now) const {
        return session_now == session && item_now >= from_item;
    }
    /// `order[place]` is the index of the choice that stands there; `honest` lends its time.
    Answer answer(const Answer& honest, const std::vector<std::size_t>& order, int item_now,
                  Random& random) const;
};

Tapping drawTapping(Random& random);

}  // namespace wrenlet::simulator
