#include "game/sdl/table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <map>
#include <memory>
#include <optional>

#include "content/common/clock.hpp"
#include "game/sdl/fingers.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::Folder;

namespace {

/// The starter classroom, laid out on a table off screen.
struct Room {
    Folder folder;
    SystemClock clock;
    std::optional<Opened> opened;
    std::unique_ptr<Table> table;

    explicit Room(int volume_percent = 100) {
        std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                              std::filesystem::copy_options::recursive);
        auto found = openClassroom({folder / "classroom"}, {folder / "tablet"}, 1);
        REQUIRE(found.ok());
        opened.emplace(std::move(found.value()));
        TableOptions options;
        options.window = {640, 400, false, true};
        options.assets = WRENLET_TEST_SHARE;
        options.sound = SoundDevice::Use::decode_only;
        options.app.tablet.motion = false;
        options.app.tablet.volume_percent = volume_percent;
        auto made = Table::open(*opened, clock, options);
        REQUIRE(made.ok());
        table = std::move(made.value());
        SDL_FlushEvents(SDL_FIRSTEVENT, SDL_LASTEVENT);
        table->show(0);
    }

    void finger(Contact::Kind kind) {
        const Box badge = *table->app().boxOf("badge:c-02");
        REQUIRE(pushFinger({kind, 1, badge.centre(), 0}, table->screen()));
    }
    void window(SDL_WindowEventID what) {
        SDL_Event event{};
        event.type = SDL_WINDOWEVENT;
        event.window.event = static_cast<Uint8>(what);
        REQUIRE(SDL_PushEvent(&event) == 1);
    }
    bool isHeard() {
        std::array<std::int16_t, 9600> samples{};
        table->mixer().mix(samples.data(), samples.size() / 2);
        return std::any_of(samples.begin(), samples.end(), [](auto s) { return s != 0; });
    }
};

}  // namespace

TEST_CASE("Table: what is shown while the pack is read is the app's own first frame") {
    Room room;
    TableOptions options;
    options.window = {640, 400, false, true};
    options.assets = WRENLET_TEST_SHARE;
    const auto fresh = Table::open(*room.opened, room.clock, options);
    REQUIRE(fresh.ok());
    const Frame shown = firstFrame(room.opened->list, fresh.value()->screen());
    CHECK(shown.size() > room.opened->list.children.size());
    CHECK(shown == fresh.value()->app().frame(0));
}

TEST_CASE("table: how loud a tablet may be bounds all that is mixed, words and cues") {
    std::map<int, int> loudest;
    for (const int percent : {25, 50, 100}) {
        CAPTURE(percent);
        Room room(percent);
        const int bound = static_cast<int>(kGainCap * 32767 * static_cast<float>(percent) / 100);
        std::array<std::int16_t, 9600> samples{};
        for (Millis now = 0; now < 4'000; now += 100) {
            if (now == 1'000) room.finger(Contact::Kind::down);
            if (now == 1'100) room.finger(Contact::Kind::up);
            room.table->handleAll(now);
            room.table->show(now);
            room.table->mixer().mix(samples.data(), samples.size() / 2);
            for (const std::int16_t sample : samples) {
                REQUIRE(std::abs(int{sample}) <= bound + 1);
                loudest[percent] = std::max(loudest[percent], std::abs(int{sample}));
            }
        }
    }
    CHECK(loudest[100] > 2'000);
    CHECK(std::abs(loudest[50] - loudest[100] / 2) <= 2);
    CHECK(std::abs(loudest[25] - loudest[100] / 4) <= 2);
}

TEST_CASE("table: a finger in SDL's queue touches the badge") {
    Room room;
    REQUIRE(room.table->app().place() == "badges");
    room.finger(Contact::Kind::down);
    room.finger(Contact::Kind::up);
    CHECK(room.table->handleAll(100));
    CHECK(room.table->app().place() == "welcome");
}

TEST_CASE("table: a finger that is down when the focus goes is let go, and its up does nothing") {
    Room room;
    room.finger(Contact::Kind::down);
    room.window(SDL_WINDOWEVENT_FOCUS_LOST);
    room.finger(Contact::Kind::up);
    CHECK(room.table->handleAll(100));
    CHECK(room.table->app().place() == "badges");
    room.finger(Contact::Kind::down);
    room.finger(Contact::Kind::up);
    CHECK(room.table->handleAll(200));
    CHECK(room.table->app().place() == "welcome");
}

TEST_CASE(
    "table: hidden, it is silent and deaf to fingers, and shown again it goes on where it was") {
    Room room;
    CHECK(room.isHeard());
    room.window(SDL_WINDOWEVENT_MINIMIZED);
    CHECK(room.table->handleAll(100));
    CHECK(room.table->isStill());
    const auto at = room.table->mixer().clock();
    CHECK_FALSE(room.isHeard());
    CHECK(room.table->mixer().clock() == at);
    room.finger(Contact::Kind::down);
    room.finger(Contact::Kind::up);
    CHECK(room.table->handleAll(150));
    CHECK(room.table->app().place() == "badges");

    room.window(SDL_WINDOWEVENT_RESTORED);
    CHECK(room.table->handleAll(200));
    CHECK_FALSE(room.table->isStill());
    CHECK(room.isHeard());
}
