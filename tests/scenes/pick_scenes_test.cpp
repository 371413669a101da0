#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/exercise/compared.hpp"
#include "game/scenes/pieces.hpp"
#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Item;
using exercise::Mechanic;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using fixtures::Player;
using practice::samples::Folder;

namespace {

const Skill kSoundOf{Unit::letter, Task::sound};

/// Every skill that is picked or sorted.
std::vector<Skill> pickedOrSorted() {
    std::vector<Skill> skills;
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (row.mechanic == Mechanic::pick || row.mechanic == Mechanic::sort)
            skills.push_back(row.skill);
    return skills;
}

/// A child at a pack of one skill, who has touched her badge and seen the example.
struct Alone {
    explicit Alone(Skill skill, ScreenSize screen = {})
        : pack(fixtures::pondPack(skill)), player(folder / "store.db", 1, 7, screen, 3, pack) {
        player.playRightUntil("welcome");
        for (int i = 0; i < 900 && !isAsked(); ++i) {
            if (player.app().place().find(": example") != std::string::npos) {
                example = player.voice().said.back();
                player.tap("example");
            } else if (player.app().rightTouch()) {
                player.tap(*player.app().rightTouch());
            } else {
                player.wait(48);
            }
        }
        REQUIRE(isAsked());
    }
    bool isAsked() const { return player.app().place().find(": asked") != std::string::npos; }
    practice::Response lastRow() const { return player.store().all().back(); }
    const Item& lastItem() const { return pack.items[fixtures::itemAt(pack, lastRow().item)]; }
    std::vector<std::string> saidLast() const {
        std::vector<std::string> clips;
        for (const Spoken& spoken : player.voice().said.back()) clips.push_back(spoken.clip);
        return clips;
    }

    Folder folder;
    pack::Pack pack;
    mutable Player player;
    Utterance example;
};

bool has(const std::vector<std::string>& clips, const std::string& clip) {
    return std::find(clips.begin(), clips.end(), clip) != clips.end();
}

}  // namespace

TEST_CASE("Pick and sort: each skill opens with an example, and asks in words what is to be done") {
    for (const Skill skill : pickedOrSorted()) {
        CAPTURE(exercise::rowOf(skill).id);
        const Alone alone(skill);
        REQUIRE(alone.example.size() > 3);
        const auto asked = alone.saidLast();
        const bool task_is_said =
            std::any_of(asked.begin(), asked.begin() + 2,
                        [](const std::string& clip) { return clip.rfind("phrase:", 0) == 0; });
        CHECK(task_is_said);
        // The example is told before this, and is longer.
        CHECK(alone.example.size() > asked.size());
    }
}

TEST_CASE("Pick and sort: after a miss both are heard, with the part that decides") {
    for (const Skill skill : pickedOrSorted()) {
        for (const bool tall : {false, true}) {
            CAPTURE(exercise::rowOf(skill).id);
            const Alone alone(skill, tall ? ScreenSize{800, 1280, 0} : ScreenSize{});
            alone.player.answerWrong();
            CHECK(alone.player.app().place().find("explain") != std::string::npos);
            const auto heard = alone.saidLast();
            const Item& item = alone.lastItem();
            const Pieces pieces(alone.pack, item);
            const auto chosen = alone.lastRow().chosen;
            std::size_t index = 0;
            while (item.choices[index].id != chosen) ++index;
            for (const Compared& row : pieces.compared(index)) {
                CHECK_FALSE(row.pieces.empty());
                for (const Piece& piece : row.pieces) {
                    if (!piece.clip.empty()) CHECK_MESSAGE(has(heard, piece.clip), piece.clip);
                    if (!piece.part.empty()) CHECK_MESSAGE(has(heard, piece.part), piece.part);
                }
            }
            const auto* right = alone.pack.vocabulary.word(item.choices[item.answer].id);
            if (right != nullptr && skill.task != Task::odd_one_out)
                CHECK(has(heard, exercise::decidingClip(item, *right)));
            CHECK_FALSE(alone.lastRow().means.empty());
            alone.player.playRightUntil(
                exercise::mechanicOf(item) == Mechanic::sort ? "sort: right" : "pick: right");
            CHECK(alone.lastRow().isRight());
            CHECK(alone.lastRow().try_number == 2);
        }
    }
}

TEST_CASE("Pick: all the sounds are said, and touching one says it and answers nothing") {
    const Alone alone(kSoundOf);
    Player& player = alone.player;
    const auto asked = alone.saidLast();
    std::vector<std::string> choices;
    for (const std::string& name : player.app().touchables())
        if (name.rfind("choice:", 0) == 0) choices.push_back(name);
    REQUIRE(choices.size() >= 2);
    for (const std::string& name : choices) CHECK(has(asked, name.substr(7)));
    for (const std::string& name : choices) {
        player.tap(name);
        CHECK(alone.saidLast() == std::vector<std::string>{name.substr(7)});
        CHECK(player.app().place() == "pick: asked chosen");
    }
    CHECK(player.store().all().empty());
    player.tap(choices.back());
    CHECK(player.store().all().size() == 1);
    CHECK(alone.lastRow().chosen == choices.back().substr(7));
}

TEST_CASE("Pick: a sound dragged to the stage answers, one dropped elsewhere comes back") {
    const Alone alone(kSoundOf, {1024, 600, 0});
    Player& player = alone.player;
    player.waitForTouch();
    const std::string right = *player.app().rightTouch();
    player.drag(right, "wren");
    CHECK(player.store().all().empty());
    player.drag(right, "stage");
    REQUIRE(player.store().all().size() == 1);
    CHECK(alone.lastRow().isRight());
}

TEST_CASE("Pick: a letter is not named before the answer, nor is its sound said") {
    for (const Task task : {Task::name, Task::for_sound, Task::both_sounds, Task::digraph}) {
        const Alone alone({Unit::letter, task});
        const auto asked = alone.saidLast();
        alone.player.tap(*alone.player.app().rightTouch());
        const Item& item = alone.lastItem();
        std::set<std::string> parts;
        for (const auto& part : item.parts) parts.insert(part.clip);
        for (const std::string& clip : asked)
            if (clip.rfind("phrase:", 0) != 0) CHECK_MESSAGE(parts.count(clip) == 1, clip);
    }
}

TEST_CASE("Pick: an odd one found, the others are named in the order in which they lie") {
    const Alone alone({Unit::onset_rime, Task::odd_one_out});
    std::vector<std::string> named;
    for (const std::string& name : alone.player.app().touchables())
        if (name.rfind("choice:", 0) == 0) named.push_back("word:" + name.substr(7));
    const std::string right = *alone.player.app().rightTouch();
    alone.player.tap(right);
    std::erase(named, "word:" + right.substr(7));
    named.push_back("word:" + right.substr(7));
    CHECK(alone.saidLast() == named);
}

TEST_CASE("Pick: what is asked about can be heard again by touching it") {
    const Alone alone({Unit::onset_rime, Task::rhyme_judge});
    Player& player = alone.player;
    player.tap("heard:1");
    const auto heard = alone.saidLast();
    CHECK(heard.size() == 1);
    CHECK(player.store().all().empty());
    player.tap(*player.app().rightTouch());
    CHECK(heard.front() == alone.lastItem().parts[1].clip);
    CHECK(alone.lastRow().isRight());
}

TEST_CASE("Sort: words that begin the same follow one another into the same homes") {
    const Alone alone({Unit::phoneme, Task::long_short});
    alone.player.playRightUntil("ending");
    const auto rows = alone.player.store().all();
    REQUIRE(rows.size() > 4);
    int running = 0;
    for (std::size_t i = 1; i < rows.size(); ++i) running += rows[i].choices == rows[i - 1].choices;
    CHECK(running > static_cast<int>(rows.size()) / 2);
}
