#include "content/exercise/skill.hpp"

#include <doctest/doctest.h>

#include <set>

#include "content/exercise/item.hpp"
#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"

using namespace wrenlet::exercise;

TEST_CASE("Every skill is found by its id and stands in the table once") {
    std::set<std::string_view> ids;
    for (const SkillRow& row : skillTable()) {
        ids.insert(row.id);
        CHECK(skillFromId(row.id) == row.skill);
        CHECK(&rowOf(row.skill) == &row);
    }
    CHECK(ids.size() == skillTable().size());
    CHECK_FALSE(skillFromId("phoneme.sing").has_value());
}

// Common Core State Standards, Reading: Foundational Skills (2010): RF.K.2.a rhyme, .b syllables,
// .c onset and rime, RF.1.2.b blending sounds. Compounds and spoken words carry no letter.
TEST_CASE("Skills carry the standard's code, or none where it names none") {
    const auto code = [](std::string_view id) { return rowOf(*skillFromId(id)).standard; };
    CHECK(code("onset-rime.rhyme-sort") == "RF.K.2.a");
    CHECK(code("syllable.blend") == "RF.K.2.b");
    CHECK(code("onset-rime.blend") == "RF.K.2.c");
    CHECK(code("phoneme.blend") == "RF.1.2.b");
    CHECK(code("compound.blend").empty());
    CHECK(code("sentence.count").empty());
}

TEST_CASE("Positions go by name, there and back") {
    for (const Position position : {Position::first, Position::middle, Position::last,
                                    Position::rime, Position::whole, Position::word_count})
        CHECK(positionFromId(positionId(position)) == position);
    CHECK(positionId(positionFromId("sideways")) != "sideways");
}

TEST_CASE("Clips are named by what is heard") {
    using wrenlet::speech::Phoneme;
    CHECK(wordClip("bow~rain") == "word:bow~rain");
    CHECK(soundClip(Phoneme::ch) == "sound:tʃ");
    CHECK(partClip({{Phoneme::ae}, {Phoneme::t}}) == "part:æt");
    CHECK(spokenClip("The") == spokenClip("the"));
}

TEST_CASE("Every phrase has a clip's text, once, and none calls a child wrong") {
    std::set<std::string_view> ids;
    for (const Phrase& phrase : phraseTable()) {
        ids.insert(phrase.id);
        CHECK_FALSE(phrase.text.empty());
        for (const std::string_view word : {"wrong", "no,", "bad ", "not right", "fail"})
            CHECK(phrase.text.find(word) == std::string_view::npos);
    }
    CHECK(ids.size() == phraseTable().size());
    CHECK(ids.count(phrase::kSortAsk) == 1);
    CHECK(ids.count(phrase::kNextChild) == 1);
}
