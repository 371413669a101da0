#include "content/practice/session_plan.hpp"

#include <algorithm>

namespace wrenlet::practice {

SessionPlan SessionPlan::ofMinutes(int minutes) {
    constexpr std::int64_t kMinute = 60'000, kLeastGraceMs = 15'000;
    // What goes beyond it is an item or two: five minutes are five and a bit, six and seven are
    // that to within half a minute, eight are seven and a half and never more than eight.
    SessionPlan plan;
    plan.length_ms = std::min(minutes * kMinute - (minutes > 5 ? kOneItemMs : 0),
                              kLongestMs - kOneItemMs - kLeastGraceMs);
    plan.most_items = 12 * minutes;
    return plan;
}

bool SessionPlan::isClosing(std::int64_t played_ms, int asked) const {
    return played_ms >= length_ms - 2 * kOneItemMs || asked >= most_items - 2;
}

bool SessionPlan::isOver(std::int64_t played_ms, int asked, bool last_was_right) const {
    const bool at_the_end = played_ms >= length_ms || asked >= most_items;
    const std::int64_t latest_ms =
        std::clamp(kLongestMs - kOneItemMs, length_ms, length_ms + kGraceMs);
    const bool far_beyond = played_ms >= latest_ms || asked >= most_items + kGraceItems;
    return far_beyond || (at_the_end && last_was_right);
}

bool SessionPlan::isWoundDown(int asked_since, bool last_was_right) const {
    return asked_since >= kMostWindingDown || (asked_since > 0 && last_was_right);
}

}  // namespace wrenlet::practice
