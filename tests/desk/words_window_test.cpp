// A teacher makes a unit's words ready, by real keys and presses.
#include <doctest/doctest.h>

#include "content/common/files.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

/// At a desk with an invented class in a folder that is there.
struct Room {
    practice::samples::Folder folder;
    Seat seat;

    Room() : seat(classIn(folder.path()), 1280, 720, &library().bench) {}

    static OpenedClass classIn(const std::filesystem::path& path) {
        OpenedClass opened = demo::demoClass();
        opened.classroom.folder = path;
        return opened;
    }
    void makeUnit(const std::string& title) {
        seat.alt(Key::one);
        seat.click("unit title");
        seat.type(title);
        seat.key(Key::enter);
        REQUIRE(seat.window().unit() != nullptr);
    }
    OpenUnit& unit() { return *seat.window().unit(); }
    std::string inHand() { return seat.window().words().in_hand.id; }
    std::filesystem::path file() { return unit().folder().file(); }
};

}  // namespace

TEST_CASE("A unit is begun, words are typed and pasted, and all of it is on disk soon") {
    Room room;
    room.makeUnit("On the farm");
    CHECK(room.unit().unit().title == "On the farm");
    room.seat.click("words box");
    room.seat.type("pig, hen");
    room.seat.key(Key::enter);
    CHECK(room.unit().unit().words.size() == 2);
    // the cursor stays in the box, so that she goes on typing
    room.seat.paste("goat\nduck\r\nThe hen sat in the hay.\nIs the pig wet?");
    room.seat.key(Key::enter);
    CHECK(room.unit().unit().words.size() == 4);
    CHECK(room.unit().unit().sentences.size() == 2);
    CHECK(room.seat.window().words().typed.empty());
    room.seat.wait(2000);
    room.seat.wait(1);
    CHECK(room.unit().isSaved());
    const auto bytes = readWhole(room.file(), 1 << 20);
    REQUIRE(bytes.ok());
    const auto read = pack::readUnit(bytes.value(), "unit.json");
    REQUIRE(read.ok());
    REQUIRE(read.value().words.size() == 4);
    CHECK(read.value().words[2].picture == "goat");
}

TEST_CASE("Ctrl Z takes back what was done, also when the cursor is in the empty box") {
    Room room;
    room.makeUnit("On the farm");
    room.seat.click("words box");
    room.seat.type("pig hen");
    room.seat.key(Key::enter);
    REQUIRE(room.unit().unit().words.size() == 2);
    room.seat.ctrl(Key::z);
    CHECK(room.unit().unit().words.empty());
    room.seat.ctrl(Key::y);
    CHECK(room.unit().unit().words.size() == 2);
    room.seat.click("undo");
    CHECK(room.unit().unit().words.empty());
    room.seat.click("redo");
    CHECK(room.unit().unit().words.size() == 2);
}

TEST_CASE("The next step walks through the words to look at, and each way out is one press") {
    Room room;
    room.makeUnit("On the farm");
    room.seat.click("words box");
    room.seat.type("pig, frohg, mouse, rat, bow, cat");
    room.seat.key(Key::enter);
    room.seat.frame();
    REQUIRE(room.unit().look().to_look_at == 3);
    CHECK(room.inHand() == "pig");
    room.seat.ctrl(Key::enter);
    CHECK(room.inHand() == "frohg");
    room.seat.click("way:unknown:0");  // change it to frog
    CHECK(room.inHand() == "frog");
    room.seat.ctrl(Key::enter);
    CHECK(room.inHand() == "rat");
    room.seat.click("way:looks-alike:0");
    room.seat.ctrl(Key::enter);
    CHECK(room.inHand() == "bow");
    room.seat.click("way:several-senses:0");
    room.seat.frame();
    CHECK(room.unit().look().to_look_at == 0);
    CHECK(room.seat.shows("word:frog"));
}

TEST_CASE("What did not go in is told, and costs nothing of the rest") {
    Room room;
    room.makeUnit("On the farm");
    room.seat.click("words box");
    room.seat.type("pig, h3n, goat");
    room.seat.key(Key::enter);
    CHECK(room.unit().unit().words.size() == 2);
    REQUIRE(room.seat.shows("not taken: close"));
    room.seat.click("not taken: close");
    CHECK_FALSE(room.seat.shows("not taken: close"));
}

TEST_CASE("Arrows walk the words, Space says one, Delete takes one out") {
    Room room;
    room.makeUnit("On the farm");
    room.seat.click("words box");
    room.seat.type("pig hen goat");
    room.seat.key(Key::enter);
    room.seat.click("word:pig");
    room.seat.key(Key::down);
    CHECK(room.inHand() == "hen");
    room.seat.key(Key::space);
    REQUIRE(room.seat.heard().size() == 1);
    CHECK(room.seat.heard().front().id == "word:hen");
    room.seat.key(Key::erase);
    CHECK(room.unit().unit().words.size() == 2);
    CHECK(room.inHand() == "goat");
    // while she types, letters, arrows and Delete are the box's
    room.seat.click("words box");
    room.seat.type("x");
    room.seat.key(Key::erase);
    room.seat.key(Key::up);
    CHECK(room.unit().unit().words.size() == 2);
    CHECK(room.inHand() == "goat");
}

TEST_CASE("A list dropped on the window goes into the open unit") {
    Room room;
    room.makeUnit("On the farm");
    const auto file = room.folder / "words.csv";
    REQUIRE(writeWhole(file, "\"pig\",\"hen\"\r\n\"goat\"\r\n").ok());
    room.seat.window().drop(file);
    CHECK(room.unit().unit().words.size() == 3);
    room.seat.window().drop(room.folder / "gone.txt");
    room.seat.frame();
    CHECK(room.seat.shows("not taken: close"));
    CHECK(room.unit().unit().words.size() == 3);
}

TEST_CASE("Units of a classroom are found again, and one that is open elsewhere is only shown") {
    Room room;
    room.makeUnit("On the farm");
    room.seat.click("words box");
    room.seat.type("pig");
    room.seat.key(Key::enter);
    const UnitFolder folder = room.unit().folder();
    room.seat.click("unit chooser");
    CHECK(room.seat.window().unit() == nullptr);
    const auto other = UnitInUse::take(folder, "since 9:15");
    REQUIRE(other.ok());
    room.seat.click("unit:on-the-farm");
    REQUIRE(room.seat.window().unit() != nullptr);
    CHECK(room.unit().unit().words.size() == 1);
    CHECK_FALSE(room.unit().canChange());
    CHECK_FALSE(room.seat.shows("words box"));
    room.seat.click("word:pig");
    room.seat.key(Key::erase);
    CHECK(room.unit().unit().words.size() == 1);
}

}  // namespace wrenlet::desk
