#include "editor/tomorrow/plan_at_work.hpp"

#include <algorithm>

#include "editor/look/wording.hpp"
#include "editor/tomorrow/plan_file.hpp"

namespace wrenlet::desk {

namespace {

template <class Rows, class Is>
std::size_t placeOf(const Rows& rows, Is is) {
    return static_cast<std::size_t>(std::find_if(rows.begin(), rows.end(), is) - rows.begin());
}

std::size_t tableAt(const TomorrowPlan& plan, const std::string& id) {
    return placeOf(plan.tables, [&](const PlannedTable& table) { return table.id == id; });
}

std::size_t taskAt(const TomorrowPlan& plan, const std::string& skill) {
    return placeOf(plan.lesson, [&](const LessonTask& task) { return task.skill == skill; });
}

std::size_t placeInTable(const std::string& skill) {
    return placeOf(exercise::skillTable(),
                   [&](const exercise::SkillRow& row) { return row.id == skill; });
}

void hearMembers(PlannedTable& table, const PlanSources& sources) {
    if (sources.pack == nullptr) return;
    std::vector<practice::ChildProgress> members;
    for (const practice::ChildProgress& child : sources.children)
        if (std::find(table.children.begin(), table.children.end(), child.child.id) !=
            table.children.end())
            members.push_back(child);
    hearThemIn(table.items, *sources.pack, members);
}

std::string planned(const TomorrowPlan& plan) {
    return "Tomorrow is planned: " +
           wording::counted(std::int64_t(plan.tables.size()), "small table") + ", " +
           wording::counted(std::int64_t(plan.lesson.size()), "task") + " aloud.";
}

}  // namespace

void PlanAtWork::act(std::string said, std::vector<PlanEdit> edits) {
    history_.act(plan_, {std::move(said), std::move(edits)});
}

void PlanAtWork::planAnew(TomorrowPlan plan) {
    std::string said = planned(plan);
    act(std::move(said), {PutPlan{std::move(plan)}});
}

bool PlanAtWork::keepOnly(const std::set<std::string_view>& known) {
    bool is_any = false;
    const auto keep = [&](std::vector<std::string>& ids) {
        is_any =
            std::erase_if(ids, [&](const std::string& id) { return known.count(id) == 0; }) > 0 ||
            is_any;
    };
    TomorrowPlan plan = plan_;
    for (PlannedTable& table : plan.tables) {
        keep(table.children);
        keep(table.placed);
        for (LessonItem& item : table.items) keep(item.listen_to);
    }
    for (LessonTask& task : plan.lesson)
        for (LessonItem& item : task.items) keep(item.listen_to);
    if (!is_any) return false;
    std::erase_if(plan.tables, [](const PlannedTable& table) { return table.children.empty(); });
    plan_ = std::move(plan);
    history_.startAnew();
    return true;
}

void PlanAtWork::moveChild(const std::string& child, const std::string& name,
                           const std::string& table, const PlanSources& sources) {
    const PlannedTable* was = plan_.tableOf(child);
    const PlannedTable* to = plan_.table(table);
    if (was == to || (to == nullptr && !table.empty())) return;
    std::vector<PlanEdit> edits;
    const std::size_t to_at = tableAt(plan_, table);
    if (to != nullptr) {
        PlannedTable with = *to;
        with.children.push_back(child);
        with.placed.push_back(child);
        hearMembers(with, sources);
        edits.push_back(PutTable{table, std::move(with), to_at});
    }
    if (was != nullptr) {
        PlannedTable left = *was;
        const std::size_t at = tableAt(plan_, was->id);
        std::erase(left.children, child);
        std::erase(left.placed, child);
        hearMembers(left, sources);
        if (left.children.empty())
            edits.push_back(PutTable{was->id, {}, at});
        else
            edits.push_back(PutTable{was->id, std::move(left), at});
    }
    act(to == nullptr ? name + " sits at no table."
                      : name + " sits at table " + std::to_string(to_at + 1) + " now.",
        std::move(edits));
}

std::span<const LessonItem> PlanAtWork::itemsAt(const AskedAt& at) const {
    if (!at.table.empty()) {
        const PlannedTable* table = plan_.table(at.table);
        return table == nullptr ? std::span<const LessonItem>() : table->items;
    }
    const std::size_t task = taskAt(plan_, at.skill);
    return task == plan_.lesson.size() ? std::span<const LessonItem>() : plan_.lesson[task].items;
}

void PlanAtWork::ask(const AskedAt& at, std::string said, std::vector<LessonItem> items) {
    if (!at.table.empty()) {
        const std::size_t place = tableAt(plan_, at.table);
        if (place == plan_.tables.size()) return;
        PlannedTable table = plan_.tables[place];
        table.items = std::move(items);
        return act(std::move(said), {PutTable{at.table, std::move(table), place}});
    }
    const std::size_t place = taskAt(plan_, at.skill);
    if (place == plan_.lesson.size()) return;
    LessonTask task = plan_.lesson[place];
    task.items = std::move(items);
    act(std::move(said), {PutTask{at.skill, std::move(task), place}});
}

void PlanAtWork::takeItemOut(const AskedAt& at, std::size_t index) {
    const auto asked = itemsAt(at);
    if (index >= asked.size()) return;
    std::vector<LessonItem> items(asked.begin(), asked.end());
    const std::string said = "Taken out: " + items[index].said.ask;
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(index));
    ask(at, said, std::move(items));
}

void PlanAtWork::putItemIn(const AskedAt& at, LessonItem item) {
    const auto asked = itemsAt(at);
    const auto same = [&](const LessonItem& one) { return one.said.ask == item.said.ask; };
    if (asked.size() >= kMostItems || std::any_of(asked.begin(), asked.end(), same)) return;
    std::vector<LessonItem> items(asked.begin(), asked.end());
    const std::string said = "Put in: " + item.said.ask;
    const auto harder = std::find_if(items.begin(), items.end(), [&](const LessonItem& one) {
        return one.expected < item.expected;
    });
    items.insert(harder, std::move(item));
    ask(at, said, std::move(items));
}

void PlanAtWork::askOthers(const AskedAt& at, std::vector<LessonItem> items) {
    if (items.empty()) return;
    ask(at, "Other words for " + wording::skill(at.skill) + ".", std::move(items));
}

void PlanAtWork::takeTaskOut(const std::string& skill) {
    const std::size_t at = taskAt(plan_, skill);
    if (at == plan_.lesson.size()) return;
    act(wording::skill(skill) + " is not in the lesson.", {PutTask{skill, {}, at}});
}

void PlanAtWork::putTaskIn(LessonTask task) {
    if (taskAt(plan_, task.skill) != plan_.lesson.size() || plan_.lesson.size() >= kMostTables)
        return;
    const std::size_t order = placeInTable(task.skill);
    const std::size_t at = placeOf(
        plan_.lesson, [&](const LessonTask& one) { return placeInTable(one.skill) > order; });
    std::string said = wording::skill(task.skill) + " is in the lesson.";
    act(std::move(said), {PutTask{"", std::move(task), at}});
}

}  // namespace wrenlet::desk
