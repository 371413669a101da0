#include "tests/simulator/tapper.hpp"

#include "tests/simulator/draw.hpp"

namespace wrenlet::simulator {

Answer Tapping::answer(const Answer& honest, const std::vector<std::size_t>& order, int item_now,
                       Random& random) const {
    std::size_t at = place;
    if (habit == Habit::any) at = random.below(static_cast<std::uint32_t>(order.size()));
    if (habit == Habit::alternating) at = place + static_cast<std::size_t>(item_now % 2);
    Answer tapped;
    tapped.choice = static_cast<int>(order[at % order.size()]);
    tapped.took_ms = slow ? honest.took_ms : static_cast<int>(between(random, 500, 1200));
    return tapped;
}

Tapping drawTapping(Random& random) {
    Tapping tapping;
    tapping.habit = static_cast<Tapping::Habit>(random.below(3));
    tapping.slow = chance(random, 0.5);
    tapping.session = 2 + static_cast<int>(random.below(7));
    tapping.from_item = 10 + static_cast<int>(random.below(17));
    tapping.place = random.below(3);
    return tapping;
}

}  // namespace wrenlet::simulator
