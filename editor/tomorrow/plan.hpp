// What the teacher does tomorrow, as she has it at the desk: the small tables with their ten
// minutes, and ten minutes aloud with the whole class. Made from the answers, then hers to change.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "editor/edits/history.hpp"
#include "editor/tomorrow/lesson.hpp"

namespace wrenlet::desk {

struct PlannedTable {
    std::string id;                     // "t-1"; of this plan alone
    std::string skill;                  // what its children share a gap in
    std::vector<std::string> children;  // ids
    std::vector<std::string> placed;    // of them: whom she put here herself
    std::vector<LessonItem> items;      // harder ones last
    bool operator==(const PlannedTable&) const = default;
};

struct TomorrowPlan {
    std::string pack;             // the file that was handed out then; empty: none was
    std::int64_t planned_ms = 0;  // when, in Unix milliseconds; 0: nothing is planned yet
    std::int64_t answers = 0;     // of the class, that it was made from
    std::vector<PlannedTable> tables;
    std::vector<LessonTask> lesson;  // at most one of a skill
    bool operator==(const TomorrowPlan&) const = default;

    bool isMade() const { return planned_ms > 0; }
    const PlannedTable* table(std::string_view id) const;       // null: none
    const PlannedTable* tableOf(std::string_view child) const;  // null: at no table
};

/// The tables of a plan as the groups of the day before.
std::vector<practice::SmallGroup> groupsIn(const TomorrowPlan& plan);

/// The tables of a plan as they are told: each with the sounds its children share and its items, in
/// the plan's order, and who sits at none. Children who are not in the class are left out.
struct TablesOnPaper {
    practice::Grouping grouping;
    std::vector<LessonTask> plans;  // one a group
};
TablesOnPaper tablesOnPaper(const TomorrowPlan& plan,
                            std::span<const practice::ChildProgress> children);

/// A new plan, in which a child changes table only where the evidence moved since `before`, and
/// whom she placed stays. `pack` may be null: then the tables have no items, and there is no
/// lesson.
TomorrowPlan planFor(std::span<const practice::ChildProgress> children, const pack::Pack* pack,
                     std::string_view pack_file, const TomorrowPlan& before, std::int64_t now_ms,
                     std::int64_t answers);

/// A table by its id, or a task of the lesson by its skill: another value in its place, or none. An
/// empty id puts a new one in. `at` is where it stands afterwards; past the end: last.
struct PutTable {
    std::string id;
    std::optional<PlannedTable> table;
    std::size_t at = 0;
};
struct PutTask {
    std::string skill;
    std::optional<LessonTask> task;
    std::size_t at = 0;
};
struct PutPlan {
    TomorrowPlan plan;
};
using PlanEdit = std::variant<PutTable, PutTask, PutPlan>;

/// Changes `plan` and returns the edit that takes the change back. REQUIRES: an id that an edit
/// names is there, and one that it brings is not.
PlanEdit apply(TomorrowPlan& plan, const PlanEdit& edit);

using PlanHistory = HistoryOf<TomorrowPlan, PlanEdit>;

}  // namespace wrenlet::desk
