// The game, the program itself, on a real X server's touch screen: several fingers at once, through
// the server, its protocol and SDL, as a tablet gives them.
#include <doctest/doctest.h>

#include <algorithm>
#include <memory>
#include <string>

#include "content/common/files.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/pack_file.hpp"
#include "content/practice/store.hpp"
#include "tests/practice/samples.hpp"
#include "tests/touch/game_program.hpp"
#include "tests/touch/x_server.hpp"

using namespace wrenlet;
using exercise::Task;
using exercise::Unit;
using game::Point;
using practice::samples::Folder;
using touch::GameProgram;
using touch::Standing;
using touch::XServer;

namespace {

constexpr unsigned kPalm = 11, kFirst = 12, kSecond = 13;
constexpr double kPatience = 120;  // seconds; what waits for less is a machine under load

/// The starter classroom, whose pack asks for this skill alone.
void makeClassroom(const std::filesystem::path& folder, exercise::Skill skill) {
    std::filesystem::copy(WRENLET_TEST_STARTER, folder, std::filesystem::copy_options::recursive);
    const pack::Classroom classroom{folder};
    const auto list = pack::openClassList(classroom);
    REQUIRE(list.ok());
    const auto path = classroom.packFile(list.value().pack);
    auto pack = pack::readPackFile(path);
    REQUIRE(pack.ok());
    std::erase_if(pack.value().items, [&](const auto& item) { return item.skill != skill; });
    const auto bytes = pack::writePack(pack.value());
    REQUIRE(bytes.ok());
    REQUIRE(writeWhole(path, bytes.value()).ok());
}

/// The game on a screen of its own, with fingers on it.
class Tablet {
  public:
    explicit Tablet(exercise::Skill skill) : server_(folder_.path()) {
        REQUIRE_MESSAGE(server_.trouble().empty(), server_.trouble());
        makeClassroom(folder_ / "classroom", skill);
        game_ = std::make_unique<GameProgram>(
            server_.display(), std::vector<std::string>{(folder_ / "classroom").string(), "--data",
                                                        (folder_ / "tablet").string(), "--seed",
                                                        "3", "--full-screen", "--announce"});
        waitForPlace("badges");
    }

    void down(unsigned id, Point at) { REQUIRE(server_.down(id, at)); }
    void move(unsigned id, Point at) { REQUIRE(server_.move(id, at)); }
    void up(unsigned id, Point at) { REQUIRE(server_.up(id, at)); }
    void pass(double seconds) { game_->listen(seconds); }
    void tap(unsigned id, Point at) {
        down(id, at);
        pass(0.08);
        up(id, at);
    }

    const Standing& standing() const { return game_->standing(); }
    Point centreOf(const std::string& thing) const {
        const auto found = standing().things.find(thing);
        REQUIRE_MESSAGE(found != standing().things.end(), thing, " at ", standing().place);
        return found->second.centre();
    }
    void waitFor(const std::string& what, const std::function<bool(const Standing&)>& so) {
        REQUIRE_MESSAGE(game_->waitFor(so, kPatience), what, " did not come; it stands at ",
                        standing().place);
    }
    void waitForPlace(const std::string& place) {
        waitFor(place, [&](const Standing& now) { return now.place == place; });
    }
    /// A child comes and is asked the first question.
    void playUntil(const std::string& place) {
        tap(kFirst, centreOf("badge:c-01"));
        waitFor(place, [&](const Standing& now) { return now.place == place && now.right; });
        REQUIRE(standing().answers == 0);
    }

    /// Ends the game and reads what it has kept.
    std::vector<practice::Response> kept() {
        CHECK(game_->end());
        const auto store = practice::Store::open(folder_ / "tablet/store.db", "none");
        REQUIRE(store.ok());
        return store.value().all();
    }

  private:
    Folder folder_;
    XServer server_;
    std::unique_ptr<GameProgram> game_;
};

Point between(Point a, Point b, int of_ten) {
    const float part = static_cast<float>(of_ten) / 10;
    return {a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part};
}

}  // namespace

TEST_CASE("Touch screen: a palm rests and a second finger wanders while the first drags a card") {
    Tablet tablet({Unit::onset_rime, Task::rhyme_sort});
    tablet.playUntil("sort: asked");
    const auto drag = [&](Point from, Point to, int begin, int end) {
        for (int i = begin; i <= end; ++i) {
            tablet.move(kFirst, between(from, to, i));
            tablet.pass(0.02);
        }
    };

    const Point edge{500, XServer::kHeight - 2};
    tablet.down(kPalm, edge);  // lies at the lower edge and stays
    const Point card = tablet.centreOf("card");
    tablet.down(kFirst, card);
    const auto home = [](const Standing& now) { return now.right && *now.right != "card"; };
    tablet.waitFor("a lifted card", home);
    const std::string right = *tablet.standing().right;
    const std::string other = right == "home:0" ? "home:1" : "home:0";
    const Point there = tablet.centreOf(right), elsewhere = tablet.centreOf(other);

    drag(card, there, 1, 5);
    tablet.down(kSecond, elsewhere);  // on the wrong home, as if that were chosen
    for (int i = 1; i <= 3; ++i) {
        drag(card, there, 5 + i, 5 + i);
        tablet.move(kSecond, between(elsewhere, card, i));
        tablet.move(kPalm, {edge.x + static_cast<float>(i), edge.y});
    }
    tablet.up(kSecond, between(elsewhere, card, 3));
    tablet.tap(kSecond, elsewhere);
    tablet.pass(0.5);
    CHECK(tablet.standing().answers == 0);
    CHECK(tablet.standing().right == right);  // the card is still in the hand
    drag(card, there, 9, 10);
    tablet.up(kFirst, there);
    tablet.waitFor("an answer", [](const Standing& now) { return now.answers > 0; });
    tablet.up(kPalm, edge);
    tablet.pass(0.5);

    const auto rows = tablet.kept();
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].isRight());
    CHECK(rows[0].chosen == rows[0].choices[static_cast<std::size_t>(right.back() - '0')]);
    CHECK(rows[0].try_number == 1);
    CHECK(rows[0].child == "c-01");
}

TEST_CASE("Touch screen: a palm that rests on the water gives way to a finger that taps") {
    Tablet tablet({Unit::onset_rime, Task::rhyme_pick});
    tablet.playUntil("pick: asked");
    const Point water{250, 620};
    tablet.down(kPalm, water);
    tablet.pass(1.7);  // longer than game::kRestMillis
    const std::string right = *tablet.standing().right;
    tablet.tap(kFirst, tablet.centreOf(right));
    tablet.waitFor("an answer", [](const Standing& now) { return now.answers > 0; });
    tablet.up(kPalm, water);
    tablet.pass(0.5);

    const auto rows = tablet.kept();
    REQUIRE(rows.size() == 1);
    CHECK("choice:" + rows[0].chosen.string() == right);
    CHECK(rows[0].isRight());
}
