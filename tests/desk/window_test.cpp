// The desk's window without a screen: real pointer and keys through Dear ImGui's own input, items
// found by their labels.
#include <doctest/doctest.h>

#include <cstdlib>
#include <string>

#include "tests/desk/demo_class.hpp"
#include "tests/desk/seat.hpp"

namespace wrenlet::desk {

TEST_CASE("Arrows walk the map and Enter opens the child pointed at, at that skill") {
    Seat seat(demo::demoClass());
    REQUIRE(seat.desk().page() == Page::map);
    for (int i = 0; i < 3; ++i) seat.key(Key::down);
    for (int i = 0; i < 5; ++i) seat.key(Key::right);
    CHECK(seat.desk().point() == MapPoint{3, 5});
    seat.key(Key::up);
    seat.key(Key::left);
    CHECK(seat.desk().point() == MapPoint{2, 4});
    const std::string skill = seat.desk().map().columns[4].cell.skill;
    const std::string name = seat.nameInRow(2);
    seat.key(Key::enter);
    CHECK(seat.desk().page() == Page::child);
    CHECK(seat.childShown() == name);
    CHECK(seat.desk().skill() == skill);
    CHECK(seat.shows("child:" + seat.desk().opened().children[seat.desk().child()].child.id));
    seat.key(Key::escape);
    CHECK(seat.desk().page() == Page::map);
}

TEST_CASE("The place pointed at is brought into view on a map wider than the window") {
    Seat seat(demo::demoClass(), 1024, 768);
    const std::size_t last = seat.desk().map().columns.size() - 1;
    REQUIRE(!seat.shows(seat.cellLabel(0, last)));
    seat.key(Key::end);
    CHECK(seat.desk().point().column == last);
    CHECK(seat.shows(seat.cellLabel(0, last)));
    seat.key(Key::home);
    CHECK(seat.shows(seat.cellLabel(0, 0)));
    CHECK(!seat.shows(seat.cellLabel(0, last)));
}

TEST_CASE("A mouse points by moving and opens by a press") {
    Seat seat(demo::demoClass());
    seat.pointAt(seat.cellLabel(6, 2));
    CHECK(seat.desk().point() == MapPoint{6, 2});
    CHECK(seat.desk().page() == Page::map);
    const std::string name = seat.nameInRow(6);
    seat.click(seat.cellLabel(6, 2));
    CHECK(seat.desk().page() == Page::child);
    CHECK(seat.childShown() == name);
}

TEST_CASE("A finger's first touch points, the second opens") {
    Seat seat(demo::demoClass());
    const std::string cell = seat.cellLabel(4, 3);
    seat.touch(cell);
    seat.lift();
    CHECK(seat.desk().point() == MapPoint{4, 3});
    CHECK(seat.desk().page() == Page::map);
    seat.touch(cell);
    CHECK(seat.desk().page() == Page::child);
}

TEST_CASE("Neighbour buttons and arrow keys go through the class in the map's order") {
    Seat seat(demo::demoClass());
    seat.click("name:" + seat.desk().opened().children[seat.desk().map().rows[2].child].child.id);
    REQUIRE(seat.desk().page() == Page::child);
    CHECK(seat.childShown() == seat.nameInRow(2));
    seat.click("neighbour:next");
    CHECK(seat.childShown() == seat.nameInRow(3));
    seat.click("neighbour:previous");
    seat.click("neighbour:previous");
    CHECK(seat.childShown() == seat.nameInRow(1));
    seat.key(Key::left);
    CHECK(seat.childShown() == seat.nameInRow(0));
    CHECK(!seat.shows("neighbour:previous"));
    seat.key(Key::left);
    CHECK(seat.childShown() == seat.nameInRow(0));
    seat.key(Key::right);
    CHECK(seat.childShown() == seat.nameInRow(1));
}

TEST_CASE("Pressing a skill shows its choices and its course") {
    Seat seat(demo::demoClass());
    seat.click("next");
    REQUIRE(seat.desk().page() == Page::child);
    const auto& groups = seat.desk().story().groups;
    REQUIRE(groups.size() > 1);
    const std::string other = groups[1].skill;
    REQUIRE(other != seat.desk().skill());
    seat.click("skill:" + other);
    CHECK(seat.desk().skill() == other);
    CHECK(seat.desk().choices().heading == groups[1].heading);
    seat.key(Key::up);
    CHECK(seat.desk().skill() == groups[0].skill);
}

TEST_CASE("The page and order buttons do what they say") {
    Seat seat(demo::demoClass());
    seat.click("order:name");
    CHECK(seat.nameInRow(0) == "Amir");
    CHECK(seat.nameInRow(1) == "Bea");
    seat.click("order:need");
    CHECK(seat.desk().map().rows[0].missed >= seat.desk().map().rows[1].missed);
    seat.click("page:Child");
    CHECK(seat.desk().page() == Page::child);
    seat.click("page:Map");
    CHECK(seat.desk().page() == Page::map);
    seat.click("standout:0");
    const std::size_t column = seat.desk().point().column;
    for (const MapColumn& other : seat.desk().map().columns)
        CHECK(seat.desk().map().columns[column].missed >= other.missed);
}

TEST_CASE("Tab reaches every button, and Enter presses the one that holds the ring") {
    Seat seat(demo::demoClass());
    const auto stops = seat.window().stage().stops;
    REQUIRE(stops.size() > 5);
    std::size_t pressed_at = stops.size();
    for (std::size_t at = 0; at < stops.size(); ++at) {
        seat.key(Key::tab);
        CHECK(seat.window().stage().held == stops[at]);
        if (stops[at] == "page:Child") {
            pressed_at = at;
            break;
        }
    }
    REQUIRE(pressed_at < stops.size());
    seat.key(Key::enter);
    CHECK(seat.desk().page() == Page::child);
}

TEST_CASE("Gathering again asks for the folder, by button and by key") {
    Seat seat(demo::afterOneDay());
    const std::size_t before = seat.desk().opened().responses.size();
    // After one day nothing is sure enough to be worked on: the next step is to gather again.
    seat.click("next");
    CHECK(seat.gathered() == 1);
    CHECK(seat.desk().opened().responses.size() > before);
    seat.click("gather");
    CHECK(seat.gathered() == 2);
    seat.key(Key::f5);
    CHECK(seat.gathered() == 3);
}

TEST_CASE("A class without answers offers to look again and finds them") {
    Seat seat(demo::nobodyPlayed());
    CHECK(!seat.shows("map"));
    seat.click("next");
    CHECK(seat.gathered() == 1);
    CHECK(seat.shows("map"));
}

TEST_CASE("No button or card of any page stands outside the window or over another") {
    for (const auto& [width, height] :
         {std::pair{1280.f, 720.f}, std::pair{1024.f, 640.f}, std::pair{1536.f, 864.f}}) {
        Seat seat(demo::demoClass(), width, height);
        for (int page = 0; page < 2; ++page) {
            std::vector<std::pair<std::string, Area>> placed;
            for (const auto& [label, area] : seat.window().stage().items) {
                const bool scrolls = label.rfind("skill:", 0) == 0;
                if (label == "map" || label == "reading" || scrolls) continue;
                CHECK_MESSAGE((area.x >= 0 && area.y >= 0 && area.right() <= width &&
                               area.bottom() <= height),
                              label);
                for (const auto& [other, taken] : placed) {
                    const bool apart = area.right() <= taken.x || taken.right() <= area.x ||
                                       area.bottom() <= taken.y || taken.bottom() <= area.y;
                    CHECK_MESSAGE(apart, std::string(label + " over " + other));
                }
                placed.emplace_back(label, area);
            }
            seat.click("page:Child");
        }
    }
}

}  // namespace wrenlet::desk
