#include "game/start/opening.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/pack/pack_file.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using game::openClassroom;
using practice::samples::Folder;
using practice::samples::writeBytes;

namespace {

/// A tablet and a classroom side by side, with a pack that has a title and nothing in it.
struct Room {
    Folder folder;
    pack::Classroom classroom{folder / "classroom"};
    game::TabletFolder tablet{folder / "tablet"};

    Room() {
        std::filesystem::create_directories(classroom.packs());
        std::filesystem::create_directories(tablet.folder);
        handOut("first", "one.zip");
    }

    void handOut(const std::string& title, const std::string& file) {
        pack::Pack pack;
        pack.unit_id = "by-the-pond";
        pack.title = title;
        writeBytes(classroom.packFile(file), pack::writePack(pack).value());
        name(file);
    }

    void name(const std::string& file) {
        pack::ClassList list;
        list.title = "Room 4";
        list.pack = file;
        list.children = {{"c-01", "Ola", "badge-01", {}}};
        writeBytes(classroom.classFile(), pack::writeClassList(list));
    }

    Result<game::Opened> open() { return openClassroom(classroom, tablet, 0xABCD1234'00000000ull); }
};

std::string said(const std::vector<Problem>& problems) {
    std::string all;
    for (const Problem& problem : problems) all += sentence(problem) + "\n";
    return all;
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE("Start: a good classroom opens without a word, and the tablet has a name") {
    Room room;
    auto opened = room.open();
    REQUIRE_MESSAGE(opened.ok(), said(opened.problems()));
    CHECK(said(opened.value().problems) == "");
    CHECK(opened.value().pack.title == "first");
    CHECK(opened.value().list.children.size() == 1);
    CHECK(opened.value().store.tablet() == "t-abcd1234");
    CHECK(opened.value().snapshot == room.classroom.tablets() / "t-abcd1234.db");
}

TEST_CASE("Start: a bad pack is refused by name and the last good one is played") {
    Room room;
    REQUIRE(room.open().ok());
    writeBytes(room.classroom.packFile("two.zip"), "this is no zip");
    room.name("two.zip");
    {
        const auto opened = room.open();
        REQUIRE(opened.ok());
        CHECK(opened.value().pack.title == "first");
        CHECK(contains(said(opened.value().problems), "two.zip"));
        CHECK(contains(said(opened.value().problems), "last good pack"));
    }
    room.handOut("third", "three.zip");
    const auto opened = room.open();
    REQUIRE(opened.ok());
    CHECK(opened.value().pack.title == "third");
    CHECK(said(opened.value().problems) == "");
}

TEST_CASE("Start: with the classroom folder gone the tablet plays on with what it kept") {
    Room room;
    REQUIRE(room.open().ok());
    std::filesystem::remove_all(room.classroom.folder);
    const auto opened = room.open();
    REQUIRE(opened.ok());
    CHECK(opened.value().pack.title == "first");
    CHECK(opened.value().list.title == "Room 4");
    CHECK(contains(said(opened.value().problems), "class.json"));
}

TEST_CASE("Start: nothing good anywhere is an error that names the file") {
    Room room;
    writeBytes(room.classroom.packFile("one.zip"), "this is no zip");
    const auto opened = room.open();
    CHECK_FALSE(opened.ok());
    CHECK(contains(said(opened.problems()), "one.zip"));
}

TEST_CASE("Start: a broken class list is named with its place, and the kept one is used") {
    Room room;
    REQUIRE(room.open().ok());
    writeBytes(room.classroom.classFile(), "{\n \"title\": ,\n}");
    const auto opened = room.open();
    REQUIRE(opened.ok());
    CHECK(opened.value().list.title == "Room 4");
    CHECK(contains(said(opened.value().problems), "line 2"));
}

TEST_CASE("Start: the badges are there before the pack is read") {
    Room room;
    writeBytes(room.classroom.packFile("one.zip"), "this is no zip");
    const auto list = game::openList(room.classroom, room.tablet);
    REQUIRE(list.ok());
    CHECK(list.value().list.children.size() == 1);
    CHECK_FALSE(game::openRest(list.value(), room.classroom, room.tablet, 1).ok());
}

TEST_CASE("Start: a kept pack that rotted on the tablet is not played") {
    Room room;
    REQUIRE(room.open().ok());
    std::string kept = practice::samples::fileBytes(room.tablet.keptPack());
    kept[kept.size() / 2] = static_cast<char>(kept[kept.size() / 2] ^ 0x55);
    writeBytes(room.tablet.keptPack(), kept);
    {
        const auto opened = room.open();
        REQUIRE(opened.ok());
        CHECK(said(opened.value().problems) == "");
        CHECK(practice::samples::fileBytes(room.tablet.keptPack()) ==
              practice::samples::fileBytes(room.classroom.packFile("one.zip")));
    }
    writeBytes(room.tablet.keptPack(), kept);
    writeBytes(room.classroom.packFile("one.zip"), "this is no zip");
    CHECK_FALSE(room.open().ok());
}

TEST_CASE("Start: a tablet forgets children whom the list says are deleted") {
    Room room;
    const auto answer = [&](game::Opened& opened, const char* child) {
        const auto session = opened.store.beginSession(child, "first 1", 7, 20'000);
        REQUIRE(session.ok());
        practice::Response response = practice::samples::response();
        response.child = child;
        response.session = session.value().id;
        REQUIRE(opened.store.append(response, 1).ok());
    };
    {
        auto opened = room.open();
        REQUIRE(opened.ok());
        answer(opened.value(), "c-01");
        answer(opened.value(), "c-02");
    }
    auto list = pack::openClassList(room.classroom).value();
    list.deleted = {"c-01"};
    writeBytes(room.classroom.classFile(), pack::writeClassList(list));
    auto opened = room.open();
    REQUIRE_MESSAGE(opened.ok(), said(opened.problems()));
    CHECK(said(opened.value().problems) == "");
    REQUIRE(opened.value().store.all().size() == 1);
    CHECK(opened.value().store.all().front().child == "c-02");
    CHECK(opened.value().list.children.empty());
}
