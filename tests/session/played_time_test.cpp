// Sessions are five to eight minutes by the game's own clock, and as long as was set.
#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/pack/pack_file.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using practice::samples::Folder;

namespace {

constexpr double kMinute = 60'000;

/// A child who thinks, and who errs now and then.
struct Kind {
    game::Millis thinks;  // up to so long before each touch
    double errs;          // share of touches that are another thing than the right one
};

/// The starter unit: every skill, and clips as long as the voice takes.
const pack::Pack& starter() {
    static const pack::Pack pack = [] {
        const auto files = listFiles(std::filesystem::path(WRENLET_TEST_STARTER) / "packs", ".zip");
        REQUIRE(files.size() == 1);
        const auto bytes = readWhole(files.front(), pack::kMostPackBytes);
        REQUIRE(bytes.ok());
        auto read = pack::readPack(bytes.value(), "starter");
        REQUIRE(read.ok());
        return std::move(read.value());
    }();
    return pack;
}

game::AppOptions minutes(int set) {
    game::AppOptions options;
    options.tablet.minutes = set;
    return options;
}

/// Plays on until the ending, or until `most` have gone by; the minutes played.
double play(Player& player, const Kind& kind, std::uint64_t seed, game::Millis most = 60 * 60'000) {
    Random random(seed);
    double played = 0;
    const game::Millis until = player.now() + most;
    while (player.app().place() != "ending" && player.now() < until) {
        played = std::max(played, static_cast<double>(player.app().playedMs()));
        if (!player.app().rightTouch()) {
            player.wait(96);
            continue;
        }
        player.wait(static_cast<game::Millis>(random.unit() * static_cast<double>(kind.thinks)));
        const auto right = player.app().rightTouch();
        if (!right) continue;
        std::string touched = *right;
        const std::string group = touched.substr(0, touched.find(':'));
        if (random.unit() < kind.errs && (group == "home" || group == "choice"))
            for (const std::string& name : player.app().touchables())
                if (name != *right && name.rfind(group + ":", 0) == 0) touched = name;
        player.tap(touched);
    }
    return std::max(played, static_cast<double>(player.app().playedMs())) / kMinute;
}

}  // namespace

TEST_CASE("Played time: a session is five to eight minutes, and within 40 s of what was set") {
    const Kind kinds[] = {{900, 0}, {3'000, 0.1}, {6'000, 0.3}};
    for (const int set : {5, 6, 7, 8})
        for (const Kind& kind : kinds) {
            CAPTURE(set);
            CAPTURE(kind.thinks);
            const Folder folder;
            Player player(folder / "store.db", 1, 7, {}, 6, starter(), minutes(set));
            player.tap("badge:c-01");
            const double played = play(player, kind, static_cast<std::uint64_t>(set));
            CHECK(player.app().place() == "ending");
            CHECK(played >= 5);
            CHECK(played <= 8);
            // Five minutes are the least there is, and so may be six.
            CHECK(std::abs(played - set) <= (set == 5 ? 1.0 : 40.0 / 60));
        }
}

TEST_CASE("Played time: a session that was cut goes on with the same child, and ends as set") {
    const Kind kind{2'500, 0.1};
    for (const int set : {5, 8}) {
        CAPTURE(set);
        const Folder folder;
        double before = 0;
        for (int cut = 0; cut < 3; ++cut) {
            {
                Player player(folder / "store.db", 2, 7, {}, 6, starter(), minutes(set));
                player.tap("badge:c-01");
                const auto seed = 40 + static_cast<std::uint64_t>(cut);
                const double played = play(player, kind, seed, 80'000);
                CHECK(player.app().place() != "ending");
                // What was played after the last answer before the cut is not known any more.
                CHECK(played > before + 0.7);
                CHECK(played < before + 80'000 / kMinute);
                before = played;
            }
            // Another child plays in between, from her own beginning.
            if (cut != 1) continue;
            Player other(folder / "store.db", 2, 8, {}, 6, starter(), minutes(set));
            other.tap("badge:c-02");
            CHECK(play(other, kind, 50, 60'000) < 1);
        }
        Player player(folder / "store.db", 2, 9, {}, 6, starter(), minutes(set));
        player.tap("badge:c-01");
        const double played = play(player, kind, 60);
        CHECK(player.app().place() == "ending");
        CHECK(played >= 5);
        CHECK(played <= 8);
        CHECK(std::abs(played - set) <= 1);
        CHECK(player.store().endedSessions("c-01") == 1);
        CHECK(player.store().endedSessions("c-02") == 0);
        std::int64_t session = 0;
        for (const auto& row : player.store().all()) {
            if (row.child != "c-01") continue;
            if (session == 0) session = row.session;
            CHECK(row.session == session);
        }
    }
}

TEST_CASE("Played time: neither a long pause nor an adult's page is counted as played") {
    const Folder folder;
    Player player(folder / "store.db", 1, 7, {}, 6, starter(), minutes(5));
    player.tap("badge:c-01");
    play(player, {2'500, 0}, 1, 60'000);
    REQUIRE(player.waitForTouch());
    player.wait(12'000);  // until all is told
    const auto before = player.app().playedMs();
    player.wait(20 * 60'000);
    player.tap("replay");
    CHECK(player.app().playedMs() - before < 1'000);
    player.toAdultPage();
    player.tap("pause");
    player.wait(25'000);
    player.toAdultPage();
    player.tap("back");
    CHECK(player.app().playedMs() - before < 4'000);
}

TEST_CASE("Played time: the minutes can be set while a child plays") {
    const Folder folder;
    Player player(folder / "store.db", 1, 7, {}, 6, starter(), minutes(8));
    player.tap("badge:c-01");
    play(player, {2'500, 0}, 1, 3 * 60'000);
    player.toAdultPage();
    while (player.app().settings().minutes != 5) player.tap("minutes");
    player.tap("back");
    const double played = play(player, {2'500, 0}, 2);
    CHECK(player.app().place() == "ending");
    CHECK(played >= 5);
    CHECK(played <= 6);
}
