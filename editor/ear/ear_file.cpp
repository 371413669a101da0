#include "editor/ear/ear_file.hpp"

#include <algorithm>
#include <array>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/exercise/skill.hpp"
#include "content/pack/json_reader.hpp"
#include "editor/edits/held_file.hpp"

namespace wrenlet::desk {

namespace {

using pack::Json;
using pack::JsonReader;
using practice::Heard;
using practice::HeardAs;

constexpr std::string_view kFormat = "wrenlet ear";
constexpr int kVersion = 1;
constexpr int kMostWaitMs = 1'000;
constexpr std::array<std::pair<HeardAs, std::string_view>, 3> kMarks{
    {{HeardAs::right, "right"}, {HeardAs::almost, "almost"}, {HeardAs::wrong, "wrong"}}};
constexpr std::int64_t kLastDay = 100'000;

/// Nothing for one that makes no sense.
bool readMark(const Json& json, Heard& heard) {
    if (!json.is_object()) return false;
    const auto text = [&](const char* key, std::size_t most) -> std::string {
        const auto at = json.find(key);
        if (at == json.end() || !at->is_string()) return {};
        const auto& value = at->get_ref<const std::string&>();
        return value.size() <= most ? value : std::string();
    };
    heard.child = text("child", 60);
    heard.skill = text("skill", 60);
    heard.turns_on.sound = text("sound", 60);
    heard.asked = text("asked", 400);
    const std::string position = text("position", 20), mark = text("mark", 10);
    heard.turns_on.position = exercise::positionFromId(position);
    const auto known = std::find_if(kMarks.begin(), kMarks.end(),
                                    [&](const auto& one) { return one.second == mark; });
    const auto day = json.find("day");
    if (day == json.end() || !day->is_number_integer()) return false;
    heard.day = day->get<std::int64_t>();
    const auto is_new = json.find("new_word");
    heard.is_new_word = is_new != json.end() && is_new->is_boolean() && is_new->get<bool>();
    if (heard.child.empty() || known == kMarks.end() || heard.day < 0 || heard.day > kLastDay ||
        !exercise::skillFromId(heard.skill) ||
        exercise::positionId(heard.turns_on.position) != position)
        return false;
    heard.mark = known->first;
    return true;
}

}  // namespace

Result<std::vector<Heard>> readEar(std::string_view json, std::string_view where) {
    const Result<Json> parsed = pack::parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    JsonReader reader(where);
    if (!reader.isFormat(parsed.value(), kFormat, kVersion, "a file of marks given aloud"))
        return reader.takeProblems();
    const Json& list = reader.list(parsed.value(), "marks", kMostMarks, true);
    std::vector<Heard> marks;
    std::size_t left_out = 0;
    for (const Json& entry : list) {
        Heard heard;
        if (readMark(entry, heard))
            marks.push_back(std::move(heard));
        else
            ++left_out;
    }
    if (left_out > 0)
        reader.warn("marks", std::to_string(left_out) + " of the marks make no sense.",
                    "They are left out.");
    if (reader.failed()) return reader.takeProblems();
    return {std::move(marks), reader.takeProblems()};
}

std::string writeEar(std::span<const Heard> marks) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    auto& list = root["marks"] = nlohmann::ordered_json::array();
    for (const Heard& heard : marks) {
        nlohmann::ordered_json entry{{"child", heard.child},
                                     {"day", heard.day},
                                     {"skill", heard.skill},
                                     {"sound", heard.turns_on.sound},
                                     {"position", exercise::positionId(heard.turns_on.position)},
                                     {"asked", heard.asked}};
        for (const auto& [mark, name] : kMarks)
            if (mark == heard.mark) entry["mark"] = name;
        if (heard.is_new_word) entry["new_word"] = true;
        list.push_back(std::move(entry));
    }
    return root.dump(1) + "\n";
}

Result<std::vector<Heard>> openEar(const pack::Classroom& classroom) {
    std::error_code error;
    if (!std::filesystem::exists(classroom.earFile(), error)) return std::vector<Heard>{};
    const Result<std::string> bytes = readWhole(classroom.earFile(), kMostEarBytes);
    if (!bytes.ok()) return bytes.problems();
    return readEar(bytes.value(), classroom.earFile().filename().string());
}

Result<Done> changeEar(const pack::Classroom& classroom, std::span<const Heard> added,
                       std::span<const Heard> taken_back) {
    const auto hold = HeldFile::wait(classroom.folder / "ear-in-use", kMostWaitMs);
    auto marks = openEar(classroom);
    if (!marks.ok()) return marks.problems();
    std::vector<Heard>& all = marks.value();
    for (const Heard& heard : taken_back) {
        const auto newest = std::find(all.rbegin(), all.rend(), heard);
        if (newest != all.rend()) all.erase(std::next(newest).base());
    }
    all.insert(all.end(), added.begin(), added.end());
    if (all.size() > kMostMarks)
        return Problem{"ear.json", "There are too many marks to keep more.",
                       "Begin a new classroom folder for the new year."};
    return writeWhole(classroom.earFile(), writeEar(all));
}

}  // namespace wrenlet::desk
