// Whatever a teacher does to a unit can be taken back, to the last byte.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "content/common/random.hpp"
#include "content/exercise/skill.hpp"
#include "editor/unit/history.hpp"

namespace wrenlet::desk {

namespace {

pack::UnitWord wordOf(const std::string& text) {
    pack::UnitWord word;
    word.text = text;
    return word;
}

pack::Unit small() {
    pack::Unit unit;
    unit.id = "reeds";
    unit.title = "Reeds";
    for (const char* text : {"duck", "frog", "pond"}) unit.words.push_back(wordOf(text));
    unit.sentences = {{"s-1", "The duck sits.", 0}};
    return unit;
}

/// Any change that a unit can have, of what it holds now.
class Whims {
  public:
    explicit Whims(std::uint64_t seed) : random_(seed) {}

    Edit next(const pack::Unit& unit) {
        switch (below(10)) {
            case 0:
                return PutWord{"", fresh(), below(unit.words.size() + 2)};
            case 1:
                if (unit.words.empty()) break;
                return PutWord{anyWord(unit), std::nullopt, 0};
            case 2:
                if (unit.words.empty()) break;
                return PutWord{anyWord(unit), fresh(), below(unit.words.size())};
            case 3: {
                if (unit.words.empty()) break;
                pack::UnitWord word = unit.words[below(unit.words.size())];
                word.picture = "picture-" + std::to_string(below(9));
                word.kept.push_back("code-" + std::to_string(below(9)));
                return PutWord{pack::wordId(word), word, below(unit.words.size())};
            }
            case 4:
                return PutSentence{
                    "",
                    pack::UnitSentence{"s-" + std::to_string(++number_ + 1000), "A duck swims.", 0},
                    below(unit.sentences.size() + 1)};
            case 5:
                if (unit.sentences.empty()) break;
                return PutSentence{unit.sentences[below(unit.sentences.size())].id, {}, 0};
            case 6:
                return PutSkillOff{
                    std::string(exercise::skillTable()[below(exercise::skillTable().size())].id),
                    below(2) == 0};
            case 7:
                return PutItemOff{"item-" + std::to_string(below(40)), below(2) == 0};
            case 8: {
                constexpr const char* kSounds[] = {"m", "s", "tʃ", "æ"};
                return PutFocusSound{kSounds[below(4)], below(2) == 0};
            }
            default:
                break;
        }
        pack::UnitRecording recording{"word:" + std::to_string(below(20)),
                                      "take-1.flac",
                                      "duck",
                                      100,
                                      200 + static_cast<std::int64_t>(below(1000)),
                                      {}};
        if (below(3) == 0) return PutRecording{recording.clip, std::nullopt};
        return PutRecording{recording.clip, recording};
    }

  private:
    pack::UnitWord fresh() {
        ++number_;
        return wordOf("word" + std::string(1 + number_ % 30, 'a') + std::string(number_ / 30, 'b'));
    }
    std::string anyWord(const pack::Unit& unit) {
        return pack::wordId(unit.words[below(unit.words.size())]);
    }

    std::size_t below(std::size_t bound) {
        return random_.below(static_cast<std::uint32_t>(bound));
    }

    Random random_;
    std::size_t number_ = 0;
};

}  // namespace

TEST_CASE("A thousand edits of any kind, taken back, give the same unit byte for byte") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        pack::Unit unit = inOrder(small());
        const std::string before = pack::writeUnit(unit);
        History history;
        Whims whims(seed);
        Random random(seed + 1000);
        std::size_t edits = 0;
        while (edits < 1000) {
            Action action{"something", {}};
            pack::Unit trial = unit;
            for (std::size_t i = 0, many = 1 + random.below(4); i < many; ++i) {
                action.edits.push_back(whims.next(trial));
                apply(trial, action.edits.back());
            }
            edits += action.edits.size();
            history.act(unit, action);
            REQUIRE(unit == trial);
            // back and forth on the way
            for (std::size_t back = random.below(4); back > 0; --back) history.undo(unit);
            if (random.below(2) == 0)
                while (history.redo(unit)) {
                }
        }
        const std::string after = pack::writeUnit(unit);
        CHECK(after != before);
        std::size_t undone = 0;
        while (history.undo(unit)) ++undone;
        CHECK(pack::writeUnit(unit) == before);
        for (std::size_t i = 0; i < undone; ++i) history.redo(unit);
        CHECK(pack::writeUnit(unit) == after);
    }
}

TEST_CASE("What was undone is forgotten once something else is done") {
    pack::Unit unit = inOrder(small());
    History history;
    history.act(unit, {"frog taken out.", {PutWord{"frog", {}, 0}}});
    CHECK(history.lastDone() == "frog taken out.");
    REQUIRE(history.undo(unit));
    CHECK(history.nextRedo() == "frog taken out.");
    history.act(unit, {"pond taken out.", {PutWord{"pond", {}, 0}}});
    CHECK_FALSE(history.canRedo());
    CHECK(unit.words.size() == 2);
    CHECK(unit.words[1].text == "frog");
}

TEST_CASE("A unit is read as it was written, recordings and what is left out with it") {
    pack::Unit unit = small();
    unit.words[0].not_for = {"phoneme.segment"};
    unit.words[0].kept = {"ends-in-ks"};
    unit.words[1].sense = "animal";
    unit.words[1].sounds = {"f", "ɹ", "ˈɑ", "ɡ"};
    unit.accents = {speech::Accent::pin_pen};
    unit.skills_off = {"letter.name"};
    unit.focus_sounds = {"m", "s"};
    unit.items_off = {"phoneme.blend/cat/bee+cat+hat"};
    unit.recordings = {{"word:duck", "take-0001.flac", "duck", 120'000, 560'000, {"added-vowel"}}};
    unit = inOrder(unit);
    const std::string json = pack::writeUnit(unit);
    const Result<pack::Unit> read = pack::readUnit(json, "unit.json");
    REQUIRE(read.ok());
    CHECK(read.problems().empty());
    pack::Unit again = inOrder(read.value());
    again.where.clear();
    CHECK(again == unit);
    CHECK(pack::writeUnit(again) == json);
}

TEST_CASE("A recording that cannot be, and a skill that is not known, are left out and told") {
    const Result<pack::Unit> read = pack::readUnit(
        R"({"format":"wrenlet unit","format_version":1,"id":"a","title":"A","words":["duck"],
            "skills_off":["phoneme.fly"],
            "recordings":[{"clip":"word:duck","take":"../x.flac","from_us":0,"to_us":5},
                          {"clip":"word:duck","take":"x.flac","from_us":5,"to_us":5},
                          {"clip":"word:duck","take":"x.flac","from_us":5,"to_us":9},
                          {"clip":"word:duck","take":"y.flac","from_us":5,"to_us":9}]})",
        "unit.json");
    REQUIRE(read.ok());
    CHECK(read.value().skills_off.empty());
    REQUIRE(read.value().recordings.size() == 1);
    CHECK(read.value().recordings.front().take == "x.flac");
    CHECK(read.problems().size() == 4);
}

TEST_CASE("Items of skills, words and single items that are left out are not in the unit") {
    const auto item = [](exercise::Task task, const std::string& subject) {
        exercise::Item made;
        made.skill = {exercise::Unit::phoneme, task};
        made.subject = subject;
        made.choices = {{subject, ""}, {"pond", ""}};
        made.parts = {{"word:frog", "frog"}};
        made.id = exercise::itemId(made);
        return made;
    };
    using exercise::Task;
    const std::vector<exercise::Item> all = {item(Task::blend, "duck"), item(Task::blend, "bee"),
                                             item(Task::segment, "duck")};
    pack::Unit unit = small();
    CHECK(pack::withoutLeftOut(all, unit).size() == 3);
    unit.words[0].not_for = {"phoneme.blend"};
    CHECK(pack::withoutLeftOut(all, unit).size() == 2);
    unit.words[2].not_for = {"phoneme.blend"};  // pond is a choice of the other
    CHECK(pack::withoutLeftOut(all, unit).size() == 1);
    unit.words[1].not_for = {"phoneme.segment"};  // frog is heard in it
    CHECK(pack::withoutLeftOut(all, unit).empty());
    pack::Unit items_off = small();
    items_off.items_off = {all[1].id};
    CHECK(pack::withoutLeftOut(all, items_off).size() == 2);
    items_off.skills_off = {"phoneme.blend"};
    CHECK(pack::withoutLeftOut(all, items_off).size() == 1);
}

}  // namespace wrenlet::desk
