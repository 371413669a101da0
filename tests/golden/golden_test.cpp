// Every state of each mechanic looks as it did, to the pixel, at three sizes.
#include <doctest/doctest.h>

#include "tests/fixtures/visit.hpp"
#include "tests/golden/gallery.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using fixtures::Room;
using fixtures::Visit;
using golden::Gallery;
using practice::samples::Folder;

namespace {

constexpr game::ScreenSize kSizes[] = {{1280, 800, 0}, {1024, 600, 0}, {800, 1280, 0}};

/// Compares pictures of one size; at its end the table is written, if it is to be.
class Wall {
  public:
    Wall(Gallery& gallery, game::ScreenSize size, std::string of)
        : gallery_(gallery),
          name_(std::to_string(size.w) + "x" + std::to_string(size.h) + " " + std::move(of) + " ") {
    }

    void hang(Visit& visit, const std::string& state) {
        const std::string wrong = gallery_.compare(visit.table(), visit.frame(), name_ + state);
        if (!wrong.empty()) FAIL_CHECK(wrong);
        CHECK(visit.table().baker().missing().empty());
    }

  private:
    Gallery& gallery_;
    std::string name_;
};

/// True when the pictures can be held against the table: what it was made with is here.
bool isPinned(const Gallery& gallery, const std::map<std::string, std::string>& pins) {
    const std::string other = gallery.otherPins(pins);
    if (other.empty() || gallery.updates()) return true;
    MESSAGE("not compared, for golden pictures are exact on what they were made with alone: ",
            other);
    return false;
}

std::map<std::string, std::string> pinsHere() {
    return Gallery::pins(std::filesystem::path(WRENLET_TEST_SHARE) / "fonts");
}

Gallery openGallery() {
    return {std::filesystem::path(WRENLET_TEST_SOURCE) / "tests/golden/pictures.txt",
            WRENLET_GOLDEN_CHANGED};
}

void lookAtAMechanic(Skill skill, const std::string& mechanic) {
    Gallery gallery = openGallery();
    const auto pins = pinsHere();
    if (!isPinned(gallery, pins)) return;
    for (const game::ScreenSize size : kSizes) {
        const Folder folder;
        const Room room(folder / "room");
        const auto visit = Visit::begin(room, size, {}, skill);
        REQUIRE(visit);
        Wall wall(gallery, size, mechanic);
        visit->touch("badge:c-03");
        REQUIRE(visit->waitFor("example", 20'000));
        visit->wait(4'000);
        wall.hang(*visit, "example");
        REQUIRE(visit->waitFor("asked"));
        visit->waitUntilTold();
        wall.hang(*visit, "asked");
        visit->lift(*visit->app().rightTouch());
        wall.hang(*visit, "lifted");
        visit->letGo();
        visit->answerWrongly();
        visit->wait(2'500);
        wall.hang(*visit, "explain");
        REQUIRE(visit->waitFor("asked"));
        visit->answerWrongly();
        REQUIRE(visit->waitFor("together"));
        visit->waitUntilTold();
        wall.hang(*visit, "together");
        visit->playUntil(mechanic + ": right");
        wall.hang(*visit, "right");
    }
    if (gallery.updates()) CHECK(gallery.write(pins));
}

}  // namespace

TEST_CASE("Golden: a sort looks as it did") {
    lookAtAMechanic({Unit::onset_rime, Task::rhyme_sort}, "sort");
}
TEST_CASE("Golden: a join looks as it did") {
    lookAtAMechanic({Unit::phoneme, Task::blend}, "join");
}
TEST_CASE("Golden: a split looks as it did") {
    lookAtAMechanic({Unit::phoneme, Task::segment}, "split");
}
TEST_CASE("Golden: a count looks as it did") {
    lookAtAMechanic({Unit::syllable, Task::count}, "count");
}
TEST_CASE("Golden: a pick looks as it did") {
    lookAtAMechanic({Unit::letter, Task::sound}, "pick");
}
TEST_CASE("Golden: a change looks as it did") {
    lookAtAMechanic({Unit::compound, Task::substitute}, "change");
}

TEST_CASE("Golden: badges, a welcome, the adult's page, a pause and an ending look as they did") {
    Gallery gallery = openGallery();
    const auto pins = pinsHere();
    if (!isPinned(gallery, pins)) return;
    for (const game::ScreenSize size : kSizes) {
        const Folder folder;
        const Room room(folder / "room");
        const auto visit = Visit::begin(room, size, {}, Skill{Unit::compound, Task::blend});
        REQUIRE(visit);
        Wall wall(gallery, size, "screen");
        wall.hang(*visit, "badges");
        visit->touch("leave", 1'800);
        wall.hang(*visit, "question");
        visit->touch(*visit->app().rightTouch());
        wall.hang(*visit, "adult");
        visit->touch("pause");
        wall.hang(*visit, "paused");
        visit->toAdult();
        visit->touch("back");
        visit->touch("badge:c-03");
        wall.hang(*visit, "welcome");
        visit->playUntil("ending");
        visit->wait(6'000);
        wall.hang(*visit, "ending");
    }
    if (gallery.updates()) CHECK(gallery.write(pins));
}

TEST_CASE("Golden: a picture that is another by one pixel is told, and left to be looked at") {
    const Folder folder;
    const Room room(folder / "room");
    const auto visit = Visit::begin(room, kSizes[1], {});
    REQUIRE(visit);
    Gallery gallery(folder / "pictures.txt", folder / "changed");
    const game::Frame frame = visit->frame();
    if (gallery.updates()) return;
    CHECK_FALSE(gallery.compare(visit->table(), frame, "1024x600 badges").empty());
    CHECK(gallery.compare(visit->table(), frame, "1024x600 badges").empty());

    game::Frame moved = frame;
    moved.back().centre.x += 1;
    const std::string wrong = gallery.compare(visit->table(), moved, "1024x600 badges");
    const auto left = folder / "changed/1024x600-badges.png";
    CHECK(wrong.find(left.string()) != std::string::npos);
    CHECK(std::filesystem::file_size(left) > 10'000);

    REQUIRE(gallery.write({{"SDL", "1.2.3"}}));
    const Gallery again(folder / "pictures.txt", folder / "changed");
    CHECK(again.otherPins({{"SDL", "1.2.3"}}).empty());
    CHECK(again.otherPins({{"SDL", "1.2.4"}}) == "SDL is 1.2.4 here and was 1.2.3; ");
}
