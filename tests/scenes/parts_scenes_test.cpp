#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/exercise/change_tiles.hpp"
#include "content/exercise/phrases.hpp"
#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Item;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using fixtures::Player;
using practice::samples::Folder;

namespace {

const Skill kSounds{Unit::phoneme, Task::segment};
const Skill kSwap{Unit::phoneme, Task::substitute};

/// A child at a pack of one skill, who has just touched her badge.
struct Alone {
    explicit Alone(Skill skill, ScreenSize screen = {})
        : pack(fixtures::pondPack(skill)), player(folder / "store.db", 2, 7, screen, 3, pack) {
        player.playRightUntil("welcome");
    }
    const Item& item(const std::string& id) const {
        return *std::find_if(pack.items.begin(), pack.items.end(),
                             [&](const Item& item) { return item.id == id; });
    }
    practice::Response lastRow() { return player.store().all().back(); }
    /// What was said since there were `from` utterances, clip by clip.
    std::vector<std::string> said(std::size_t from) const {
        std::vector<std::string> clips;
        for (std::size_t i = from; i < player.voice().said.size(); ++i)
            for (const auto& spoken : player.voice().said[i]) clips.push_back(spoken.clip);
        return clips;
    }
    bool touches(const std::string& thing) const { return player.app().boxOf(thing).has_value(); }

    Folder folder;
    pack::Pack pack;
    mutable Player player;
};

bool has(const std::vector<std::string>& clips, const std::string& clip) {
    return std::find(clips.begin(), clips.end(), clip) != clips.end();
}

}  // namespace

TEST_CASE("Split: who hears one sound fewer answers so, and then hears every part") {
    Alone alone(kSounds);
    Player& player = alone.player;
    player.playRightUntil("split: asked parted");
    while (player.app().rightTouch() != "done") player.tap(*player.app().rightTouch());
    // Now one box too few, or one too many where two are right.
    if (alone.touches("box:2")) {
        player.drag("box:1", "box:0");
    } else {
        player.tap("box:1");
    }
    const std::size_t before = player.voice().said.size();
    player.tap("done");
    CHECK(player.app().place() == "split: explain");
    const auto row = alone.lastRow();
    CHECK(row.skill == "phoneme.segment");
    CHECK(row.chosen != row.right);
    CHECK_FALSE(row.means.empty());
    CHECK(row.try_number == 1);
    const auto clips = alone.said(before);
    for (const auto& part : alone.item(row.item).parts) CHECK(has(clips, part.clip));
    player.playRightUntil("split: right");
    CHECK(alone.lastRow().try_number == 2);
    CHECK(alone.lastRow().isRight());
}

TEST_CASE("Split: nothing of what is in the boxes is said before the answer") {
    Alone alone(kSounds);
    Player& player = alone.player;
    player.playRightUntil("split: asked");  // the example is over
    player.wait(4'000);
    const std::size_t before = player.voice().said.size();
    for (int i = 0; i < 6; ++i) player.tap("box:0");
    CHECK(alone.touches("box:4"));
    CHECK_FALSE(alone.touches("box:5"));
    player.tap("whole");
    CHECK_FALSE(alone.touches("box:1"));
    CHECK_FALSE(alone.touches("done"));
    player.tap("replay");
    player.tap("example");
    player.wait(8'000);
    for (const auto& clip : alone.said(before + 1)) CHECK(clip.rfind("sound:", 0) != 0);
}

TEST_CASE("Split: a leaf parts by pulling, and boxes go together by bringing") {
    Alone alone(kSounds, {800, 1280, 0});
    Player& player = alone.player;
    player.playRightUntil("split: asked");
    player.drag("box:0", "apart");
    CHECK(alone.touches("box:1"));
    player.drag("box:1", "apart");
    CHECK(alone.touches("box:2"));
    player.drag("box:2", "box:1");
    CHECK_FALSE(alone.touches("box:2"));
    player.drag("box:0", "box:0");
    CHECK(alone.touches("box:1"));
    CHECK(player.store().all().empty());
}

TEST_CASE("Example: a new skill opens with another word, on the first day and never again") {
    const std::pair<Skill, std::string> opened[] = {{kSounds, "split"},
                                                    {kSwap, "change"},
                                                    {{Unit::syllable, Task::count}, "count"},
                                                    {{Unit::sentence, Task::count}, "count"},
                                                    {{Unit::letter, Task::build}, "join"}};
    for (const auto& [skill, mechanic] : opened) {
        CAPTURE(exercise::rowOf(skill).id);
        Alone alone(skill);
        Player& player = alone.player;
        for (int i = 0; i < 400 && player.app().place() != mechanic + ": example"; ++i)
            player.app().rightTouch() ? player.tap(*player.app().rightTouch()) : player.wait(48);
        REQUIRE(player.app().place() == mechanic + ": example");
        CHECK_MESSAGE(!player.app().rightTouch(), "nothing is asked meanwhile");
        const auto told = player.voice().said.back();
        CHECK(told.size() > 5);
        CHECK(player.waitForTouch());
        player.tap("replay");
        CHECK(player.app().place() == mechanic + ": example");
        CHECK(player.voice().said.back().size() == told.size());
        player.tap("example");
        CHECK_MESSAGE(player.app().place() == mechanic + ": asked", "a touch is enough of it");

        player.playRightUntil(mechanic + ": right");
        const auto row = alone.lastRow();
        for (const Spoken& spoken : told) {
            if (spoken.clip == exercise::phraseClip(exercise::phrase::kNowYou)) break;
            CHECK(spoken.clip != exercise::wordClip(row.asked));
            CHECK(spoken.clip != exercise::wordClip(row.right));
        }
        std::set<std::string> places;
        for (int i = 0; i < 2'000 && player.store().all().size() < 3; ++i) {
            player.app().rightTouch() ? player.tap(*player.app().rightTouch()) : player.wait(48);
            places.insert(player.app().place());
        }
        CHECK(player.store().all().size() == 3);
        CHECK(places.count(mechanic + ": example") == 0);
    }
}

TEST_CASE("Change: whatever a tile of the asked word says can be heard") {
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        if (row.mechanic != exercise::Mechanic::change) continue;
        const pack::Pack pack = fixtures::pondPack(row.skill);
        for (const Item& item : pack.items)
            for (const auto& part : exercise::changeTiles(item, pack.vocabulary).after) {
                CAPTURE(item.id);
                CAPTURE(part.clip);
                CHECK(pack.clip(part.clip) != nullptr);
            }
    }
}

TEST_CASE("Change: tapped or dragged, the tile goes and the picture is picked") {
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        if (row.mechanic != exercise::Mechanic::change) continue;
        for (const bool drags : {false, true}) {
            CAPTURE(row.id);
            CAPTURE(drags);
            Alone alone(row.skill, drags ? ScreenSize{800, 1280, 0} : ScreenSize{});
            Player& player = alone.player;
            player.playRightUntil("change: asked");
            player.waitForTouch();
            const std::string piece = *player.app().rightTouch();
            CHECK(piece == (row.skill.task == Task::remove ? "loose" : "new"));
            if (!drags)
                player.tap(piece);
            else if (piece == "loose")
                player.drag("loose", "away");
            else
                player.drag("new", row.skill.task == Task::add ? "gap" : "loose");
            CHECK(player.app().place() == "change: asked changed");
            player.answerWrong();
            CHECK(player.app().place() == "change: explain");
            CHECK(alone.lastRow().skill == row.id);
            CHECK_FALSE(alone.lastRow().means.empty());
            player.playRightUntil("change: right");
            CHECK(alone.lastRow().isRight());
        }
    }
}

TEST_CASE("Change: what comes out is not said in parts before a first answer") {
    Alone alone(kSwap);
    Player& player = alone.player;
    player.playRightUntil("change: asked");
    player.tap("replay");
    player.tap("example");
    const std::size_t before = player.voice().said.size();
    const std::string tile = alone.touches("tile:0") ? "tile:0" : "tile:1";
    player.tap(tile);
    player.tap(*player.app().rightTouch());
    player.tap(tile);
    player.wait(9'000);
    std::set<std::string> sounds;
    for (const auto& clip : alone.said(before))
        if (clip.rfind("sound:", 0) == 0) sounds.insert(clip);
    player.playRightUntil("change: right");
    const Item& item = alone.item(alone.lastRow().item);
    CHECK(sounds == std::set<std::string>{item.parts[1].clip, item.parts[2].clip});
}

TEST_CASE("Change: compounds follow one another back to the first in one round") {
    Alone alone({Unit::compound, Task::substitute});
    Player& player = alone.player;
    int longest = 0, closed = 0, links = 0;
    for (int i = 0; i < 6'000 && player.app().place() != "ending"; ++i)
        player.app().rightTouch() ? player.tap(*player.app().rightTouch()) : player.wait(48);
    const auto rows = player.store().all();
    std::string first;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const bool goes_on = i > 0 && rows[i].asked == rows[i - 1].right && links > 0;
        links = goes_on ? links + 1 : 1;
        if (!goes_on) first = rows[i].asked;
        longest = std::max(longest, links);
        if (links > 1 && rows[i].right == first) {
            closed += links >= 3 ? 1 : 0;  // there and straight back is not meant
            links = 0;
        }
    }
    CHECK(rows.size() > 5);
    CHECK(longest >= 3);
    CHECK(closed >= 1);
}

TEST_CASE("Count: the beats of a word are counted beside its picture, on five pads") {
    Alone alone({Unit::syllable, Task::count});
    Player& player = alone.player;
    player.playRightUntil("count: asked");
    CHECK(alone.touches("pad:4"));
    CHECK_FALSE(alone.touches("pad:5"));
    player.playRightUntil("count: right");
    CHECK(alone.lastRow().skill == "syllable.count");
    CHECK(alone.lastRow().isRight());
}

TEST_CASE("Join: a word is built of its letters, and its picture picked") {
    Alone alone({Unit::letter, Task::build});
    Player& player = alone.player;
    player.playRightUntil("join: asked");
    player.playRightUntil("join: right");
    CHECK(alone.lastRow().skill == "letter.build");
    CHECK(alone.lastRow().isRight());
}
