// Settings and Help in the desk's window, by press and by key.
#include <filesystem>

#include "editor/help/help.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using practice::samples::Folder;

namespace {

struct OneMicrophone final : SoundDevices {
    std::vector<std::string> names(SoundWay) override { return {"Built in", "Headset"}; }
    void use(SoundWay way, const std::string& name) override {
        if (way == SoundWay::in) used = name;
    }
    std::string used;
};

}  // namespace

TEST_CASE("Settings: text, motion and letters are set by a press and kept for the next start") {
    const Folder folder;
    const auto path = folder / "settings.json";
    OneMicrophone devices;
    {
        Seat seat(demo::demoClass(), 1280, 720, nullptr, {}, {}, {}, {path, &devices, {}});
        seat.click("sheet:Settings");
        CHECK(seat.window().sheet() == Sheet::settings);
        seat.click("text size:130");
        seat.click("Motion:off");
        seat.click("Single letter keys:off");
        seat.click("microphone:1");
        CHECK(devices.used == "Headset");
        CHECK(seat.window().textSize() == doctest::Approx(1.3));
        seat.key(Key::escape);
        CHECK(seat.window().sheet() == Sheet::none);
        CHECK(seat.shows("map"));
    }
    Seat seat(demo::demoClass(), 1280, 720, nullptr, {}, {}, {}, {path, &devices, {}});
    CHECK(seat.window().settings().now() == DeskSettings{130, false, false, "Headset", ""});
}

TEST_CASE("Text grows and shrinks with Ctrl + and Ctrl \u2212 wherever she is") {
    Seat seat(demo::demoClass());
    seat.ctrl(Key::plus);
    CHECK(seat.window().textSize() == doctest::Approx(1.15));
    for (int i = 0; i < 3; ++i) seat.ctrl(Key::minus);
    CHECK(seat.window().textSize() == doctest::Approx(0.9));
}

TEST_CASE("Settings: everything is reached with Tab and taken with Enter") {
    OneMicrophone devices;
    Seat seat(demo::demoClass(), 1024, 640, nullptr, {}, {}, {}, {{}, &devices, {}});
    seat.click("sheet:Settings");
    for (const std::string wanted : {"Motion:off", "microphone:1", "sound: look again"}) {
        for (int i = 0; i < 60 && seat.window().stage().held != wanted; ++i) seat.key(Key::tab);
        REQUIRE(seat.window().stage().held == wanted);
        seat.frame();
        const Area area = seat.where(wanted);  // what is held scrolls into view
        CHECK(area.y >= 40);
        CHECK(area.bottom() <= 640 - 56);
        seat.key(Key::enter);
    }
    CHECK(!seat.window().settings().now().motion);
    CHECK(devices.used == "Headset");
}

TEST_CASE("F1 opens help for where she is and closes it again, as do Esc and another place") {
    Seat seat(demo::demoClass());
    seat.key(Key::f1);
    CHECK(seat.window().sheet() == Sheet::help);
    CHECK(!seat.shows("map"));
    seat.key(Key::f1);
    CHECK(seat.window().sheet() == Sheet::none);
    seat.key(Key::f1);
    seat.key(Key::escape);
    CHECK(seat.window().sheet() == Sheet::none);
    CHECK(seat.desk().page() == Page::map);
    seat.key(Key::f1);
    seat.click("place:Class");
    CHECK(seat.shows("map"));
    seat.key(Key::f1);
    seat.ctrl(Key::enter);  // the next step there is back
    CHECK(seat.window().sheet() == Sheet::none);
}

TEST_CASE("While Help is shown the keys of the place below do nothing") {
    Seat seat(demo::demoClass());
    const MapPoint point = seat.desk().point();
    seat.key(Key::f1);
    seat.key(Key::right);
    seat.key(Key::down);
    CHECK(seat.desk().point() == point);
    seat.key(Key::escape);
    seat.key(Key::right);
    CHECK(!(seat.desk().point() == point));
}
