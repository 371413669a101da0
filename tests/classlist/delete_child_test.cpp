// A child who is deleted for good is in no file of the classroom folder, comes back by no road, and
// costs nobody else anything.
#include "editor/classlist/delete_child.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>

#include "content/common/files.hpp"
#include "content/practice/store.hpp"
#include "editor/classlist/class_merge.hpp"
#include "editor/classlist/move_child.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/bring_in.hpp"
#include "editor/document/opened_class.hpp"
#include "editor/ear/ear_file.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace fs = std::filesystem;

namespace {

using practice::Response;
using practice::samples::fileBytes;
using practice::samples::Folder;
using practice::samples::writeBytes;

constexpr std::int64_t kToday = 20'785;  // 2026-11-28
const std::string kHer = "c-quill7";

/// Three children, of whom Quilla is to be deleted; two tablets that each child played on.
struct Room {
    Folder folder;
    pack::Classroom classroom{folder / "room"};

    Room() {
        pack::ClassList list;
        list.title = "Room 4";
        list.children = {{"c-maya11", "Maya", "badge-01", {}}, {kHer, "Quilla", "badge-02", {}}};
        list.left = {{"c-leo222", "Leo", "badge-03", {}}};
        fs::create_directories(classroom.tablets());
        fs::create_directories(classroom.papers());
        write(list);
        play("t-1", 12);
        play("t-2", 7);
    }

    void write(const pack::ClassList& list) const {
        REQUIRE(writeWhole(classroom.classFile(), pack::writeClassList(list)).ok());
    }
    pack::ClassList list() const { return pack::openClassList(classroom).value(); }
    fs::path own(const std::string& tablet) const { return folder / (tablet + "-own.db"); }

    /// Each child in turn answers `count` times on a tablet, which hands that in.
    void play(const std::string& tablet, int count) const {
        auto store = practice::Store::open(own(tablet), tablet);
        REQUIRE(store.ok());
        for (const char* child : {"c-maya11", kHer.c_str(), "c-leo222"}) {
            const auto session = store.value().beginSession(child, "pond 1", 7, 20'000);
            REQUIRE(session.ok());
            for (int i = 0; i < count; ++i) {
                Response response = practice::samples::response();
                response.child = child;
                response.session = session.value().id;
                REQUIRE(store.value().append(response, i).ok());
            }
        }
        REQUIRE(store.value().snapshot(classroom.snapshot(tablet)).ok());
    }

    std::vector<Response> gathered() const {
        return practice::gather(classroom.tablets()).responses;
    }

    /// Files of the folder in whose bytes `text` stands, but for the two that may hold an id.
    std::vector<std::string> filesWith(std::string_view text) const {
        std::vector<std::string> found;
        for (const auto& entry : fs::recursive_directory_iterator(classroom.folder)) {
            if (!entry.is_regular_file() || entry.path() == classroom.classFile() ||
                entry.path().parent_path().filename() == "receipts")
                continue;
            if (fileBytes(entry.path()).find(text) != std::string::npos)
                found.push_back(entry.path().filename().string());
        }
        std::sort(found.begin(), found.end());
        return found;
    }
};

std::vector<Response> withoutHer(std::vector<Response> all) {
    std::erase_if(all, [](const Response& response) { return response.child == kHer; });
    return all;
}

}  // namespace

TEST_CASE("Deleted: no byte of the child is left in the folder, and no answer of another is lost") {
    const Room room;
    fs::copy_file(room.classroom.classFile(), room.classroom.folder / "class-as-found.json");
    fs::copy_file(room.classroom.snapshot("t-1"), room.classroom.tablets() / "brought-0f.db");
    writeBytes(room.classroom.folder / "tomorrow.json",
               R"({"tables": [{"children": ["c-maya11", "c-quill7"], "about": "t last"},)"
               R"( {"children": ["c-leo222"], "listen": [{"child": "c-quill7", "to": "cat"}]}],)"
               R"( "asked": {"c-quill7": 3, "c-maya11": 4}})");
    writeBytes(room.classroom.papers() / "family.html", "<h1>Quilla this month</h1>");
    writeBytes(room.classroom.papers() / "lesson.html",
               "<p>Listen to Maya. Quillas are plants.</p>");
    writeBytes(room.classroom.tablets() / "t-9.db", "SQLite format 3, half a file of c-quill7");
    REQUIRE(room.filesWith(kHer).size() == 6);
    const auto before = withoutHer(room.gathered());

    const auto done = deleteChild(room.classroom, kHer, kToday);
    REQUIRE(done.ok());
    CHECK(done.value().problems.empty());
    CHECK(done.value().answers == 19);
    CHECK(room.filesWith(kHer) == std::vector<std::string>{});
    CHECK(room.filesWith("Quilla") == std::vector<std::string>{"lesson.html"});
    CHECK(fileBytes(room.classroom.classFile()).find("Quilla") == std::string::npos);
    CHECK(room.gathered() == before);
    CHECK(room.list().children.size() == 1);
    CHECK(room.list().left.size() == 1);
    CHECK(room.list().deleted == std::vector{kHer});
    const std::string plan = fileBytes(room.classroom.folder / "tomorrow.json");
    for (const char* other : {"c-maya11", "c-leo222", "t last", "\"asked\""})
        CHECK_MESSAGE(plan.find(other) != std::string::npos, other);
}

TEST_CASE("Deleted: the receipt says what went and what is still to do, and has no name") {
    const Room room;
    const auto done = deleteChild(room.classroom, kHer, kToday);
    REQUIRE(done.ok());
    CHECK(done.value().receipt.filename() == "deleted-2026-11-28-c-quill7.txt");
    const std::string receipt = fileBytes(done.value().receipt);
    CHECK(receipt.find("Quilla") == std::string::npos);
    for (const char* said : {"Answers removed: 19", "tablets/t-1.db", "12 answers removed",
                             "tablet t-2", "backups", "printed", "local rules"})
        CHECK_MESSAGE(receipt.find(said) != std::string::npos, said);
    const auto again = deleteChild(room.classroom, kHer, kToday);
    REQUIRE(again.ok());
    CHECK(again.value().answers == 0);
    CHECK(again.value().files.empty());
    CHECK(again.value().receipt != done.value().receipt);
    CHECK(fileBytes(done.value().receipt) == receipt);
}

TEST_CASE("Deleted: what an old tablet or stick still brings stays out, and is cleared again") {
    const Room room;
    const fs::path stick = room.folder / "stick.db";
    fs::copy_file(room.classroom.snapshot("t-1"), stick);
    REQUIRE(deleteChild(room.classroom, kHer, kToday).ok());
    const auto kept = room.gathered();

    room.play("t-2", 2);  // this tablet has not read the list since
    CHECK(room.filesWith(kHer) == std::vector<std::string>{"t-2.db"});
    const OpenedClass opened = openClass(room.classroom.folder, 0);
    CHECK(std::none_of(opened.responses.begin(), opened.responses.end(),
                       [](const Response& response) { return response.child == kHer; }));
    CHECK(opened.responses.size() == kept.size() + 4);
    CHECK(clearHandedIn(room.classroom, room.list().deleted).empty());
    CHECK(room.filesWith(kHer).empty());
    CHECK(room.gathered() == opened.responses);

    const BroughtIn brought = bringIn(std::span(&stick, 1), room.classroom, room.list().deleted);
    CHECK(brought.answers == 0);
    fs::remove(room.classroom.snapshot("t-1"));
    CHECK(bringIn(std::span(&stick, 1), room.classroom, room.list().deleted).answers == 24);
    CHECK(room.filesWith(kHer).empty());
}

TEST_CASE("Deleted: a tablet that reads the list forgets the child, in every byte of its store") {
    const Room room;
    auto store = practice::Store::open(room.own("t-1"), "t-1");
    REQUIRE(store.ok());
    const auto before = withoutHer(store.value().all());
    const auto gone = store.value().forget(std::span(&kHer, 1));
    REQUIRE(gone.ok());
    CHECK(gone.value() == 12);
    CHECK(store.value().all() == before);
    CHECK(store.value().forget(std::span(&kHer, 1)).value() == 0);
    for (const auto& entry : fs::directory_iterator(room.folder.path()))
        if (entry.path().filename().string().rfind("t-1-own", 0) == 0)
            CHECK_MESSAGE(fileBytes(entry.path()).find(kHer) == std::string::npos,
                          entry.path().filename().string());
    const auto session = store.value().beginSession("c-maya11", "pond 1", 7, 20'001);
    Response response = practice::samples::response();
    response.child = "c-maya11";
    response.session = session.value().id;
    const auto next = store.value().append(response, 1);
    REQUIRE(next.ok());
    CHECK(next.value().sequence == 37);  // numbers of forgotten answers are not given out again
}

TEST_CASE("Deleted: another desk that still has the child on its list does not bring her back") {
    const Room room;
    const pack::ClassList base = room.list();
    REQUIRE(deleteChild(room.classroom, kHer, kToday).ok());
    pack::ClassList mine = base;
    mine.children[1].name = "Quilla R";  // she worked on her meanwhile
    for (const pack::ClassList& merged :
         {mergeClassLists(base, mine, room.list()), mergeClassLists(base, room.list(), mine)}) {
        CHECK(merged.child(kHer) == nullptr);
        CHECK(merged.deleted == std::vector{kHer});
        CHECK(merged.children.size() == 1);
    }
    room.write(mine);  // an older program that does not know of deleting
    pack::ClassList both = mine;
    both.deleted = {kHer};
    room.write(both);
    CHECK(room.list().child(kHer) == nullptr);
}

TEST_CASE("Deleted: a file that may not be changed is named, in the receipt too") {
    const Room room;
    const fs::path notes = room.classroom.folder / "notes.txt";
    writeBytes(notes, "c-quill7 is the one with the red cap");
    const auto done = deleteChild(room.classroom, kHer, kToday);
    REQUIRE(done.ok());
    REQUIRE(done.value().problems.size() == 1);
    CHECK(done.value().problems.front().where == "notes.txt");
    CHECK(fs::exists(notes));
    CHECK(fileBytes(done.value().receipt).find("notes.txt") != std::string::npos);
}

TEST_CASE(
    "Moved: a child keeps all answers and marks in another class, and this one keeps them too") {
    const Room room, other;
    pack::ClassList there = other.list();
    there.children = {{"c-else99", "Elsa", "badge-02", {}}};
    there.left.clear();
    other.write(there);
    for (const auto& file : listFiles(other.classroom.tablets(), ".db")) fs::remove(file);
    const practice::Heard mark{kHer,           20'000,
                               "phoneme.last", {"t", exercise::Position::last},
                               "cat",          practice::HeardAs::almost,
                               false};
    REQUIRE(changeEar(room.classroom, std::span(&mark, 1)).ok());
    std::vector<Response> hers = room.gathered();
    const auto before = hers;
    std::erase_if(hers, [](const Response& response) { return response.child != kHer; });

    const auto moved = moveChild(room.classroom, kHer, other.classroom);
    REQUIRE(moved.ok());
    CHECK(moved.value().answers == 19);
    CHECK(moved.value().marks == 1);
    CHECK(other.gathered() == hers);
    CHECK(other.filesWith("c-maya11").empty());  // nobody else's went along
    CHECK(openEar(other.classroom).value() == std::vector{mark});
    REQUIRE(other.list().child(kHer) != nullptr);
    CHECK(other.list().child(kHer)->badge == moved.value().badge);
    CHECK(moved.value().badge != "badge-02");  // Elsa has that
    CHECK(room.gathered() == before);
    CHECK(room.list().child(kHer) == nullptr);
    CHECK(room.list().left.size() == 2);

    const auto again = moveChild(room.classroom, kHer, other.classroom);
    REQUIRE(again.ok());
    CHECK(again.value().answers == 0);
    CHECK(again.value().marks == 0);
    CHECK(other.gathered() == hers);
    CHECK(other.list().children.size() == 2);
    CHECK_FALSE(moveChild(room.classroom, "c-none", other.classroom).ok());
    REQUIRE(deleteChild(other.classroom, kHer, kToday).ok());
    CHECK_FALSE(moveChild(room.classroom, kHer, other.classroom).ok());
}

TEST_CASE("Deleted: by the command a name that two have is asked back, and nobody is nobody") {
    const Room room;
    pack::ClassList list = room.list();
    list.left[0].name = "Quilla";
    room.write(list);
    const auto run = [&](const std::vector<std::string>& words) {
        std::ostringstream out, err;
        const int code = deleteCommand(words, {out, err, {}, kToday});
        return std::to_string(code) + " " + out.str() + err.str();
    };
    const std::string folder = room.classroom.folder.string();
    const std::string asked = run({folder, "--child", "Quilla"});
    CHECK(asked.find("1 Several children") == 0);
    CHECK(asked.find(kHer) != std::string::npos);
    CHECK(room.list() == list);
    CHECK(run({folder, "--child", "Nobody"}).find("1 No child") == 0);
    CHECK(run({folder}).find("2 ") == 0);
    CHECK(deleteChild(room.classroom, "c-none", kToday).ok() == false);
    CHECK(room.list() == list);
    const std::string done = run({folder, "--child", kHer, "--json"});
    CHECK(done.find("0 {") == 0);
    CHECK(done.find("\"answers\": 19") != std::string::npos);
    CHECK(room.list().left.size() == 1);
}

}  // namespace wrenlet::desk
