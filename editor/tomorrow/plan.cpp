#include "editor/tomorrow/plan.hpp"

#include <algorithm>

#include "editor/edits/put_row.hpp"

namespace wrenlet::desk {

namespace {

const std::string& tableId(const PlannedTable& table) {
    return table.id;
}
const std::string& taskId(const LessonTask& task) {
    return task.skill;
}

struct Applied {
    TomorrowPlan& plan;

    PlanEdit operator()(const PutTable& put) const {
        Was<PlannedTable> was = putRow(plan.tables, put.id, put.table, put.at, tableId);
        return PutTable{std::move(was.id), std::move(was.row), was.at};
    }
    PlanEdit operator()(const PutTask& put) const {
        Was<LessonTask> was = putRow(plan.lesson, put.skill, put.task, put.at, taskId);
        return PutTask{std::move(was.id), std::move(was.row), was.at};
    }
    PlanEdit operator()(const PutPlan& put) const { return PutPlan{std::exchange(plan, put.plan)}; }
};

}  // namespace

const PlannedTable* TomorrowPlan::table(std::string_view id) const {
    const auto found = std::find_if(tables.begin(), tables.end(),
                                    [&](const PlannedTable& one) { return one.id == id; });
    return found == tables.end() ? nullptr : &*found;
}

const PlannedTable* TomorrowPlan::tableOf(std::string_view child) const {
    for (const PlannedTable& one : tables)
        if (std::find(one.children.begin(), one.children.end(), child) != one.children.end())
            return &one;
    return nullptr;
}

std::vector<practice::SmallGroup> groupsIn(const TomorrowPlan& plan) {
    std::vector<practice::SmallGroup> groups;
    for (const PlannedTable& table : plan.tables)
        groups.push_back({table.skill, table.children, {}, table.placed});
    return groups;
}

TablesOnPaper tablesOnPaper(const TomorrowPlan& plan,
                            std::span<const practice::ChildProgress> children) {
    TablesOnPaper tables;
    for (const PlannedTable& table : plan.tables) {
        practice::SmallGroup group = practice::groupFor(table.skill, table.children, children);
        if (group.children.empty()) continue;
        tables.grouping.groups.push_back(std::move(group));
        tables.plans.push_back({table.skill, 0, table.items});
    }
    for (const practice::ChildProgress& child : children) {
        if (plan.tableOf(child.child.id) != nullptr) continue;
        const auto any = [&](auto is) {
            return std::any_of(child.lines.begin(), child.lines.end(), is);
        };
        using practice::SoundLine, practice::Standing;
        const bool misses =
            any([](const SoundLine& line) { return line.said == Standing::missed; });
        const bool is_sure =
            any([](const SoundLine& line) { return line.said != Standing::too_little; });
        (misses    ? tables.grouping.alone
         : is_sure ? tables.grouping.nothing
                   : tables.grouping.not_sure)
            .push_back(child.child.id);
    }
    return tables;
}

TomorrowPlan planFor(std::span<const practice::ChildProgress> children, const pack::Pack* pack,
                     std::string_view pack_file, const TomorrowPlan& before, std::int64_t now_ms,
                     std::int64_t answers) {
    TomorrowPlan plan;
    plan.pack = pack_file;
    plan.planned_ms = now_ms;
    plan.answers = answers;
    for (const practice::SmallGroup& group :
         practice::groupsOf(children, groupsIn(before)).groups) {
        PlannedTable table{"t-" + std::to_string(plan.tables.size() + 1),
                           group.skill,
                           group.children,
                           group.placed,
                           {}};
        if (pack != nullptr) table.items = tableTaskFor(group, *pack, children).items;
        plan.tables.push_back(std::move(table));
    }
    if (pack != nullptr) plan.lesson = lessonFor(*pack, children).tasks;
    return plan;
}

PlanEdit apply(TomorrowPlan& plan, const PlanEdit& edit) {
    return std::visit(Applied{plan}, edit);
}

}  // namespace wrenlet::desk
