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
#include "editor/tomorrow/aloud.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kLessonTasks = 5;  // of about two minutes
inline constexpr std::size_t kLessonItems = 5;  // a task

struct LessonItem {
    std::string item;  // its id in the pack
    Aloud said;
    std::vector<std::string> listen_to;  // children's ids who miss what it turns on
    double expected = 0;                 // share of right answers, of a child nothing is known of
};

struct LessonTask {
    std::string skill;
    std::size_t missed_by = 0;      // children who miss something in it
    std::vector<LessonItem> items;  // harder ones last
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
                        std::span<const practice::ChildProgress> children, std::size_t most = 8);

}  // namespace wrenlet::desk
