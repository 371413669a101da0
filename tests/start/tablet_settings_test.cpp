#include "game/start/tablet_settings.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "content/common/files.hpp"
#include "game/start/call.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::Folder;

namespace {

TabletSettings unlike() {
    TabletSettings settings;
    settings.volume_percent = 50;
    settings.motion = false;
    settings.drags = false;
    settings.left_hand = true;
    settings.minutes = 7;
    settings.scan_pace = 2'500;
    settings.captions = true;
    settings.paused = true;
    return settings;
}

std::string file(const std::string& fields) {
    return R"({"format": "wrenlet tablet", "format_version": 1)" + fields + "}";
}

}  // namespace

TEST_CASE("Settings: a tablet's settings read back as they were kept, and no other file is left") {
    const Folder folder;
    const auto path = folder / "settings.json";
    for (const TabletSettings& settings : {unlike(), TabletSettings{}}) {
        REQUIRE(keepTabletSettings(path, settings).ok());
        const auto kept = openTabletSettings(path);
        CHECK(kept.problems().empty());
        CHECK(kept.value() == settings);
    }
    CHECK(listFiles(path.parent_path(), ".json").size() == 1);
    CHECK(listFiles(path.parent_path(), ".new").empty());
}

TEST_CASE("Settings: where none were kept a tablet is set as usual, with nothing to tell") {
    const Folder folder;
    const auto kept = openTabletSettings(folder / "settings.json");
    CHECK(kept.problems().empty());
    CHECK(kept.value() == TabletSettings{});
}

TEST_CASE("Settings: broken ones give the usual ones and say what and where and what to do") {
    const Folder folder;
    const auto path = folder / "settings.json";
    const std::string good = writeTabletSettings(unlike());
    const std::string broken[] = {
        "",
        "no JSON",
        "[]",
        "{}",
        "\xff\xfe{",
        good.substr(0, good.size() / 2),
        std::string(200'000, ' ') + good,
        file(R"(, "volume_percent": 10000)"),
        file(R"(, "volume_percent": -50)"),
        file(R"(, "volume_percent": "loud")"),
        file(R"(, "motion_off": 1)"),
        file(R"(, "session_minutes": 90)"),
        file(R"(, "switch_ms": 1)"),
        file(R"(, "switch_ms": 1e300)"),
        file(R"(, "captions": [[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]])"),
        R"({"format": "wrenlet class", "format_version": 1})",
        R"({"format": "wrenlet tablet", "format_version": 9})"};
    for (const std::string& bytes : broken) {
        CAPTURE(bytes.substr(0, 60));
        REQUIRE(writeWhole(path, bytes).ok());
        const auto kept = openTabletSettings(path);
        REQUIRE(kept.ok());
        CHECK(kept.value() == TabletSettings{});
        REQUIRE(kept.problems().size() >= 2);
        for (const Problem& problem : kept.problems()) {
            CHECK(problem.where.find("settings.json") == 0);
            CHECK(problem.weight == Problem::Weight::warning);
        }
        CHECK(kept.problems().back().way_out == "Set it anew on this page.");
    }
}

TEST_CASE("Settings: a folder that is gone is told, and nothing else happens") {
    const Folder folder;
    CHECK_FALSE(keepTabletSettings(folder / "gone" / "settings.json", {}).ok());
    std::filesystem::create_directory(folder / "settings.json");
    const auto kept = openTabletSettings(folder / "settings.json");
    CHECK(kept.value() == TabletSettings{});
    CHECK_FALSE(kept.problems().empty());
}

TEST_CASE("Call: what is called for goes over what the tablet keeps, and nothing else does") {
    const auto call = callOf({"--volume", "75", "classroom", "--minutes", "8", "--switch", "1.5"});
    REQUIRE(call.has_value());
    TabletSettings wanted = unlike();
    wanted.volume_percent = 75;
    wanted.minutes = 8;
    wanted.scan_pace = 1'500;
    CHECK(call->over(unlike()) == wanted);
    CHECK(callOf({"classroom"})->over(unlike()) == unlike());

    const auto flags =
        callOf({"classroom", "--still", "--touch-only", "--left-hand", "--captions"});
    REQUIRE(flags.has_value());
    const TabletSettings set = flags->over({});
    CHECK_FALSE(set.motion);
    CHECK_FALSE(set.drags);
    CHECK(set.left_hand);
    CHECK(set.captions);
}

TEST_CASE("Call: an unknown option, a value out of its range or none at all is turned down") {
    const std::vector<std::vector<std::string>> bad = {
        {},
        {""},
        {"--captions"},
        {"a", "b"},
        {"a", "--loud"},
        {"a", "--volume"},
        {"a", "--volume", "24"},
        {"a", "--volume", "101"},
        {"a", "--volume", "50x"},
        {"a", "--minutes", "4"},
        {"a", "--minutes", "9"},
        {"a", "--minutes", ""},
        {"a", "--switch", "0.9"},
        {"a", "--switch", "5.1"},
        {"a", "--switch", "nan"},
        {"a", "--switch", "2,5"},
        {"a", "--seed", "-1"},
        {"a", "--off-screen"},
    };
    for (const auto& args : bad) {
        CAPTURE(args.size() > 1 ? args[1] : "");
        CHECK_FALSE(callOf(args).has_value());
    }
}

TEST_CASE("Call: one question of a pack is tried instead of a classroom") {
    const auto call = callOf({"--try", "p.zip", "--item", "phoneme.first/a/b", "--size", "496x310",
                              "--draw", "still.png", "--left-hand"});
    REQUIRE(call.has_value());
    CHECK(call->tried == "p.zip");
    CHECK(call->item == "phoneme.first/a/b");
    CHECK(call->width == 496);
    CHECK(call->height == 310);
    CHECK(call->drawn == "still.png");
    CHECK(call->left_hand);
    const std::vector<std::vector<std::string>> wrong = {
        {"--try", "p.zip", "classroom"},      {"--draw", "still.png", "classroom"},
        {"--try", "p.zip", "--size", "496"},  {"--try", "p.zip", "--size", "0x310"},
        {"--try", "p.zip", "--size", "9x9x"}, {"--try", "p.zip", "--size", "496x99999"}};
    for (const auto& args : wrong) CHECK_FALSE(callOf(args).has_value());
}
