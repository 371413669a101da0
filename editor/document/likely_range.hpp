// The range in which a share of right answers likely lies, of the plain counts and not corrected
// for guessing, so that the figure and the bar beside it agree; where guessing lands is shown
// apart.
#pragma once

namespace wrenlet::desk {

struct LikelyRange {
    double low = 0, middle = 0, high = 1;  // shares; middle is right / seen
};

/// At 80 %, as practice/mastery.hpp puts it; from 0 to 1 when nothing was seen.
/// REQUIRES: 0 <= right <= seen.
LikelyRange likelyRange(int right, int seen);

}  // namespace wrenlet::desk
