#include "editor/tomorrow/plan_file.hpp"

#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/exercise/skill.hpp"
#include "content/pack/json_reader.hpp"
#include "content/pack/text_rules.hpp"
#include "editor/edits/beside.hpp"

namespace wrenlet::desk {

namespace {

using pack::Json;
using pack::JsonReader;

constexpr std::string_view kFormat = "wrenlet tomorrow";
constexpr int kVersion = 1;
constexpr const char* kName = "tomorrow.json";
constexpr const char* kWayOut = "Plan tomorrow once more; nothing else hangs on this file.";
constexpr std::size_t kMostId = 60, kMostItemId = 200, kMostSaid = 600;
constexpr std::int64_t kMostMs = std::int64_t{1} << 53;

std::vector<std::string> readIds(const Json& json, const char* key, const std::string& place,
                                 JsonReader& reader) {
    std::vector<std::string> ids =
        reader.texts(json, key, place, pack::kMostChildren + pack::kMostLeft, kMostId);
    for (const std::string& id : ids)
        if (!pack::isPlainId(id))
            reader.error(place + ", " + key, pack::inQuotes(id) + " is not the id of a child.",
                         kWayOut);
    return ids;
}

std::string readSkill(const Json& json, const std::string& place, JsonReader& reader) {
    std::string skill = reader.text(json, "skill", place, kMostId, true);
    if (!exercise::skillFromId(skill))
        reader.error(place, pack::inQuotes(skill) + " is no skill of this Wrenlet.", kWayOut);
    return skill;
}

std::vector<LessonItem> readItems(const Json& json, const std::string& place, JsonReader& reader) {
    std::vector<LessonItem> items;
    const Json& list = reader.list(json, "items", kMostItems, true);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string here = place + ", " + pack::placeIn("items", i);
        if (!reader.isObject(list[i], here)) continue;
        LessonItem item;
        item.item = reader.text(list[i], "item", here, kMostItemId, true);
        item.said.ask = reader.text(list[i], "ask", here, kMostSaid, true);
        item.said.answer = reader.text(list[i], "answer", here, kMostSaid, true);
        item.listen_to = readIds(list[i], "listen_to", here, reader);
        item.expected = reader.number(list[i], "expected", here);
        if (!(item.expected >= 0 && item.expected <= 1))
            reader.error(here + ", expected", "This is a share and lies from 0 to 1.", kWayOut);
        items.push_back(std::move(item));
    }
    return items;
}

void readTables(const Json& root, TomorrowPlan& plan, JsonReader& reader) {
    std::set<std::string> ids, seated;
    const Json& list = reader.list(root, "tables", kMostTables, true);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = pack::placeIn("tables", i);
        if (!reader.isObject(list[i], place)) continue;
        PlannedTable table;
        table.id = reader.text(list[i], "id", place, kMostId, true);
        table.skill = readSkill(list[i], place, reader);
        table.children = readIds(list[i], "children", place, reader);
        table.placed = readIds(list[i], "placed", place, reader);
        table.items = readItems(list[i], place, reader);
        if (!ids.insert(table.id).second)
            reader.error(place, "Another table has the same id.", kWayOut);
        for (const std::string& child : table.children)
            if (!seated.insert(child).second)
                reader.error(place, pack::inQuotes(child) + " sits here and elsewhere.", kWayOut);
        plan.tables.push_back(std::move(table));
    }
}

void readLesson(const Json& root, TomorrowPlan& plan, JsonReader& reader) {
    std::set<std::string> skills;
    const Json& list = reader.list(root, "lesson", kMostTables, true);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string place = pack::placeIn("lesson", i);
        if (!reader.isObject(list[i], place)) continue;
        LessonTask task;
        task.skill = readSkill(list[i], place, reader);
        task.missed_by = static_cast<std::size_t>(
            reader.whole(list[i], "missed_by", place, 0, pack::kMostChildren, 0));
        task.items = readItems(list[i], place, reader);
        if (!skills.insert(task.skill).second)
            reader.error(place, "The lesson has this task already.", kWayOut);
        plan.lesson.push_back(std::move(task));
    }
}

nlohmann::ordered_json itemsJson(const std::vector<LessonItem>& items) {
    auto all = nlohmann::ordered_json::array();
    for (const LessonItem& item : items)
        all.push_back({{"item", item.item},
                       {"ask", item.said.ask},
                       {"answer", item.said.answer},
                       {"listen_to", item.listen_to},
                       {"expected", item.expected}});
    return all;
}

bool isThere(const std::filesystem::path& file) {
    std::error_code error;
    return std::filesystem::exists(file, error);
}

}  // namespace

std::filesystem::path planFile(const pack::Classroom& classroom) {
    return classroom.folder / kName;
}

Result<TomorrowPlan> readPlan(std::string_view json, std::string_view where) {
    const Result<Json> parsed = pack::parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const Json& root = parsed.value();
    JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "a plan for tomorrow"))
        return reader.takeProblems();
    TomorrowPlan plan;
    plan.pack = reader.text(root, "pack", "", 120);
    if (!plan.pack.empty() && !pack::isPlainFileName(plan.pack))
        reader.error("pack", pack::inQuotes(plan.pack) + " is not the name of a file.", kWayOut);
    plan.planned_ms = reader.whole(root, "planned_ms", "", 0, kMostMs, 0);
    plan.answers = reader.whole(root, "answers", "", 0, kMostMs, 0);
    readTables(root, plan, reader);
    readLesson(root, plan, reader);
    if (reader.failed()) return reader.takeProblems();
    return {std::move(plan), reader.takeProblems()};
}

std::string writePlan(const TomorrowPlan& plan) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["pack"] = plan.pack;
    root["planned_ms"] = plan.planned_ms;
    root["answers"] = plan.answers;
    root["tables"] = nlohmann::ordered_json::array();
    for (const PlannedTable& table : plan.tables)
        root["tables"].push_back({{"id", table.id},
                                  {"skill", table.skill},
                                  {"children", table.children},
                                  {"placed", table.placed},
                                  {"items", itemsJson(table.items)}});
    root["lesson"] = nlohmann::ordered_json::array();
    for (const LessonTask& task : plan.lesson)
        root["lesson"].push_back({{"skill", task.skill},
                                  {"missed_by", task.missed_by},
                                  {"items", itemsJson(task.items)}});
    return root.dump(2) + "\n";
}

OpenedPlan openPlan(const pack::Classroom& classroom, const std::filesystem::path& aside) {
    OpenedPlan opened;
    const auto copy = PlanWriter::asideFile(aside, classroom);
    if (!aside.empty() && isThere(copy))
        opened.problems.push_back(
            {kName, "A copy of a plan was put aside when it could not be saved.",
             "It is " + copy.string() + "; look there for what is missing here.",
             Problem::Weight::warning});
    const auto file = planFile(classroom);
    if (!isThere(file)) return opened;
    Result<std::string> bytes = readWhole(file, kMostPlanBytes);
    Result<TomorrowPlan> plan =
        bytes.ok() ? readPlan(bytes.value(), kName) : Result<TomorrowPlan>(bytes.problems());
    if (plan.ok()) {
        opened.plan = std::move(plan.value());
        opened.bytes = std::move(bytes.value());
        return opened;
    }
    const auto kept = freeBeside(classroom.folder, "tomorrow-as-found");
    std::error_code error;
    std::filesystem::rename(file, kept, error);
    const std::string why = plan.problems().front().what;
    opened.problems.push_back(
        {plan.problems().front().where, "The plan for tomorrow cannot be read. " + why,
         error ? "It stays where it is, since this folder cannot be written."
               : "It is kept as " + kept.filename().string() + "; plan tomorrow once more.",
         Problem::Weight::warning});
    return opened;
}

std::filesystem::path PlanWriter::asideFile(const std::filesystem::path& aside,
                                            const pack::Classroom& classroom) {
    return aside /
           std::filesystem::u8path("tomorrow-" + classroom.folder.filename().string() + ".json");
}

PlanWriter::Outcome PlanWriter::writeInPlace(const TomorrowPlan& plan, const std::string& bytes) {
    Outcome outcome;
    const auto file = planFile(classroom_);
    if (isThere(file)) {
        const Result<std::string> there = readWhole(file, kMostPlanBytes);
        // who was deleted is taken out of this file too, and is forgotten here as well
        const auto read =
            there.ok() ? readPlan(there.value(), kName) : Result<TomorrowPlan>(there.problems());
        const bool is_same = there.ok() && (there.value() == saved_ || there.value() == bytes ||
                                            (read.ok() && read.value() == plan));
        if (!is_same) {
            const auto kept = freeBeside(classroom_.folder, "tomorrow-other");
            std::error_code error;
            std::filesystem::rename(file, kept, error);
            if (error)
                return {false,
                        {{kName, "Somebody else's plan is in its place and cannot be put aside.",
                          "Look whether the classroom folder can be written."}},
                        {}};
            outcome.problems.push_back({kName, "Somebody else planned tomorrow meanwhile.",
                                        "That plan is kept as " + kept.filename().string() + ".",
                                        Problem::Weight::warning});
        }
    }
    const Result<Done> written = writeWhole(file, bytes);
    if (!written.ok()) return {false, written.problems(), {}};
    outcome.is_saved = true;
    saved_ = bytes;
    return outcome;
}

PlanWriter::Outcome PlanWriter::write(const TomorrowPlan& plan) {
    const std::string bytes = writePlan(plan);
    Outcome outcome = writeInPlace(plan, bytes);
    if (aside_.empty()) return outcome;
    std::error_code error;
    const auto copy = asideFile(aside_, classroom_);
    if (outcome.is_saved) {
        std::filesystem::remove(copy, error);
        return outcome;
    }
    std::filesystem::create_directories(aside_, error);
    if (writeWhole(copy, bytes).ok())
        outcome.problems.push_back({kName, "The plan is kept on this machine meanwhile.",
                                    "It is saved in its place as soon as that can be written."});
    return outcome;
}

}  // namespace wrenlet::desk
