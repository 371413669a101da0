// Ten minutes aloud with the whole class, made from what was missed: a few tasks, a handful of
// items of the current pack each with their answers, harder ones last, and whom to listen to.
//
// Tasks are those in which most is missed over the class, larger units of sound first. Items are
// those that turn on what most children miss, no two of one word; none whose answer hangs on an
// accent (exercise::holdsIn in every accent that is known, alone and all at once). What is harder
// is what the model of practice/ expects less of a child of whom nothing is known. Where a class
// has shown too little yet, the tasks are those at the beginning of the table.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "content/pack/pack.hpp"
#include "content/practice/groups.hpp"
#include "content/practice/progress.hpp"
#include "editor/look/asking.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kLessonTasks = 5;  // of about two minutes
inline constexpr std::size_t kLessonItems = 5;  // a task
inline constexpr std::size_t kTableItems = 8;   // of about a minute

struct LessonItem {
    std::string item;  // its id in the pack
    Aloud said;
    std::vector<std::string> listen_to;  // children's ids who miss what it turns on
    double expected = 0;                 // share of right answers, of a child nothing is known of
    bool operator==(const LessonItem&) const = default;
};

struct LessonTask {
    std::string skill;
    std::size_t missed_by = 0;      // children who miss something in it
    std::vector<LessonItem> items;  // harder ones last
    bool operator==(const LessonTask&) const = default;
};

struct Lesson {
    std::string pack;  // "on-the-farm 7"
    std::vector<LessonTask> tasks;
};

/// Empty when the pack gives no item that holds in every accent.
Lesson lessonFor(const pack::Pack& pack, std::span<const practice::ChildProgress> children);

/// Ten minutes at the small table with one group, in the same form: its skill alone, on the sounds
/// that its children share.
LessonTask tableTaskFor(const practice::SmallGroup& group, const pack::Pack& pack,
                        std::span<const practice::ChildProgress> children,
                        std::size_t most = kTableItems);

/// What a group shares, in the order of how many miss it: "first sound /k/ (3) and last sound /t/
/// (2)", four at the most.
std::string sharedIn(const practice::SmallGroup& group);

/// What else could be asked of a skill: the best `most` items that are not of the words of those in
/// `already`. An item is heard of the children in `children` alone.
std::vector<LessonItem> moreItemsFor(std::string_view skill, const pack::Pack& pack,
                                     std::span<const practice::ChildProgress> children,
                                     std::span<const LessonItem> already, std::size_t most);

/// The skills of which the pack has an item, in the table's order.
std::vector<std::string> skillsAsked(const pack::Pack& pack);

/// Says anew whom to listen to: those of `children` who miss what an item turns on. One that the
/// pack does not have stays as it is.
void hearThemIn(std::vector<LessonItem>& items, const pack::Pack& pack,
                std::span<const practice::ChildProgress> children);

}  // namespace wrenlet::desk
