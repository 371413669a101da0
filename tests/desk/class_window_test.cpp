// A teacher keeps her class list, by real keys and presses.
#include <doctest/doctest.h>

#include <set>

#include "content/common/files.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

struct Room {
    practice::samples::Folder folder;
    Seat seat;

    explicit Room(bool has_list = true)
        : seat(classIn(folder.path(), has_list), 1280, 720, &library().bench) {
        seat.alt(Key::five);
        if (has_list) seat.click("page:List");
    }
    static OpenedClass classIn(const std::filesystem::path& path, bool has_list) {
        OpenedClass opened;
        if (has_list) {
            opened = demo::demoClass();
            REQUIRE(writeWhole(path / "class.json", pack::writeClassList(opened.list)).ok());
        }
        opened.classroom.folder = path;
        return opened;
    }
    const pack::ClassList& list() { return seat.window().classList()->list(); }
    std::string idOf(const std::string& name) {
        for (const pack::Child& child : list().children)
            if (child.name == name) return child.id;
        return "";
    }
    const pack::Child& child(const std::string& name) {
        const pack::Child* found = list().child(idOf(name));
        REQUIRE_MESSAGE(found != nullptr, name);
        return *found;
    }
    void add(const std::string& names) {
        seat.click("names box");
        seat.paste(names);
        seat.key(Key::enter);
        seat.frame();
    }
    pack::ClassList saved() {
        seat.wait(2000);
        seat.wait(1);
        const auto read = pack::openClassList({folder.path()});
        REQUIRE(read.ok());
        return read.value();
    }
};

}  // namespace

TEST_CASE("A folder without a class gets one as soon as names are typed") {
    Room room(false);
    REQUIRE(room.seat.shows("names box"));
    room.seat.ctrl(Key::enter);  // the next step is to type
    room.seat.type("Maya, Leo");
    room.seat.key(Key::enter);
    CHECK(room.list().children.size() == 2);
    CHECK(room.saved().children.size() == 2);
    CHECK(room.saved().children[0].badge == "badge-01");
    CHECK(room.saved().children[1].badge == "badge-02");
}

TEST_CASE("Children are pasted by line and in columns, and all of it can be taken back") {
    Room room;
    const std::size_t before = room.list().children.size();
    room.add("Ottilie\nWim");
    CHECK(room.list().children.size() == before + 2);
    room.add("Vale\tRuna\nField\tBirk");
    REQUIRE(room.idOf("Vale") != "");
    REQUIRE(room.seat.shows("names offer"));
    room.seat.click("names offer");  // the other column holds the given names
    CHECK(room.idOf("Vale").empty());
    CHECK(room.idOf("Runa") != "");
    CHECK(room.list().children.size() == before + 4);
    std::set<std::string> badges;
    for (const pack::Child& child : room.list().children) CHECK(badges.insert(child.badge).second);
    room.seat.ctrl(Key::z);
    CHECK(room.list().children.size() == before + 2);
    room.seat.ctrl(Key::z);
    CHECK(room.list().children.size() == before);
    room.seat.ctrl(Key::y);
    CHECK(room.saved().children.size() == before + 2);
}

TEST_CASE("Surnames that were pasted go with one press") {
    Room room;
    room.add("Runa Vale\nBirk Field\nWim Marsh");
    REQUIRE(room.seat.shows("names offer"));
    room.seat.click("names offer");
    CHECK(room.idOf("Runa") != "");
    CHECK(room.idOf("Birk") != "");
    CHECK(pack::writeClassList(room.saved()).find("Marsh") == std::string::npos);
}

TEST_CASE("A school's list is dropped, its class chosen, and a broken line told by its number") {
    Room room;
    const auto put = [&](const char* name, const std::string& text) {
        REQUIRE(writeWhole(room.folder / name, text).ok());
    };
    put("users.csv",
        "sourcedId,status,role,givenName,familyName\ns1,,student,Runa,Vale\ns2,,student,\"Birk,x\n"
        "s3,,student,Wim,Marsh\nt1,,teacher,Ada,Hill\n");
    put("classes.csv", "sourcedId,title\nk1,Hill\nk2,Marsh\n");
    put("enrollments.csv",
        "sourcedId,classSourcedId,userSourcedId,role\ne1,k1,s1,student\ne2,k2,s3,student\n");
    const std::size_t before = room.list().children.size();
    room.seat.window().drop(room.folder / "users.csv");
    room.seat.frame();
    REQUIRE(room.seat.shows("roster:1"));
    CHECK(room.seat.shows("names not taken: close"));
    CHECK(room.seat.window().classPlace().not_taken.at(0).where == "users.csv, line 3");
    room.seat.click("roster:1");
    CHECK(room.list().children.size() == before + 1);
    CHECK(room.child("Wim").roster == "s3");
    CHECK(room.idOf("Ada").empty());
    // by the keyboard alone the file's path does the same
    room.seat.click("names box");
    room.seat.type((room.folder / "users.csv").string());
    room.seat.key(Key::enter);
    room.seat.frame();
    REQUIRE(room.seat.shows("roster:0"));
    room.seat.click("roster:0");
    CHECK(room.idOf("Runa") != "");
    room.seat.ctrl(Key::z);
    CHECK(room.idOf("Runa").empty());
}

TEST_CASE(
    "Badge, key, shields and name of a child are changed in the pane, each one step of undo") {
    Room room;
    const std::string maya = room.idOf("Maya");
    room.seat.window().classPlace().take(maya, *room.seat.window().classList());
    room.seat.frame();
    const std::string badge = room.child("Maya").badge;
    room.seat.click("badge:badge-33");
    CHECK(room.child("Maya").badge == "badge-33");
    room.seat.click("badge:" + room.child("Leo").badge);  // they change
    CHECK(room.child("Leo").badge == "badge-33");
    room.seat.click("key:sock");
    room.seat.click("key:tree");
    CHECK(room.child("Maya").key == std::vector<std::string>{"sock", "tree"});
    room.seat.click("give key");
    CHECK(room.child("Maya").key.size() == 2);
    room.seat.click("no key");
    CHECK(room.child("Maya").key.empty());
    const std::size_t shields = room.child("Maya").shields.size();
    room.seat.click("shield:cot-caught");
    CHECK(room.child("Maya").shields.size() == shields + 1);
    room.seat.click("shields:Spanish at home");
    CHECK(room.child("Maya").shields.size() >= 8);
    room.seat.click("child name");
    room.seat.ctrl(Key::a);
    room.seat.type("Maja");
    room.seat.key(Key::enter);
    CHECK(room.child("Maja").id == maya);
    CHECK(room.saved().child(maya)->name == "Maja");
    int undone = 0;
    for (; room.seat.shows("undo"); ++undone) room.seat.click("undo");
    CHECK(undone == 8);
    CHECK(room.child("Maya").badge == badge);
    CHECK(room.child("Maya").shields.size() == shields);
    CHECK(room.list() == demo::classList());
}

TEST_CASE("A child leaves the class and comes back, with all answers") {
    Room room;
    const std::string maya = room.idOf("Maya");
    room.seat.window().classPlace().take(maya, *room.seat.window().classList());
    room.seat.frame();
    room.seat.click("leave class");
    CHECK(room.idOf("Maya").empty());
    CHECK(room.saved().left.size() == 1);
    // neither tablets nor the map show the child, and the answers are where they were
    room.seat.click("page:Map");
    room.seat.frame();
    for (const auto& child : room.seat.desk().opened().children) CHECK(child.child.id != maya);
    CHECK(room.seat.desk().opened().responses.size() == demo::demoClass().responses.size());
    room.seat.click("page:List");
    room.seat.window().classPlace().take(maya, *room.seat.window().classList());
    room.seat.frame();
    room.seat.click("leave class");
    CHECK(room.child("Maya").id == maya);
    room.seat.click("page:Map");
    room.seat.frame();
    CHECK(room.seat.desk().opened().children.size() == demo::classList().children.size());
}

TEST_CASE("One who has left is deleted for good only when the whole name is typed") {
    Room room;
    const std::string maya = room.idOf("Maya");
    room.seat.window().classPlace().take(maya, *room.seat.window().classList());
    room.seat.frame();
    CHECK_FALSE(room.seat.shows("name to delete"));  // in the class there is no such way
    room.seat.click("leave class");
    room.saved();
    room.seat.click("name to delete");
    room.seat.type("May");
    CHECK_FALSE(room.seat.shows("delete child"));
    room.seat.type("a");
    room.seat.click("delete child");
    const auto list = pack::openClassList({room.folder.path()});
    REQUIRE(list.ok());
    CHECK(list.value().left.empty());
    CHECK(list.value().deleted == std::vector{maya});
    std::size_t receipts = 0;
    for (const auto& file : listFiles(room.folder / "receipts", ".txt")) {
        CHECK(file.filename().string().find(maya) != std::string::npos);
        ++receipts;
    }
    CHECK(receipts == 1);
    CHECK(room.seat.window().classPlace().deleted_told.find("Maya is deleted") == 0);
}

TEST_CASE("Arrows walk the children, and the list is reached and left by the keyboard") {
    Room room;
    room.seat.key(Key::down);
    CHECK(room.seat.window().classPlace().in_hand == room.list().children[0].id);
    room.seat.key(Key::down);
    CHECK(room.seat.window().classPlace().in_hand == room.list().children[1].id);
    room.seat.key(Key::end);
    CHECK(room.seat.window().classPlace().in_hand == room.list().children.back().id);
    room.seat.ctrl(Key::enter);
    CHECK(room.seat.desk().page() == Page::map);
}

TEST_CASE("A list of the class that cannot be read is left alone") {
    practice::samples::Folder folder;
    practice::samples::writeBytes(folder / "class.json", "{ broken");
    OpenedClass opened = demo::unreadableList();
    opened.classroom.folder = folder.path();
    Seat seat(opened, 1280, 720, &library().bench);
    CHECK(seat.window().classList() == nullptr);
    CHECK_FALSE(seat.shows("names box"));
    CHECK(practice::samples::fileBytes(folder / "class.json") == "{ broken");
}

}  // namespace wrenlet::desk
