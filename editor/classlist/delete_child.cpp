#include "editor/classlist/delete_child.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <system_error>

#include <nlohmann/json.hpp>

#include "content/common/files.hpp"
#include "content/practice/store.hpp"
#include "editor/classlist/class_file.hpp"
#include "editor/edits/held_file.hpp"
#include "editor/look/wording.hpp"
#include "editor/serve/link_folder.hpp"

namespace wrenlet::desk {

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::ordered_json;

constexpr std::uint64_t kMostFileBytes = 64ull << 20;
constexpr std::size_t kMostFiles = 20'000;  // looked at in a folder

/// Who is deleted. The name is empty where it is not known any more.
struct Who {
    std::string id, name;
};

struct Work {
    const pack::Classroom& classroom;
    const Who& who;
    ChildDeleted& done;

    std::string nameOf(const fs::path& file) const {
        return file.lexically_relative(classroom.folder).generic_string();
    }
    void failed(const std::vector<Problem>& problems) {
        done.problems.insert(done.problems.end(), problems.begin(), problems.end());
    }
    void remove(const fs::path& file) {
        std::error_code error;
        fs::remove(file, error);
        if (error)
            done.problems.push_back({nameOf(file), "This file still holds something of the child.",
                                     "Delete it by hand."});
        else
            done.files.push_back({nameOf(file), 0, true});
    }
};

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
           static_cast<unsigned char>(c) >= 0x80;
}

/// `word` in `text`, no letter or digit beside it.
bool hasWord(std::string_view text, std::string_view word) {
    if (word.empty()) return false;
    for (std::size_t at = text.find(word); at != std::string_view::npos;
         at = text.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || !isLetter(text[at - 1])) && (end == text.size() || !isLetter(text[end])))
            return true;
    }
    return false;
}

bool names(std::string_view text, const Who& who) {
    return hasWord(text, who.id) || hasWord(text, who.name);
}

/// True for an object that is about the child: one of its texts is her id.
bool isAbout(const Json& value, const std::string& id) {
    if (value.is_string()) return value.get_ref<const std::string&>() == id;
    if (!value.is_object()) return false;
    return std::any_of(value.begin(), value.end(), [&](const Json& field) {
        return field.is_string() && field.get_ref<const std::string&>() == id;
    });
}

/// Takes out of lists and objects what is about the child. Depth is bounded by the reader.
bool clearOf(Json& value, const std::string& id) {
    bool changed = false;
    if (value.is_array()) {
        const auto before = value.size();
        value.erase(std::remove_if(value.begin(), value.end(),
                                   [&](const Json& entry) { return isAbout(entry, id); }),
                    value.end());
        changed = value.size() != before;
    } else if (value.is_object()) {
        for (auto at = value.begin(); at != value.end();) {
            if (at.key() == id || isAbout(at.value(), id)) {
                at = value.erase(at);
                changed = true;
            } else {
                ++at;
            }
        }
    }
    if (value.is_structured())
        for (Json& inner : value) changed |= clearOf(inner, id);
    return changed;
}

void clearJson(const fs::path& file, Work& work) {
    const auto bytes = readWhole(file, kMostFileBytes);
    if (!bytes.ok()) return work.failed(bytes.problems());
    if (!hasWord(bytes.value(), work.who.id)) return;
    Json root = Json::parse(bytes.value(), nullptr, false);
    if (root.is_discarded() || isAbout(root, work.who.id)) return work.remove(file);
    clearOf(root, work.who.id);
    const std::string left = root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
    if (hasWord(left, work.who.id)) return work.remove(file);
    const auto written = writeWhole(file, left);
    if (!written.ok()) return work.failed(written.problems());
    work.done.files.push_back({work.nameOf(file), 0, false});
}

/// A paper can be made again, so it goes where it names her, or somebody of her name.
void clearPaper(const fs::path& file, Work& work) {
    if (names(file.filename().string(), work.who)) return work.remove(file);
    const auto bytes = readWhole(file, kMostFileBytes);
    if (!bytes.ok()) return work.failed(bytes.problems());
    if (names(bytes.value(), work.who)) work.remove(file);
}

/// Not made by Wrenlet: whoever made it decides.
void lookInto(const fs::path& file, Work& work) {
    const auto bytes = readWhole(file, kMostFileBytes);
    if (bytes.ok() && hasWord(bytes.value(), work.who.id))
        work.done.problems.push_back({work.nameOf(file), "The child's id stands in this file.",
                                      "Look whether it can be deleted.", Problem::Weight::warning});
}

/// A damaged file cannot be cleared: where she stands in it, it goes. Its tablet hands in the whole
/// again.
void clearSnapshot(const fs::path& file, Work& work) {
    const auto left = practice::snapshotWithout(file, std::span(&work.who.id, 1));
    if (!left.ok()) {
        const auto bytes = readWhole(file, practice::kMostSnapshotBytes);
        if (!bytes.ok()) return work.failed(bytes.problems());
        if (hasWord(bytes.value(), work.who.id)) work.remove(file);
        return;
    }
    if (left.value().answers + left.value().sessions == 0) return;
    const auto written = writeWhole(file, left.value().bytes);
    if (!written.ok()) return work.failed(written.problems());
    work.done.files.push_back({work.nameOf(file), left.value().answers, false});
}

/// What a desk took in from tablets over the network.
void clearTakenIn(const fs::path& file, Work& work) {
    auto store = practice::Store::open(file, "");
    if (!store.ok()) return work.failed(store.problems());
    const auto gone = store.value().forget(std::span(&work.who.id, 1));
    if (!gone.ok()) return work.failed(gone.problems());
    if (gone.value() > 0) work.done.files.push_back({work.nameOf(file), gone.value(), false});
}

/// Everything in the folder but class.json, packs, units and receipts.
std::vector<fs::path> filesOf(const pack::Classroom& classroom) {
    std::vector<fs::path> files;
    std::error_code error;
    fs::recursive_directory_iterator at(classroom.folder,
                                        fs::directory_options::skip_permission_denied, error);
    for (; !error && at != fs::recursive_directory_iterator() && files.size() < kMostFiles;
         at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (at->is_directory(error) && at.depth() == 0 &&
            (name == "packs" || name == "units" || name == "receipts"))
            at.disable_recursion_pending();
        else if (at->is_regular_file(error) && at->path() != classroom.classFile())
            files.push_back(at->path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

/// Her answers in what tablets handed in, each once.
std::size_t countAnswers(const pack::Classroom& classroom, const std::string& id) {
    std::size_t count = 0;
    for (const practice::Response& response : practice::gather(classroom.tablets()).responses)
        count += response.child == id ? 1 : 0;
    return count;
}

/// SQLite's own files beside a store, which go with it.
bool isBesideStore(const fs::path& file) {
    const std::string kind = file.extension().string();
    return kind == ".db-wal" || kind == ".db-shm";
}

/// A desk that serves tablets holds what they sent, and forgets whoever is on the list of the
/// deleted within a second.
bool isServed(Work& work) {
    const LinkFolder link{work.classroom};
    std::error_code error;
    if (!fs::exists(link.held(), error) || HeldFile::take(link.held())) return false;
    work.done.problems.push_back({work.nameOf(link.folder()),
                                  "This classroom is served to tablets just now; the desk that "
                                  "serves it forgets the child in what they sent by itself.",
                                  "", Problem::Weight::warning});
    return true;
}

void clearFiles(Work& work) {
    const bool is_served = isServed(work);
    for (const fs::path& file : filesOf(work.classroom)) {
        const std::string kind = file.extension().string();
        if (kind == ".db" && file.parent_path() == work.classroom.tablets())
            clearSnapshot(file, work);
        else if (isBesideStore(file))
            continue;
        else if (kind == ".db" && file.parent_path() == LinkFolder{work.classroom}.folder()) {
            if (!is_served) clearTakenIn(file, work);
        } else if (kind == ".json")
            clearJson(file, work);
        else if (file.parent_path() == work.classroom.papers())
            clearPaper(file, work);
        else
            lookInto(file, work);
    }
}

std::string receiptOf(const ChildDeleted& done, const std::string& id, std::int64_t day) {
    std::string text = "Deleted for good: child " + id + "\nOn " + wording::isoDate(day) +
                       ", in this classroom folder. The name is not kept.\n\nAnswers removed: " +
                       std::to_string(done.answers) + "\n\nFiles\n  class.json: off the list\n";
    for (const FileCleared& file : done.files)
        text += "  " + file.name +
                (file.is_removed ? ": removed"
                                 : ": written anew without the child, " +
                                       std::to_string(file.answers) + " answers removed") +
                "\n";
    if (!done.problems.empty()) {
        text += "\nNot reached\n";
        for (const Problem& problem : done.problems) text += "  " + sentence(problem) + "\n";
    }
    text += "\nStill to do\n";
    for (const std::string& tablet : done.tablets)
        text += "  [ ] open Wrenlet on tablet " + tablet +
                " near this folder: it then forgets the child by itself\n";
    text +=
        "  [ ] sticks and other copies of this folder, and backups that your school makes\n"
        "  [ ] papers that were printed, sent or saved as PDF\n"
        "  [ ] whoever was given this data, where local rules ask that they are told\n\n"
        "Wrenlet can't reach these. Whether something has to be kept, and for how long, is for\n"
        "your school and local rules to say. A file that is deleted may be found on a disk for\n"
        "some time by those who have the tools for it.\n";
    return text;
}

void writeReceipt(const pack::Classroom& classroom, const std::string& id, std::int64_t day,
                  ChildDeleted& done) {
    const fs::path folder = classroom.folder / "receipts";
    std::error_code error;
    fs::create_directories(folder, error);
    const std::string stem = "deleted-" + wording::isoDate(day) + "-" + id;
    fs::path file = folder / (stem + ".txt");
    for (int again = 2; fs::exists(file, error) && again < 1000; ++again)
        file = folder / (stem + "-" + std::to_string(again) + ".txt");
    const auto written = writeWhole(file, receiptOf(done, id, day));
    if (written.ok())
        done.receipt = file;
    else
        done.problems.insert(done.problems.end(), written.problems().begin(),
                             written.problems().end());
}

/// Nothing when nobody has the id.
std::optional<Who> find(const pack::ClassList& list, const std::string& id) {
    for (const auto* side : {&list.children, &list.left})
        for (const pack::Child& child : *side)
            if (child.id == id) return Who{id, child.name};
    if (list.isDeleted(id)) return Who{id, ""};
    return std::nullopt;
}

}  // namespace

Result<ChildDeleted> deleteChild(const pack::Classroom& classroom, const std::string& id,
                                 std::int64_t day) {
    const auto list = pack::openClassList(classroom);
    if (!list.ok()) return list.problems();
    const auto who = find(list.value(), id);
    if (!who)
        return Problem{"class.json", "Nobody here has the id " + id + ".", "Look it up again."};
    if (!list.value().isDeleted(id) && list.value().deleted.size() >= pack::kMostDeleted)
        return Problem{"class.json", "The list of deleted children is full.",
                       "Begin a new classroom folder."};

    ChildDeleted done;
    done.answers = countAnswers(classroom, id);
    for (const auto& file : listFiles(classroom.tablets(), ".db"))
        if (file.stem().string().rfind("brought-", 0) != 0)
            done.tablets.push_back(file.stem().string());
    const auto off = changeClassFile(classroom, [&](pack::ClassList& now) {
        const auto is_her = [&](const pack::Child& child) { return child.id == id; };
        std::erase_if(now.children, is_her);
        std::erase_if(now.left, is_her);
        if (!now.isDeleted(id)) now.deleted.push_back(id);
    });
    if (!off.ok()) return off.problems();
    Work work{classroom, *who, done};
    clearFiles(work);
    writeReceipt(classroom, id, day, done);
    return done;
}

std::vector<Problem> clearHandedIn(const pack::Classroom& classroom,
                                   std::span<const std::string> deleted) {
    std::vector<Problem> problems;
    if (deleted.empty()) return problems;
    for (const fs::path& file : listFiles(classroom.tablets(), ".db")) {
        const auto left = practice::snapshotWithout(file, deleted);
        if (!left.ok() || left.value().answers + left.value().sessions == 0) continue;
        const auto written = writeWhole(file, left.value().bytes);
        problems.insert(problems.end(), written.problems().begin(), written.problems().end());
    }
    return problems;
}

}  // namespace wrenlet::desk
