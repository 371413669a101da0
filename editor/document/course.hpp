// How one skill went, day by day: the counts of each school day with the range they allow.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "editor/document/likely_range.hpp"
#include "editor/document/opened_class.hpp"

namespace wrenlet::desk {

struct CourseDay {
    std::int64_t day = 0;  // since 1970-01-01
    std::string label;     // "Mo 2"
    int right = 0, seen = 0;
    LikelyRange range;
    /// Under five answers a day says little and is drawn hollow.
    bool isThin() const { return seen < 5; }
};

struct Course {
    std::vector<CourseDay> days;  // oldest first; only days with answers
    double guess = 0;             // mean share that guessing gets
};

/// The last `most_days` days on which the child met the skill; first tries only.
Course courseOf(const OpenedClass& opened, const std::string& child, const std::string& skill,
                std::size_t most_days = 7);

}  // namespace wrenlet::desk
