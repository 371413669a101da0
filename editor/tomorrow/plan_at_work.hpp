// Tomorrow's plan that a teacher works on: what she did to it, and each thing she can do, in her
// words. Nothing here waits for the disk.
#pragma once

#include <cstdint>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <utility>

#include "editor/tomorrow/plan.hpp"

namespace wrenlet::desk {

/// Where an item is asked: at a table, or in a task of the lesson.
struct AskedAt {
    std::string table;  // its id; empty: in the lesson
    std::string skill;  // the task's
    bool operator==(const AskedAt&) const = default;
};

/// What a plan is about. `pack` may be null.
struct PlanSources {
    std::span<const practice::ChildProgress> children;
    const pack::Pack* pack = nullptr;
};

class PlanAtWork {
  public:
    explicit PlanAtWork(TomorrowPlan plan) : plan_(std::move(plan)) {}

    const TomorrowPlan& plan() const { return plan_; }
    const PlanHistory& history() const { return history_; }
    std::uint64_t changes() const { return history_.changes(); }
    bool undo() { return history_.undo(plan_); }
    bool redo() { return history_.redo(plan_); }

    /// Another plan takes this one's place: one step of undo as well.
    void planAnew(TomorrowPlan plan);

    /// Forgets children who are not `known`, such as one who was deleted for good: out of the plan,
    /// and what was done before cannot be taken back any more. False: there was none.
    bool keepOnly(const std::set<std::string_view>& known);

    /// The child sits at that table from now on, placed there; an empty `table`: at none. A table
    /// that nobody is left at goes. `name` is what the child is called.
    void moveChild(const std::string& child, const std::string& name, const std::string& table,
                   const PlanSources& sources);

    /// The items asked there; none where there is no such place.
    std::span<const LessonItem> itemsAt(const AskedAt& at) const;
    void takeItemOut(const AskedAt& at, std::size_t index);
    /// Among the others by how hard it is. Does nothing when it is asked there already, or where
    /// there are as many as a file can hold.
    void putItemIn(const AskedAt& at, LessonItem item);
    /// Others in the place of all that are asked there.
    void askOthers(const AskedAt& at, std::vector<LessonItem> items);

    void takeTaskOut(const std::string& skill);
    /// Larger units of sound stand first. Does nothing when the lesson has that task.
    void putTaskIn(LessonTask task);

  private:
    void act(std::string said, std::vector<PlanEdit> edits);
    void ask(const AskedAt& at, std::string said, std::vector<LessonItem> items);

    TomorrowPlan plan_;
    PlanHistory history_;
};

}  // namespace wrenlet::desk
