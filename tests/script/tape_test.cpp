#include <doctest/doctest.h>

#include <string>

#include "content/common/files.hpp"
#include "game/script/scripted_child.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

TEST_CASE("Tape: what is not said keeps its usual value") {
    const auto tape = readTape("{}", "t.json");
    REQUIRE(tape.ok());
    CHECK(tape.value().right_share == Tape{}.right_share);
    CHECK(tape.value().width == 1280);
    CHECK(tape.value().child.empty());
}

TEST_CASE("Tape: every field is read") {
    const auto tape = readTape(
        R"({"seed": 9000000000000000, "child": "c-03", "right_share": 0.5, "drag_share": 1,
            "palm_share": 0.125, "replay_share": 0.25, "adult_share": 0.75, "sessions": 3,
            "width": 800, "height": 1280, "most_minutes": 12})",
        "t.json");
    REQUIRE(tape.ok());
    const Tape& read = tape.value();
    CHECK(read.seed == 9000000000000000);
    CHECK(read.child == "c-03");
    CHECK(read.right_share == 0.5);
    CHECK(read.drag_share == 1);
    CHECK(read.palm_share == 0.125);
    CHECK(read.replay_share == 0.25);
    CHECK(read.adult_share == 0.75);
    CHECK(read.sessions == 3);
    CHECK(read.width == 800);
    CHECK(read.height == 1280);
    CHECK(read.most_minutes == 12);
}

TEST_CASE("Tape: what is wrong is told by its field, an unknown one too") {
    struct Case {
        const char* json;
        const char* field;
    };
    const Case cases[] = {
        {R"({"right_share": 1.5})", "right_share"},
        {R"({"drag_share": "often"})", "drag_share"},
        {R"({"seed": -1})", "seed"},
        {R"({"sessions": 0})", "sessions"},
        {R"({"width": 12})", "width"},
        {R"({"child": 4})", "child"},
        {R"({"right_sare": 0.5})", "right_sare"},
        {R"({"most_minutes": 1e9})", "most_minutes"},
    };
    for (const Case& c : cases) {
        CAPTURE(c.json);
        const auto tape = readTape(c.json, "t.json");
        REQUIRE(tape.problems().size() == 1);
        CHECK(tape.problems()[0].where == "t.json");
        CHECK(tape.problems()[0].what.find(c.field) != std::string::npos);
    }
    CHECK(readTape(R"({"seed": -1, "sessions": 0})", "t.json").problems().size() == 2);
    for (const char* broken : {"", "[]", "{\"seed\": 1", "\xff"}) {
        CAPTURE(broken);
        CHECK_FALSE(readTape(broken, "t.json").ok());
    }
}

TEST_CASE("Tape: the one that ./play plays can be read") {
    const auto json = readWhole(WRENLET_SOURCE_DIR "/assets/scripts/first_session.json", 1 << 16);
    REQUIRE(json.ok());
    CHECK(readTape(json.value(), "first_session.json").ok());
}
