// Tomorrow on paper: one page to read aloud from with the whole class, and one for the small
// tables.
#pragma once

#include <map>
#include <span>
#include <string>

#include "editor/tomorrow/lesson.hpp"

namespace wrenlet::desk::paper {

/// What each child is called on paper, by id: the name, and the badge's number too where two
/// children of the class have one name.
using Names = std::map<std::string, std::string>;
Names namesOf(std::span<const practice::ChildProgress> children);

/// One page, items in two columns, whom to listen to beside each.
std::string lessonPage(const Lesson& lesson, const Names& names);

/// Each group with its children, what they share and ten minutes for it; then who is in none, and
/// why. `plans` has a plan for each group, in their order.
std::string groupsPage(const practice::Grouping& grouping, std::span<const LessonTask> plans,
                       const Names& names);

}  // namespace wrenlet::desk::paper
