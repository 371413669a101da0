#include "content/exercise/lint.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <string>

#include "content/common/files.hpp"
#include "content/exercise/classroom_sentences.hpp"
#include "content/exercise/classroom_words.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/list_lines.hpp"
#include "tests/fixtures/dictionary.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

using Codes = std::set<std::string>;

Codes codesOf(const std::vector<Lint>& found) {
    Codes codes;
    for (const Lint& lint : found) {
        codes.insert(lint.code);
        CHECK_FALSE(lint.why.empty());
        CHECK_FALSE(lint.way_out.empty());
        CHECK_FALSE(lint.words.empty());
    }
    return codes;
}

/// The codes of one word that has a picture.
Codes ofWord(const char* text, const LintRules& rules = {}) {
    const Vocabulary vocabulary = fixtures::vocabularyOf({text});
    INFO(text);
    return codesOf(lintWord(vocabulary.words.front(), vocabulary, rules));
}

Codes together(std::initializer_list<const char*> words, const LintRules& rules = {}) {
    return codesOf(lintTogether(fixtures::vocabularyOf(words), rules));
}

std::string listText(const char* name) {
    const std::filesystem::path words = std::filesystem::path(WRENLET_TEST_SHARE) / "words";
    const auto text = readWhole(words / name, kMostListBytes);
    REQUIRE(text.ok());
    return text.value();
}

const Vocabulary& classroom() {
    static const Vocabulary kClassroom = [] {
        const auto listed = readClassroomWords(listText("classroom.tsv"), "classroom.tsv");
        REQUIRE(listed.ok());
        auto said = saidAloud(listed.value(), fixtures::dictionary(), "classroom.tsv");
        REQUIRE(said.ok());
        Vocabulary vocabulary{std::move(said.value()), {}};
        const auto sentences = readClassroomSentences(listText("sentences.tsv"), "sentences.tsv");
        REQUIRE(sentences.ok());
        for (const ClassroomSentence& one : sentences.value())
            vocabulary.sentences.push_back(one.sentence);
        return vocabulary;
    }();
    return kClassroom;
}

bool standsIn(const std::string& id, const std::vector<Item>& items) {
    return std::any_of(items.begin(), items.end(), [&id](const Item& item) {
        return item.subject == id ||
               std::any_of(item.choices.begin(), item.choices.end(),
                           [&id](const Choice& choice) { return choice.id == id; }) ||
               std::any_of(item.parts.begin(), item.parts.end(),
                           [&id](const Part& part) { return part.clip == wordClip(id); });
    });
}

}  // namespace

TEST_CASE("Lint: a clean word has no warning") {
    for (const char* word : {"cat", "sun", "pig", "map", "bed", "goat", "fish", "banana", "duck"})
        CHECK(ofWord(word) == Codes{});
}

// The words that mislead are those of the project's own count of classroom words; see
// spelling_test.cpp.
TEST_CASE("Lint: a word whose first letter misleads") {
    for (const char* word : {"knee", "phone", "giraffe", "one"})
        CHECK(ofWord(word) == Codes{"first-letter-misleads"});
}

// RF.K.2.d, Common Core State Standards (2010): CVC words, "not including CVCs ending with /l/,
// /r/, or /x/". The letter x is the two sounds /ks/.
TEST_CASE("Lint: bell, car and fox are what the standard leaves out") {
    CHECK(ofWord("bell") == Codes{"vowel-before-l-or-r"});
    CHECK(ofWord("car") == Codes{"vowel-before-l-or-r"});
    CHECK(ofWord("bird") == Codes{"vowel-before-l-or-r"});
    CHECK(ofWord("fox") == Codes{"ends-in-ks"});
    CHECK(ofWord("socks") == Codes{"ends-in-ks"});
    CHECK(ofWord("leg") == Codes{});
    CHECK(ofWord("tiger") == Codes{});
}

TEST_CASE("Lint: a word that an accent says with another sound") {
    CHECK(ofWord("pen") == Codes{"accent-dependent"});
    CHECK(ofWord("bath") == Codes{});
    LintRules stopping;
    stopping.accents = {speech::Accent::th_stopping};
    CHECK(ofWord("bath", stopping) == Codes{"accent-dependent"});
    CHECK(ofWord("pen", stopping) == Codes{});
}

TEST_CASE("Lint: a word with one beat or two") {
    CHECK(ofWord("towel").count("count-varies") == 1);
    CHECK(ofWord("fire").count("count-varies") == 1);
}

TEST_CASE("Lint: a word without a picture, unless it is a compound's part") {
    Vocabulary vocabulary = fixtures::vocabularyOf({"sun", "light", "sun+light"});
    vocabulary.words[0].picture.clear();
    CHECK(codesOf(lintWord(vocabulary.words[0], vocabulary, {})) == Codes{});
    vocabulary.words[2].picture.clear();
    CHECK(codesOf(lintWord(vocabulary.words[2], vocabulary, {})) == Codes{"no-picture"});
}

TEST_CASE("Lint: a word that nothing says how to say has that warning alone") {
    const Word word{"blorb", "blorb", {}, {}, ""};
    CHECK(codesOf(lintWord(word, {}, {})) == Codes{"unknown"});
}

TEST_CASE("Lint: what is left when a word is taken apart is asked about, and the word is not") {
    const auto unfit = [](const char* text) {
        LintRules rules;
        rules.is_rude = [bad = fixtures::said(text)](const speech::Pronunciation& sounds) {
            return speech::sameSounds(sounds, bad);
        };
        return rules;
    };
    CHECK(ofWord("snail", unfit("nail")).count("rude-remainder") == 1);
    CHECK(ofWord("tent", unfit("ten")).count("rude-remainder") == 1);
    CHECK(ofWord("stop", unfit("op")).count("rude-remainder") == 1);
    CHECK(ofWord("basket", unfit("kit")).count("rude-remainder") == 0);
    CHECK(ofWord("window", unfit("win")).count("rude-remainder") == 1);
    CHECK(ofWord("nail", unfit("nail")).count("rude-remainder") == 0);
    const Vocabulary compound = fixtures::vocabularyOf({"light", "sun", "sun+light"});
    CHECK(codesOf(lintWord(compound.words[2], compound, unfit("light"))) ==
          Codes{"rude-remainder"});
}

TEST_CASE("Lint: a word that is unfit itself is said to be, by its sounds or its letters") {
    LintRules rules;
    rules.is_rude = [](const speech::Pronunciation& sounds) {
        return speech::sameSounds(sounds, fixtures::said("nail"));
    };
    rules.is_rude_written = [](std::string_view word) { return word == "kite"; };
    CHECK(ofWord("nail", rules).count("rude") == 1);
    CHECK(ofWord("kite", rules).count("rude") == 1);
    CHECK(ofWord("snail", rules).count("rude") == 0);
    CHECK(ofWord("sun", rules).empty());
}

TEST_CASE("Lint: words that have nothing to do with each other give no warning together") {
    CHECK(together({"cat", "hat", "sun", "goat", "banana"}) == Codes{});
    CHECK(lintTogether({}, {}).empty());
}

TEST_CASE("Lint: two words with one picture, and two whose pictures look alike") {
    Vocabulary vocabulary = fixtures::vocabularyOf({"map", "sun", "cat"});
    vocabulary.words[1].picture = "map";
    const auto found = lintTogether(vocabulary, {});
    REQUIRE(found.size() == 1);
    CHECK(found[0].code == "shared-picture");
    CHECK(found[0].words == std::vector<std::string>{"map", "sun"});
    CHECK(together({"dog", "puppy", "cat"}) == Codes{"looks-alike"});
}

TEST_CASE("Lint: words that are said alike") {
    CHECK(together({"sun", "son", "cat"}) == Codes{"said-alike"});
}

TEST_CASE("Lint: words that an accent makes one, or makes rhyme") {
    const auto alike = lintTogether(fixtures::vocabularyOf({"pin", "pen", "cat"}), {});
    REQUIRE(alike.size() == 1);
    CHECK(alike[0].code == "accent-dependent");
    CHECK(alike[0].why.find("said alike") != std::string::npos);
    const auto rhyming = lintTogether(fixtures::vocabularyOf({"hen", "pin", "cat"}), {});
    REQUIRE(rhyming.size() == 1);
    CHECK(rhyming[0].words == std::vector<std::string>{"hen", "pin"});
    CHECK(rhyming[0].why.find("rhyme") != std::string::npos);
    LintRules none;
    none.accents.clear();
    CHECK(together({"pin", "pen", "hen"}, none) == Codes{});
}

TEST_CASE("Lint: a cluster among single consonants, and no warning where clusters are at home") {
    const auto found = lintTogether(fixtures::vocabularyOf({"sun", "sit", "stop", "cat"}), {});
    REQUIRE(found.size() == 1);
    CHECK(found[0].code == "cluster-among-singles");
    CHECK(found[0].words == std::vector<std::string>{"stop"});
    CHECK(together({"stop", "frog", "plane", "sun"}) == Codes{});
}

TEST_CASE("Lint: enough words for a skill, and too few") {
    CHECK_FALSE(lintSkill(fixtures::pond(), {Unit::phoneme, Task::first}, classroom(), {}));
    const auto few = lintSkill(fixtures::vocabularyOf({"cat", "hat"}),
                               {Unit::onset_rime, Task::rhyme_pick}, classroom(), {});
    REQUIRE(few.has_value());
    CHECK(few->code == "too-few-words");
    CHECK(few->why == "These words give no question for \"Pick the rhyme\".");
    CHECK_FALSE(few->suggestions.empty());
}

TEST_CASE("Lint: the seven letters that have two sounds are enough where no more are asked") {
    const Skill both{Unit::letter, Task::both_sounds};
    const Vocabulary all = fixtures::vocabularyOf({"big", "cat", "top", "gum", "egg"});
    CHECK(questionCount(all, both) < kFewestQuestions);
    CHECK_FALSE(lintSkill(all, both, classroom(), {}));
    CHECK(lintSkill(fixtures::vocabularyOf({"big", "cat"}), both, classroom(), {}));
}

TEST_CASE("Lint: nothing is suggested where the list has nothing") {
    const auto few = lintSkill(fixtures::vocabularyOf({"cat"}), {Unit::phoneme, Task::first},
                               fixtures::vocabularyOf({"banana", "cat"}), {});
    REQUIRE(few.has_value());
    CHECK(few->suggestions.empty());
    CHECK(few->way_out == "Leave that skill to another unit.");
}

TEST_CASE("Lint: a word with an unfit remainder is not suggested") {
    const Skill skill{Unit::phoneme, Task::remove};
    const Vocabulary few = fixtures::vocabularyOf({"cat"});
    const auto before = lintSkill(few, skill, classroom(), {});
    REQUIRE(before.has_value());
    REQUIRE_FALSE(before->suggestions.empty());
    LintRules all;
    all.is_rude = [](const speech::Pronunciation&) { return true; };
    const auto after = lintSkill(few, skill, classroom(), all);
    REQUIRE(after.has_value());
    CHECK(after->suggestions.empty());
}

TEST_CASE("Lint: what is suggested for a skill really makes items when it is added") {
    const Vocabulary few = fixtures::vocabularyOf({"cat", "sun"});
    for (const SkillRow& row : skillTable()) {
        CAPTURE(std::string(row.id));
        const auto lint = lintSkill(few, row.skill, classroom(), {});
        const bool some_letters = row.skill.unit == Unit::letter && !lint;
        if (some_letters) continue;
        REQUIRE(lint.has_value());
        REQUIRE_FALSE(lint->suggestions.empty());
        CHECK(lint->suggestions.size() <= 12);
        const Vocabulary more = withSuggestions(few, lint->suggestions, classroom());
        const std::vector<Item> items = makeItems(more, row.skill);
        CHECK(questionCount(more, row.skill) > questionCount(few, row.skill));
        for (const Item& item : items) CHECK(unfairness(item, more).empty());
        for (const std::string& id : lint->suggestions) {
            CAPTURE(id);
            Vocabulary without = few;
            std::vector<std::string> others = lint->suggestions;
            others.erase(std::find(others.begin(), others.end(), id));
            without = withSuggestions(few, others, classroom());
            CHECK((standsIn(id, items) ||
                   questionCount(without, row.skill) < questionCount(more, row.skill)));
        }
    }
}
