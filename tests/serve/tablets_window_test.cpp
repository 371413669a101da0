// The tablets' page at the desk's window, with real presses, and a tablet over a real socket.
#include <doctest/doctest.h>

#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/serve/page_tablet.hpp"
#include "tests/serve/served_room.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using samples::PageTablet;
using samples::ServedRoom;

namespace {

/// A teacher at her desk, with a classroom that can be served.
struct Room : ServedRoom {
    AtOnce at_once;
    Seat seat;

    explicit Room(const char* page = "page")
        : seat(openClass(classroom.folder, clock.now_ms), 1280, 720, &library().bench, {}, {}, {},
               {}, parts(page)) {
        seat.alt(Key::four);
    }
    ServePlace::Parts parts(const char* page) {
        ServerOptions any;
        any.port = 0;
        return {clock,
                entropy,
                at_once,
                {},
                folder / page,
                {},
                [] { return std::vector<std::string>{"192.168.1.20"}; },
                [this](const auto& from) { return openClass(from, clock.now_ms); },
                any};
    }
    ServePlace& place() { return *seat.window().serve(); }
    void wait(std::int64_t ms) {
        clock.now_ms += ms;
        seat.wait(ms);
        seat.frame();
    }
};

}  // namespace

TEST_CASE("The desk serves tablets at one press, shows a code, and each tablet in plain words") {
    Room room;
    REQUIRE(room.seat.shows("serve"));
    CHECK(room.place().due() == std::nullopt);
    room.seat.click("next");
    REQUIRE(room.place().isOn());
    room.seat.frame();
    REQUIRE(room.seat.shows("code"));
    CHECK(room.seat.shows("qr code"));
    CHECK(room.place().due().has_value());
    CHECK(room.place().address().find("http://192.168.1.20:") == 0);
    const std::string code = room.place().code()->code;

    PageTablet tablet(room.place().serving()->port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(code));
    room.wait(1000);
    REQUIRE(room.place().tablets().size() == 1);
    CHECK(room.seat.shows("tablet:" + tablet.identity().tablet));
    CHECK_FALSE(room.seat.shows("code"));
    CHECK(stateInWords(room.place().tablets()[0], room.clock.now_ms) == "has not come yet");
    REQUIRE(tablet.hello(true));
    room.wait(1000);
    CHECK(stateInWords(room.place().tablets()[0], room.clock.now_ms) == "playing");
    REQUIRE(tablet.hello());
    room.wait(1000);
    CHECK(stateInWords(room.place().tablets()[0], room.clock.now_ms) == "waiting");
    room.wait(3 * 60'000);
    CHECK(stateInWords(room.place().tablets()[0], room.clock.now_ms) == "not seen for 3 minutes");

    room.seat.click("new code");
    room.wait(1000);
    CHECK(room.place().code()->code != code);
    room.seat.click("stop serving");
    CHECK_FALSE(room.place().isOn());
    CHECK(room.seat.shows("serve"));
    CHECK_FALSE(tablet.hello());
}

TEST_CASE("The class map takes in answers while children play") {
    Room room;
    room.seat.click("serve");
    PageTablet tablet(room.place().serving()->port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.place().code()->code));
    for (int i = 0; i < 12; ++i) tablet.answers(samples::responseBy("c-01"));
    REQUIRE(tablet.sendAll());
    room.seat.alt(Key::five);
    CHECK(room.seat.desk().gathering().answers == 0);
    room.clock.now_ms += 10'000;  // so that it is handed in
    REQUIRE(room.soon([&] {
        room.wait(1000);
        return room.seat.desk().gathering().answers == 12;
    }));
    CHECK(room.seat.desk().state() == ClassState::ready);
    for (int i = 0; i < 3; ++i) tablet.answers(samples::responseBy("c-02"));
    REQUIRE(tablet.sendAll());
    room.clock.now_ms += 10'000;
    CHECK(room.soon([&] {
        room.wait(1000);
        return room.seat.desk().gathering().answers == 15;
    }));
}

TEST_CASE("A tablet is removed at one press, and let back at another") {
    Room room;
    room.seat.click("serve");
    PageTablet tablet(room.place().serving()->port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.place().code()->code));
    REQUIRE(tablet.hello());
    room.wait(1000);
    room.seat.click("remove:" + tablet.identity().tablet);
    CHECK(room.place().tablets().empty());
    CHECK_FALSE(tablet.hello());
    REQUIRE(room.seat.shows("let back"));
    room.seat.click("let back");
    CHECK(room.place().tablets().size() == 1);
    CHECK(tablet.hello());
}

TEST_CASE("What was refused on the network is told, and a wrong clock is named") {
    Room room;
    room.seat.click("serve");
    PageTablet tablet(room.place().serving()->port(), "127.0.0.2", 1);
    REQUIRE(tablet.join(room.place().code()->code));
    tablet.clock_ms = room.clock.now_ms + 3 * 3'600'000;
    REQUIRE(tablet.hello());
    samples::HttpClient attacker(room.place().serving()->port(), "127.0.0.9");
    REQUIRE(attacker.ask("GET", "/../etc/passwd"));
    room.wait(1000);
    CHECK(room.seat.shows("refused"));
    CHECK(room.place().refusedCount() == 1);
    CHECK(clockInWords(room.place().tablets()[0]) == "its clock is 3 hours ahead");
}

TEST_CASE("Without the page the desk says what to do, and serves nothing") {
    Room room("nowhere");
    room.seat.click("serve");
    CHECK_FALSE(room.place().isOn());
    REQUIRE(room.place().problems().size() == 1);
    CHECK(room.place().problems()[0].way_out.find("./play --web") != std::string::npos);
    CHECK(room.seat.shows("serve"));
}
