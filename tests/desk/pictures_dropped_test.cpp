// Pictures of her own and others of the set, put onto words with real presses and drops.
#include <doctest/doctest.h>

#include <fstream>

#include "content/common/files.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

const char* const kSvg =
    "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><path d=\"M0 0h9v9z\"/></svg>";

std::optional<Rgba> white(std::string_view, int side) {
    return Rgba{side, side, std::vector<unsigned char>(std::size_t(side * side * 4), 255)};
}

struct Room {
    practice::samples::Folder folder;
    Workbench bench = drawing();
    Seat seat;

    Room() : seat(roomIn(folder.path()), 1280, 720, &bench) {
        seat.window().makeUnit("On the farm");
        seat.window().words().typed = "duck\nhen\ncow\n";
        seat.window().words().add(*seat.window().unit());
        hold("hen");
        seat.frame();
    }
    static Workbench drawing() {
        Workbench bench = library().bench;
        bench.draw_svg = white;
        return bench;
    }
    static OpenedClass roomIn(const std::filesystem::path& folder) {
        OpenedClass opened;
        opened.classroom.folder = folder;
        opened.listed = true;
        return opened;
    }
    void hold(const std::string& word) { seat.window().words().in_hand = {word, false}; }
    std::string pictureOf(const std::string& word) {
        return seat.window().unit()->work().word(word)->picture;
    }
    void drop(const std::string& name, const std::string& bytes) {
        std::ofstream(folder / name, std::ios::binary) << bytes;
        seat.window().drop(folder / name);
        seat.frame();
    }
};

}  // namespace

TEST_CASE("A picture dropped on the window becomes that of the word in hand, and can be undone") {
    Room room;
    const std::string before = room.pictureOf("hen");
    room.drop("Picture of our hen.svg", kSvg);
    CHECK(room.pictureOf("hen") == "own-hen-1");
    const auto file = room.seat.window().unit()->folder().pictures() / "own-hen-1.png";
    CHECK(std::filesystem::exists(file));
    room.drop("Picture of our hen.svg", kSvg);
    CHECK(room.pictureOf("hen") == "own-hen-2");
    room.seat.window().unit()->change([](UnitAtWork& work) { work.undo(); });
    CHECK(room.pictureOf("hen") == "own-hen-1");
    room.seat.window().unit()->change([](UnitAtWork& work) { work.undo(); });
    CHECK(room.pictureOf("hen") == before);
    CHECK(std::filesystem::exists(file));
}

TEST_CASE("A picture with a word's name goes to that word") {
    Room room;
    room.drop("Cow.SVG", kSvg);
    CHECK(room.pictureOf("cow") == "own-cow-1");
    CHECK(room.pictureOf("hen") == "hen");
}

TEST_CASE("A picture that cannot be taken says why, and the word keeps the one it has") {
    Room room;
    for (const char* name : {"hen.heic", "hen.png", "hen.svg"}) {
        room.drop(name, "neither one nor the other");
        REQUIRE(room.seat.window().words().not_taken.size() == 1);
        CHECK(room.seat.window().words().not_taken.front().where == name);
        CHECK_FALSE(room.seat.window().words().not_taken.front().way_out.empty());
        CHECK(room.seat.shows("not taken: close"));
        room.seat.click("not taken: close");
        room.seat.frame();
    }
    CHECK(room.pictureOf("hen") == "hen");
}

TEST_CASE("Another picture of the set is found by its name and pressed") {
    Room room;
    room.seat.click("picture");
    room.seat.frame();
    REQUIRE(room.seat.window().words().isChoosingPicture());
    room.seat.window().words().choosing->sought = "chick";
    for (int i = 0; i < 10; ++i) room.seat.frame();
    REQUIRE(room.seat.shows("picture:chick"));
    room.seat.click("picture:chick");
    room.seat.frame();
    CHECK(room.pictureOf("hen") == "chick");
    CHECK_FALSE(room.seat.window().words().isChoosingPicture());
    room.seat.click("picture");
    room.seat.frame();
    room.seat.click("no picture");
    room.seat.frame();
    CHECK(room.pictureOf("hen").empty());
}

}  // namespace wrenlet::desk
