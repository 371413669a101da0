// When a session ends: by minutes played, on a success, never in the middle of an item.
#pragma once

#include <cstdint>

namespace wrenlet::practice {

struct SessionPlan {
    std::int64_t length_ms = 6 * 60'000;
    int most_items = 40;

    /// True when the next item should be a sure one, because it may be the last.
    bool isClosing(std::int64_t played_ms, int asked) const;
    /// True when no further item is asked.
    bool isOver(std::int64_t played_ms, int asked, bool last_was_right) const;
};

}  // namespace wrenlet::practice
