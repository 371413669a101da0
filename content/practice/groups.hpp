// Who belongs together at the small table: three or four children who share a gap. Groups of one
// day are the start of the next day's, and change only where the evidence moved.
//
// A child's gap in a skill is the sum of P(missed) over its sounds that are said to be missed,
// kMostGap at most, so that a skill of many sounds does not hide the others; what a shield covers
// is never said to be missed (evidence.hpp), and so never counts. A group is worth its children's
// gaps in the skill it is for, and kSharedSound for each sound that two of them both miss. Groups
// are filled greedily, the worthiest first, then children change places while that is worth
// kMoved or more. Three or four to a group is common practice.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "content/practice/progress.hpp"

namespace wrenlet::practice {

inline constexpr std::size_t kLeastInGroup = 3, kMostInGroup = 4;
inline constexpr double kMostGap = 3;
inline constexpr double kSharedSound = 0.25;
inline constexpr double kMoved = 0.5;

/// A sound that some of a group miss.
struct SharedSound {
    exercise::TurnsOn turns_on;
    std::vector<std::string> children;  // ids: whom to listen to
};

struct SmallGroup {
    std::string skill;                  // that all of them miss something in
    std::vector<std::string> children;  // ids, the widest gap first
    std::vector<SharedSound> sounds;    // missed by most of them first
    // of the children: whom the teacher put here herself. They stay for as long as the group does,
    // whatever they miss, and nobody changes places with another group's children.
    std::vector<std::string> placed{};
};

struct Grouping {
    std::vector<SmallGroup> groups;     // the widest gaps first; three or four, or two that are
                                        // left and share a gap
    std::vector<std::string> alone;     // ids: miss something that nobody left shares
    std::vector<std::string> nothing;   // ids: nothing is said to be missed
    std::vector<std::string> not_sure;  // ids: no sound has answers enough to say
};

/// Each child stands in exactly one place. `before`: the groups of the day before, if there are.
Grouping groupsOf(std::span<const ChildProgress> children, std::span<const SmallGroup> before = {});

/// The same with other children in each group, as she put them: the sounds they share are worked
/// out anew. A child who misses nothing in the group's skill may stand in it.
SmallGroup groupFor(const std::string& skill, std::span<const std::string> children,
                    std::span<const ChildProgress> progress);

}  // namespace wrenlet::practice
