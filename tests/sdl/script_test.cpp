#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

#include "game/sdl/assets.hpp"
#include "game/sdl/script_run.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::Folder;

namespace {

struct Played {
    ScriptResult result;
    std::vector<practice::Response> rows;
};

/// A scripted child plays the starter classroom on a tablet of its own; with a skill, that alone.
Played play(const Tape& tape, const ScriptRun& run = {},
            std::optional<exercise::Skill> skill = {}) {
    const Folder folder;
    const std::filesystem::path classroom = folder / "classroom";
    std::filesystem::create_directories(classroom);
    std::filesystem::copy(WRENLET_TEST_STARTER, classroom,
                          std::filesystem::copy_options::recursive);
    auto opened = openClassroom({classroom}, {folder / "tablet"}, 1);
    for (const Problem& problem : opened.problems()) FAIL_CHECK(sentence(problem));
    REQUIRE(opened.ok());
    if (skill)
        std::erase_if(opened.value().pack.items,
                      [&](const exercise::Item& item) { return item.skill != *skill; });
    TableOptions options;
    options.window = {tape.width, tape.height, false, true};
    options.assets = WRENLET_TEST_SHARE;
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = tape.seed;
    ScriptClock clock;
    auto table = Table::open(opened.value(), clock, options);
    REQUIRE(table.ok());
    Played played;
    played.result = runScript(*table.value(), clock, tape, run);
    played.rows = opened.value().store.all();
    return played;
}

}  // namespace

TEST_CASE("Script: the same child plays the same session twice, to the pixel and the sample") {
    Tape tape;
    tape.child = "c-03";
    tape.right_share = 0.7;
    tape.palm_share = 0.3;
    const Played once = play(tape), twice = play(tape);
    REQUIRE(once.result.finished);
    for (const Problem& problem : once.result.problems) FAIL_CHECK(sentence(problem));
    CHECK(once.rows.size() > 15);
    CHECK(once.result.frames_hash == twice.result.frames_hash);
    CHECK(once.result.pictures_hash == twice.result.pictures_hash);
    CHECK(once.result.sound_hash == twice.result.sound_hash);
    CHECK(once.result.steps == twice.result.steps);
    CHECK(once.rows == twice.rows);

    tape.seed = 2;
    const Played other = play(tape);
    CHECK(other.result.frames_hash != once.result.frames_hash);
    CHECK(other.result.sound_hash != once.result.sound_hash);
    CHECK(other.rows != once.rows);
}

TEST_CASE("Script: palms and second fingers change no answer, only a clumsy hand does") {
    Tape tape;
    tape.right_share = 1;
    tape.palm_share = 1;
    tape.drag_share = 0.5;
    tape.width = 800;
    tape.height = 1280;
    const Played played = play(tape);
    REQUIRE(played.result.finished);
    CHECK(played.rows.size() > 15);
    for (const auto& row : played.rows) {
        CAPTURE(row.item);
        CHECK(row.isRight());
        CHECK(row.try_number == 1);
    }
}

TEST_CASE("Script: a picture is left of each place once, with a piece in hand and explained too") {
    const Folder folder;
    std::filesystem::create_directories(folder / "pictures");
    Tape tape;
    tape.child = "c-01";
    tape.right_share = 0.5;
    tape.drag_share = 1;
    tape.width = 640;
    tape.height = 400;
    ScriptRun run;
    run.pictures = folder / "pictures";
    run.picture_prefix = "small-";
    run.each_place_once = true;
    const Played played = play(tape, run);
    REQUIRE(played.result.finished);
    CHECK(played.result.problems.empty());
    for (const char* name : {"badges", "welcome", "sort-asked", "sort-asked-lifted", "sort-explain",
                             "sort-right", "ending"}) {
        CAPTURE(name);
        const auto path = folder / "pictures" / ("small-" + std::string(name) + ".png");
        CHECK(std::count(played.result.files.begin(), played.result.files.end(), path.string()) ==
              1);
        CHECK(std::filesystem::file_size(path) > 10'000);
    }
    CHECK(played.result.places.size() > played.result.files.size());
    const auto files = std::filesystem::directory_iterator(folder / "pictures");
    CHECK(static_cast<std::size_t>(std::distance(begin(files), end(files))) ==
          played.result.files.size());
}

namespace {

/// A child who knows plays every skill of these mechanics, tapping or dragging; how many there are.
int playRightly(std::initializer_list<exercise::Mechanic> mechanics) {
    int skills = 0;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        if (std::find(mechanics.begin(), mechanics.end(), row.mechanic) == mechanics.end())
            continue;
        CAPTURE(row.id);
        Tape tape;
        tape.right_share = 1;
        tape.palm_share = 0.3;
        tape.most_minutes = 1;
        tape.width = ++skills % 2 == 0 ? 640 : 400;
        tape.height = 1040 - tape.width;
        const Played played = play(tape, {}, row.skill);
        for (const Problem& problem : played.result.problems) FAIL_CHECK(sentence(problem));
        CHECK(played.rows.size() > 1);
        for (const auto& answer : played.rows) {
            CHECK(answer.skill == row.id);
            CHECK(answer.isRight());
        }
    }
    return skills;
}

}  // namespace

TEST_CASE("Script: what is picked and sorted is played rightly, all of it drawn") {
    CHECK(playRightly({exercise::Mechanic::pick, exercise::Mechanic::sort}) == 14);
}

TEST_CASE("Script: what is joined, counted, split and changed is played rightly, all of it drawn") {
    using exercise::Mechanic;
    CHECK(playRightly({Mechanic::join, Mechanic::count, Mechanic::split, Mechanic::change}) == 19);
}

TEST_CASE("Table: without its own drawings the game does not start, and names their folder") {
    const Folder folder;
    std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                          std::filesystem::copy_options::recursive);
    auto opened = openClassroom({folder / "classroom"}, {folder / "tablet"}, 1);
    REQUIRE(opened.ok());
    TableOptions options;
    options.window.off_screen = true;
    options.assets = folder / "nowhere";
    const ScriptClock clock;
    const auto table = Table::open(opened.value(), clock, options);
    REQUIRE(table.problems().size() == 1);
    CHECK(table.problems()[0].where.find("nowhere") != std::string::npos);
}
