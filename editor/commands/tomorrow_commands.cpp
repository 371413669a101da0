// groups and lesson: tomorrow, from the answers so far and the pack that is handed out.
#include <nlohmann/json.hpp>

#include "editor/commands/class_call.hpp"
#include "editor/look/wording.hpp"
#include "editor/paper/tomorrow_pages.hpp"

namespace wrenlet::desk {

namespace {

using nlohmann::ordered_json;

constexpr const char* kGroupsUse = "wrenlet-desk groups CLASSROOM [--json] [--html FILE]\n";
constexpr const char* kLessonUse = "wrenlet-desk lesson CLASSROOM [--json] [--html FILE]\n";

ordered_json taskJson(const LessonTask& task) {
    ordered_json json;
    json["skill"] = task.skill;
    json["missed_by"] = task.missed_by;
    json["items"] = ordered_json::array();
    for (const LessonItem& item : task.items)
        json["items"].push_back({{"item", item.item},
                                 {"ask", item.said.ask},
                                 {"answer", item.said.answer},
                                 {"listen_to", item.listen_to},
                                 {"expected", item.expected}});
    return json;
}

ordered_json groupJson(const practice::SmallGroup& group, const LessonTask* plan) {
    ordered_json json;
    json["skill"] = group.skill;
    json["children"] = group.children;
    json["sounds"] = ordered_json::array();
    for (const practice::SharedSound& sound : group.sounds)
        json["sounds"].push_back({{"phoneme", sound.turns_on.sound},
                                  {"position", exercise::positionId(sound.turns_on.position)},
                                  {"missed_by", sound.children}});
    if (plan != nullptr) json["plan"] = taskJson(*plan);
    return json;
}

void printTask(const LessonTask& task, const paper::Names& names, std::ostream& out) {
    for (const LessonItem& item : task.items) {
        out << "  " << item.said.ask << "  " << item.said.answer;
        std::vector<std::string> who;
        for (const std::string& id : item.listen_to) who.push_back(names.at(id));
        if (!who.empty()) out << "  (listen to " << wording::names(who, 4) << ")";
        out << "\n";
    }
}

void printNames(const char* head, const std::vector<std::string>& ids, const paper::Names& names,
                std::ostream& out) {
    if (ids.empty()) return;
    std::vector<std::string> who;
    for (const std::string& id : ids) who.push_back(names.at(id));
    out << "\n" << head << wording::names(who, 40) << "\n";
}

}  // namespace

int groupsCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kGroupsUse, console.err);
    if (!call) return 2;
    const auto opened = classAtHand(*call, console.err);
    if (!opened) return 1;
    const auto pack = packAtHand(*opened, console.err);
    const practice::Grouping grouping = practice::groupsOf(opened->children);
    std::vector<LessonTask> plans;
    if (pack)
        for (const practice::SmallGroup& group : grouping.groups)
            plans.push_back(tableTaskFor(group, *pack, opened->children));
    const paper::Names names = paper::namesOf(opened->children);
    if (!call->html.empty())
        return writePaper(call->html, paper::groupsPage(grouping, plans, names), console) ? 0 : 1;
    if (call->json) {
        ordered_json json{{"caution", kCaution}, {"groups", ordered_json::array()}};
        for (std::size_t i = 0; i < grouping.groups.size(); ++i)
            json["groups"].push_back(
                groupJson(grouping.groups[i], i < plans.size() ? &plans[i] : nullptr));
        json["alone"] = grouping.alone;
        json["nothing_missed"] = grouping.nothing;
        json["too_little_to_say"] = grouping.not_sure;
        console.out << json.dump(2) << "\n";
        return 0;
    }
    console.out << kCaution << "\n";
    for (std::size_t i = 0; i < grouping.groups.size(); ++i) {
        const practice::SmallGroup& group = grouping.groups[i];
        printNames("", group.children, names, console.out);
        console.out << "  " << wording::skill(group.skill) << ":";
        for (const practice::SharedSound& sound : group.sounds)
            console.out << " " << wording::placeShort(sound.turns_on);
        console.out << "\n";
        if (i < plans.size()) printTask(plans[i], names, console.out);
    }
    printNames("Miss something that nobody else misses: ", grouping.alone, names, console.out);
    printNames("Nothing is said to be missed: ", grouping.nothing, names, console.out);
    printNames("Too few answers to say: ", grouping.not_sure, names, console.out);
    return 0;
}

int lessonCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kLessonUse, console.err);
    if (!call) return 2;
    const auto opened = classAtHand(*call, console.err);
    if (!opened) return 1;
    const auto pack = packAtHand(*opened, console.err);
    if (!pack) return 1;
    const Lesson lesson = lessonFor(*pack, opened->children);
    const paper::Names names = paper::namesOf(opened->children);
    if (!call->html.empty())
        return writePaper(call->html, paper::lessonPage(lesson, names), console) ? 0 : 1;
    if (call->json) {
        ordered_json json{
            {"caution", kCaution}, {"pack", lesson.pack}, {"tasks", ordered_json::array()}};
        for (const LessonTask& task : lesson.tasks) json["tasks"].push_back(taskJson(task));
        console.out << json.dump(2) << "\n";
        return 0;
    }
    console.out << kCaution << "\n";
    for (const LessonTask& task : lesson.tasks) {
        console.out << "\n"
                    << wording::skill(task.skill) << ": missed by "
                    << wording::counted(std::int64_t(task.missed_by), "child", "children") << "\n";
        printTask(task, names, console.out);
    }
    return 0;
}

}  // namespace wrenlet::desk
