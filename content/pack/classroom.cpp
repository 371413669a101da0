#include "content/pack/classroom.hpp"

#include <algorithm>
#include <set>

#include "content/common/files.hpp"
#include "content/exercise/skill.hpp"
#include "content/pack/json_reader.hpp"
#include "content/pack/picture_key.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::pack {
namespace {

constexpr std::string_view kFormat = "wrenlet class";
constexpr int kVersion = 1;

/// A key that is none is left out with a warning: the child is to play all the same.
std::vector<std::string> readKey(const Json& json, const std::string& place, JsonReader& reader) {
    std::vector<std::string> key = reader.texts(json, "key", place, 20, 60);
    if (key.empty()) return key;
    std::string all;
    for (const std::string_view picture : kKeyPictures)
        all += (all.empty() ? "" : ", ") + std::string(picture);
    const std::string way_out =
        "Choose two of " + all + ". Until then this child plays without a key.";
    for (const std::string& picture : key)
        if (std::find(kKeyPictures.begin(), kKeyPictures.end(), picture) == kKeyPictures.end()) {
            reader.warn(place + ", key", inQuotes(picture) + " is no picture of a key.", way_out);
            return {};
        }
    if (key.size() == kKeyLength && key[0] != key[1]) return key;
    reader.warn(place + ", key", "A key is two pictures that are not alike.", way_out);
    return {};
}

Child readChild(const Json& json, const std::string& place, JsonReader& reader) {
    Child child;
    child.id = reader.text(json, "id", place, 60, true);
    child.name = reader.text(json, "name", place, kMostNameLetters, true);
    child.badge = reader.text(json, "badge", place, 60, true);
    child.shields = reader.texts(json, "shields", place, 100, 40);
    child.key = readKey(json, place, reader);
    child.roster = reader.text(json, "roster", place, kMostRosterLetters);
    for (const std::string* id : {&child.id, &child.badge})
        if (!id->empty() && !isPlainId(*id))
            reader.error(place,
                         inQuotes(*id) + " has more than letters a to z, digits and hyphens.",
                         "Change it.");
    return child;
}

/// `ids` are those that are taken, and more with each child read.
std::vector<Child> readChildren(const Json& root, const char* key, std::size_t most, bool needed,
                                std::set<std::string>& ids, JsonReader& reader) {
    std::vector<Child> all;
    const Json& children = reader.list(root, key, most, needed);
    for (std::size_t i = 0; i < children.size(); ++i) {
        const std::string place = placeIn(key, i);
        if (!reader.isObject(children[i], place)) continue;
        Child child = readChild(children[i], place, reader);
        if (!ids.insert(child.id).second)
            reader.error(place, "Another child has the id " + inQuotes(child.id) + " already.",
                         "Give one of them a new one.");
        all.push_back(std::move(child));
    }
    return all;
}

nlohmann::ordered_json written(const std::vector<Child>& children) {
    auto all = nlohmann::ordered_json::array();
    for (const Child& child : children) {
        nlohmann::ordered_json entry;
        entry["id"] = child.id;
        entry["name"] = child.name;
        entry["badge"] = child.badge;
        entry["shields"] = child.shields;
        if (!child.key.empty()) entry["key"] = child.key;
        if (!child.roster.empty()) entry["roster"] = child.roster;
        all.push_back(std::move(entry));
    }
    return all;
}

ClassSettings readSettings(const Json& json, JsonReader& reader) {
    ClassSettings settings;
    const auto minutes =
        static_cast<int>(reader.whole(json, "session_minutes", "settings", 1, 60, 6));
    settings.session_minutes = std::clamp(minutes, kLeastMinutes, kMostMinutes);
    if (minutes != settings.session_minutes)
        reader.warn("settings, session_minutes",
                    "A session is " + std::to_string(kLeastMinutes) + " to " +
                        std::to_string(kMostMinutes) + " minutes.",
                    "It is taken as " + std::to_string(settings.session_minutes) + ".");
    for (std::string& skill : reader.texts(json, "focus", "settings", 20, 60)) {
        if (exercise::skillFromId(skill))
            settings.focus.push_back(std::move(skill));
        else
            reader.warn("settings, focus", inQuotes(skill) + " is no skill of this Wrenlet.",
                        "The other skills are used.");
    }
    return settings;
}

}  // namespace

const Child* ClassList::child(std::string_view id) const {
    const auto it = std::find_if(children.begin(), children.end(),
                                 [&](const Child& child) { return child.id == id; });
    return it == children.end() ? nullptr : &*it;
}

bool ClassList::isDeleted(std::string_view id) const {
    return std::find(deleted.begin(), deleted.end(), id) != deleted.end();
}

Result<ClassList> readClassList(std::string_view json, std::string_view where) {
    const Result<Json> parsed = parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const Json& root = parsed.value();
    JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "a list of a class"))
        return reader.takeProblems();

    ClassList list;
    list.title = reader.text(root, "title", "", 60);
    list.pack = reader.text(root, "pack", "", 120);
    if (!list.pack.empty() && !isPlainFileName(list.pack))
        reader.error("pack", inQuotes(list.pack) + " is not the name of a file in packs.",
                     "Hand the pack out again.");
    std::set<std::string> ids;
    list.children = readChildren(root, "children", kMostChildren, true, ids, reader);
    list.left = readChildren(root, "left", kMostLeft, false, ids, reader);
    list.deleted = reader.texts(root, "deleted", "", kMostDeleted, 60);
    for (std::vector<Child>* side : {&list.children, &list.left})
        std::erase_if(*side, [&](const Child& child) { return list.isDeleted(child.id); });
    list.settings = readSettings(reader.object(root, "settings"), reader);
    if (reader.failed()) return reader.takeProblems();
    return {std::move(list), reader.takeProblems()};
}

std::string writeClassList(const ClassList& list) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["title"] = list.title;
    root["pack"] = list.pack;
    root["settings"]["session_minutes"] = list.settings.session_minutes;
    root["settings"]["focus"] = list.settings.focus;
    root["children"] = written(list.children);
    if (!list.left.empty()) root["left"] = written(list.left);
    if (!list.deleted.empty()) root["deleted"] = list.deleted;
    return root.dump(2) + "\n";
}

Result<ClassList> openClassList(const Classroom& classroom) {
    const Result<std::string> bytes = readWhole(classroom.classFile(), kMostClassBytes);
    if (!bytes.ok()) return bytes.problems();
    return readClassList(bytes.value(), classroom.classFile().filename().string());
}

}  // namespace wrenlet::pack
