#include "content/exercise/item_maker.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>

#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

TEST_CASE("Items: every skill gives some, each with one right answer and no reason against it") {
    const Vocabulary vocabulary = fixtures::pond();
    std::set<std::string> ids;
    std::size_t all = 0;
    for (const SkillRow& row : skillTable()) {
        const auto items = makeItems(vocabulary, row.skill);
        CAPTURE(std::string(row.id));
        CHECK_FALSE(items.empty());
        CHECK(items == makeItems(vocabulary, row.skill));
        for (const Item& item : items) {
            ++all;
            ids.insert(item.id);
            const auto why = unfairness(item, vocabulary);
            CHECK_MESSAGE(why.empty(), item.id, ": ", why.empty() ? "" : why.front());
        }
    }
    CHECK(ids.size() == all);
    CHECK(all > 1000);
}

TEST_CASE("Items: what the standard leaves out of three-phoneme words is not joined by sounds") {
    // CCSS RF.K.2.d (2010): CVC words, not those ending in /l/, /r/ or /x/.
    for (const Item& item : makeItems(fixtures::pond(), {Unit::phoneme, Task::blend}))
        for (const char* left_out : {"bell", "car", "fox"}) CHECK(item.subject != left_out);
}

TEST_CASE("Items: k-a-t is cat, joined by sounds") {
    // National Reading Panel, 2000: what word is /k/ /æ/ /t/?
    const auto items = makeItems(fixtures::pond(), {Unit::phoneme, Task::blend});
    const auto cat = std::find_if(items.begin(), items.end(),
                                  [](const Item& item) { return item.subject == "cat"; });
    REQUIRE(cat != items.end());
    std::string parts;
    for (const Part& part : cat->parts) parts += part.clip + " ";
    CHECK(parts == "sound:k sound:æ sound:t ");
    CHECK(cat->choices[cat->answer].id == "cat");
}

TEST_CASE("Items: a rat and a mouse never stand side by side") {
    const Vocabulary vocabulary = fixtures::pond();
    for (const SkillRow& row : skillTable())
        for (const Item& item : makeItems(vocabulary, row.skill)) {
            std::set<std::string> shown{item.subject};
            for (const Choice& choice : item.choices) shown.insert(choice.id);
            CHECK_FALSE((shown.count("rat") && shown.count("mouse")));
        }
}

TEST_CASE("Fairness: each thing that can be wrong with an item is said") {
    const Vocabulary vocabulary = fixtures::pond();
    const Item sort = makeItems(vocabulary, {Unit::onset_rime, Task::rhyme_sort}).front();
    const Item join = makeItems(vocabulary, {Unit::phoneme, Task::blend}).front();
    const Item count = makeItems(vocabulary, {Unit::sentence, Task::count}).front();
    const auto unfair = [&vocabulary](Item item, auto spoil) {
        spoil(item);
        item.id = itemId(item);
        return !unfairness(item, vocabulary).empty();
    };
    CHECK(unfair(sort, [](Item& item) {
        item.answer = 1 - item.answer;
        std::swap(item.choices[0].means, item.choices[1].means);
    }));
    CHECK(unfair(sort, [](Item& item) { item.subject = item.choices[0].id; }));
    CHECK(unfair(sort, [](Item& item) { item.turns_on.sound = "ʃ"; }));
    CHECK(unfair(sort, [](Item& item) { item.choices[1] = item.choices[0]; }));
    CHECK(unfair(join, [](Item& item) { item.parts.pop_back(); }));
    CHECK(unfair(join, [](Item& item) { item.answer = 7; }));
    CHECK(unfair(join, [](Item& item) { item.subject = "dragon"; }));
    CHECK(unfair(join, [](Item& item) { item.turns_on = {"ʒ", Position::first}; }));
    CHECK(unfair(join, [](Item& item) { item.choices[item.answer].means = "?"; }));
    CHECK(unfair(count, [](Item& item) { std::swap(item.choices[0].id, item.choices[1].id); }));
    CHECK(unfair(count, [](Item& item) { item.parts.pop_back(); }));
}

TEST_CASE("Fairness: chip begins with one sound, so not with t") {
    Vocabulary vocabulary = fixtures::pond();
    vocabulary.words.push_back(fixtures::vocabularyOf({"chip"}).words.front());
    const auto items = makeItems(vocabulary, {Unit::phoneme, Task::blend});
    const auto chip = std::find_if(items.begin(), items.end(),
                                   [](const Item& item) { return item.subject == "chip"; });
    REQUIRE(chip != items.end());
    const auto fair = [&](std::string_view sound, Position position) {
        Item item = *chip;
        item.turns_on = {std::string(sound), position};
        return unfairness(item, vocabulary).empty();
    };
    CHECK(fair("tʃ", Position::first));
    CHECK(fair("p", Position::last));
    CHECK(fair("ɪ", Position::middle));
    CHECK_FALSE(fair("t", Position::first));
    CHECK_FALSE(fair("ʃ", Position::first));
    CHECK_FALSE(fair("ɪ", Position::last));
    CHECK_FALSE(fair("", Position::first));
}

TEST_CASE("Items: a word with one beat or two is no foil on syllables") {
    Vocabulary vocabulary = fixtures::pond();
    for (const Word& word : fixtures::vocabularyOf({"fire", "flower", "towel"}).words)
        vocabulary.words.push_back(word);
    for (const Item& item : makeItems(vocabulary, {Unit::syllable, Task::blend}))
        for (const Choice& choice : item.choices)
            for (const char* varies : {"fire", "flower", "towel"}) CHECK(choice.id != varies);
}
