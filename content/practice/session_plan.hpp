// When a session ends: by minutes played, on a success, never in the middle of an item.
#pragma once

#include <cstdint>

namespace wrenlet::practice {

struct SessionPlan {
    std::int64_t length_ms = 340'000;
    int most_items = 72;

    /// For about so many minutes, 5 to 8: the session is five minutes long at least and eight at
    /// most, the last item's own time included where that is no longer than kOneItemMs, and within
    /// 40 s of what was set (five minutes: up to a minute more). So many items at most that a child
    /// who answers every five seconds is not done sooner.
    static SessionPlan ofMinutes(int minutes);

    /// An item takes about so long: within it of the end, the next item may be the last.
    static constexpr std::int64_t kOneItemMs = 20'000;
    /// After a miss the session goes on past its end, but no item begins later than this after it,
    /// nor so late that it would end past kLongestMs.
    static constexpr std::int64_t kGraceMs = 40'000, kLongestMs = 8 * 60'000;
    static constexpr int kGraceItems = 4;
    /// A child who is tired, or doesn't listen, is asked a few sure ones more and no others.
    static constexpr int kMostWindingDown = 3;

    /// True when the next item should be a sure one, because it may be the last.
    bool isClosing(std::int64_t played_ms, int asked) const;
    /// True when no further item is asked. `last_was_right` tells of the first try at the last
    /// item: a session does not end on a miss, unless the grace is used up.
    bool isOver(std::int64_t played_ms, int asked, bool last_was_right) const;
    /// The same for one who was found tired or guessing `asked_since` items ago.
    bool isWoundDown(int asked_since, bool last_was_right) const;
};

}  // namespace wrenlet::practice
