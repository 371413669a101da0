#include "content/exercise/skill.hpp"

#include <doctest/doctest.h>

#include <map>
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

// Common Core State Standards, Reading: Foundational Skills (2010): RF.K.1.d letters' names;
// RF.K.2.a rhyme; .b count, blend, segment syllables; .c blend, segment onset and rime; .d isolate
// the sounds of CVC words; .e add or substitute sounds; RF.K.3.a consonants' sounds; .b both sounds
// of the vowels; RF.1.2.a long and short vowels; .b blend; .d segment; RF.1.3.a digraphs; .b
// decode. Compounds, spoken words, taking away, and adding syllables carry no letter.
TEST_CASE("Skills carry the standard's code, or none where it names none") {
    const std::map<std::string_view, std::string_view> codes = {
        {"sentence.count", ""},
        {"sentence.tune", ""},
        {"compound.blend", ""},
        {"compound.segment", ""},
        {"compound.add", ""},
        {"compound.delete", ""},
        {"compound.substitute", ""},
        {"syllable.count", "RF.K.2.b"},
        {"syllable.blend", "RF.K.2.b"},
        {"syllable.segment", "RF.K.2.b"},
        {"syllable.add", ""},
        {"syllable.delete", ""},
        {"onset-rime.blend", "RF.K.2.c"},
        {"onset-rime.segment", "RF.K.2.c"},
        {"onset-rime.rhyme-judge", "RF.K.2.a"},
        {"onset-rime.rhyme-sort", "RF.K.2.a"},
        {"onset-rime.odd-one-out", "RF.K.2.a"},
        {"onset-rime.rhyme-pick", "RF.K.2.a"},
        {"phoneme.first", "RF.K.2.d"},
        {"phoneme.last", "RF.K.2.d"},
        {"phoneme.middle", "RF.K.2.d"},
        {"phoneme.blend", "RF.1.2.b"},
        {"phoneme.segment", "RF.1.2.d"},
        {"phoneme.add", "RF.K.2.e"},
        {"phoneme.delete", ""},
        {"phoneme.substitute", "RF.K.2.e"},
        {"phoneme.long-short", "RF.1.2.a"},
        {"letter.name", "RF.K.1.d"},
        {"letter.sound", "RF.K.3.a"},
        {"letter.both-sounds", "RF.K.3.b"},
        {"letter.for-sound", "RF.K.3.a-b"},
        {"letter.digraph", "RF.1.3.a"},
        {"letter.build", "RF.1.3.b"},
    };
    CHECK(codes.size() == skillTable().size());
    for (const auto& [id, code] : codes) {
        CAPTURE(std::string(id));
        REQUIRE(skillFromId(id).has_value());
        CHECK(rowOf(*skillFromId(id)).standard == code);
    }
}

TEST_CASE("Positions go by name, there and back") {
    for (const Position position :
         {Position::first, Position::middle, Position::last, Position::rime, Position::whole,
          Position::word_count, Position::count, Position::first_part, Position::last_part,
          Position::tune, Position::letter})
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
