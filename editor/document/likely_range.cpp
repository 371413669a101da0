#include "editor/document/likely_range.hpp"

#include "content/practice/mastery.hpp"

namespace wrenlet::desk {

LikelyRange likelyRange(int right, int seen) {
    if (seen <= 0) return {};
    const practice::Interval range = practice::wilson(right, seen, practice::kRangeZ);
    return {range.low, static_cast<double>(right) / seen, range.high};
}

}  // namespace wrenlet::desk
