// What the desk sees in a unit, and what it asks the teacher to decide.
#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/random.hpp"
#include "editor/unit/unit_at_work.hpp"
#include "editor/unit/unit_look.hpp"
#include "tests/desk/library.hpp"

namespace wrenlet::desk {

namespace {

UnitLook lookOf(const pack::Unit& unit) {
    return lookAt(unit,
                  {library().known, library().blocked, [](const std::string&) { return true; }});
}

UnitAtWork workWith(const char* words) {
    UnitAtWork work{pack::Unit{}};
    CHECK(work.add(words, "words", library().known).empty());
    return work;
}

const ToLookAt* told(const UnitLook& look, const char* word, std::string_view code) {
    const WordLook* found = look.word(word);
    REQUIRE(found != nullptr);
    for (const ToLookAt& todo : found->to_look_at)
        if (todo.code == code) return &todo;
    return nullptr;
}

}  // namespace

TEST_CASE("Each word shows how it is said, in IPA and in plain letters, and its parts") {
    const UnitLook look = lookOf(workWith("fox, rabbit, rainbow, goat").unit());
    REQUIRE(look.words.size() == 4);
    CHECK(look.words[0].ipa == "f ɑ k s");
    CHECK(look.words[0].respelled == "foks");
    CHECK(look.words[0].parts.empty());
    CHECK(look.words[1].parts == "rab · bit");
    CHECK(look.words[2].parts == "rain · bow");
    CHECK(look.words[3].respelled == "goht");
}

TEST_CASE("A word serves a skill when it is asked there, as rhymes are") {
    const UnitLook look = lookOf(workWith("cat, hat, pen, dog, log").unit());
    const auto rhyme = static_cast<std::size_t>(WordGroup::rhyme);
    CHECK(look.word("cat")->serves[rhyme]);
    CHECK_FALSE(look.word("pen")->serves[rhyme]);
    CHECK(look.words_serving[rhyme] == 4);
    const auto& good = look.word("cat")->good_for;
    CHECK(std::find(good.begin(), good.end(), "Rhyme: hat") != good.end());
    CHECK(look.word("pen")->not_asked.front() == "Rhyme: nothing here rhymes with it");
}

TEST_CASE("Left out of a column, a word serves it no more, and undo brings it back") {
    UnitAtWork work = workWith("cat, hat, pen, dog, log");
    const auto join = static_cast<std::size_t>(WordGroup::join);
    REQUIRE(lookOf(work.unit()).word("cat")->serves[join]);
    work.leaveOutOf("cat", skillsOf(WordGroup::join), "Join");
    CHECK_FALSE(lookOf(work.unit()).word("cat")->serves[join]);
    CHECK(lookOf(work.unit()).word("cat")->left_out[join]);
    REQUIRE(work.undo());
    CHECK(lookOf(work.unit()).word("cat")->serves[join]);
}

TEST_CASE("A word that nobody knows is offered the nearest word, a guess, or to be taken out") {
    UnitAtWork work = workWith("frohg, tree");
    const UnitLook look = lookOf(work.unit());
    const ToLookAt* todo = told(look, "frohg", "unknown");
    REQUIRE(todo != nullptr);
    REQUIRE(todo->ways.size() == 3);
    CHECK(todo->ways[0].text == "Change to frog");
    CHECK(todo->ways[1].kind == WayOut::Kind::say);
    REQUIRE(work.respell("frohg", todo->ways[0].value, library().known));
    CHECK(lookOf(work.unit()).to_look_at == 0);
    CHECK(work.word("frog")->picture == "frog");
}

TEST_CASE("A word with several meanings is asked about, and told no more when one is chosen") {
    UnitAtWork work = workWith("bow, cat");
    const UnitLook look = lookOf(work.unit());
    const ToLookAt* todo = told(look, "bow", kSeveralSenses);
    REQUIRE(todo != nullptr);
    REQUIRE(todo->ways.size() >= 2);
    const auto chosen = std::find_if(todo->ways.begin(), todo->ways.end(),
                                     [](const WayOut& way) { return way.value == "bow~rain"; });
    REQUIRE(chosen != todo->ways.end());
    REQUIRE(work.chooseSense("bow", "bow~rain", library().known));
    const UnitLook after = lookOf(work.unit());
    CHECK(after.word("bow") == nullptr);
    REQUIRE(after.word("bow~rain") != nullptr);
    CHECK(told(after, "bow~rain", kSeveralSenses) == nullptr);
}

TEST_CASE("A warning that is kept so is silent, for that word alone") {
    UnitAtWork work = workWith("mouse, rat, hen, chicken");
    UnitLook look = lookOf(work.unit());
    REQUIRE(told(look, "rat", "looks-alike") != nullptr);
    REQUIRE(look.to_look_at == 2);
    work.keepWarning("rat", "looks-alike");
    look = lookOf(work.unit());
    CHECK(told(look, "rat", "looks-alike") == nullptr);
    CHECK(look.to_look_at == 1);
}

TEST_CASE("A word that the dictionary has may be a slip all the same") {
    // "duk" is a surname there
    UnitAtWork work = workWith("duk, pond");
    const UnitLook look = lookOf(work.unit());
    const ToLookAt* todo = told(look, "duk", "no-picture");
    REQUIRE(todo != nullptr);
    REQUIRE(todo->ways.size() == 3);
    CHECK(todo->ways[1].text == "Change to duck");
}

TEST_CASE("A unit of words that children know asks for few decisions, one word in eight at most") {
    // a list in which every other word is marked is a list that nobody reads
    std::vector<std::string> listed;
    for (const exercise::Word& word : library().known.classroom().words)
        if (!word.picture.empty() && word.id == word.text) listed.push_back(word.text);
    REQUIRE(listed.size() > 300);
    Random random(7);
    std::size_t words = 0, marked = 0;
    for (int unit = 0; unit < 12; ++unit) {
        random.shuffle(listed);
        UnitAtWork work{pack::Unit{}};
        std::string typed;
        for (std::size_t i = 0; i < 40; ++i) typed += listed[i] + "\n";
        work.add(typed, "words", library().known);
        const UnitLook look = lookOf(work.unit());
        words += look.words.size();
        marked += look.to_look_at;
    }
    MESSAGE(marked << " of " << words << " words to look at");
    CHECK(marked * 8 <= words);
}

}  // namespace wrenlet::desk
