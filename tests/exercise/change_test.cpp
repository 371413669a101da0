#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/exercise/changes.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/speech/syllable.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

/// "snail -s> nail", for each item.
std::set<std::string> made(const Vocabulary& vocabulary, Unit unit, Task task) {
    std::set<std::string> lines;
    for (const Item& item : makeItems(vocabulary, {unit, task})) {
        std::string line = item.subject + " ";
        for (std::size_t i = 1; i < item.parts.size(); ++i) line += item.parts[i].label + ">";
        lines.insert(line + " " + item.choices[item.answer].id);
    }
    return lines;
}

}  // namespace

TEST_CASE("Taking a sound away gives the word that is left, by sound and not by letter") {
    // Stop without /s/ is top: National Reading Panel, 2000. The others: common practice.
    const Vocabulary vocabulary = fixtures::vocabularyOf(
        {"stop", "top", "snail", "nail", "spoon", "soon", "plate", "late",  "beach", "bee", "each",
         "farm", "arm", "card",  "mop",  "sail",  "moon", "gate",  "peach", "star",  "cat", "pie"});
    const auto lines = made(vocabulary, Unit::phoneme, Task::remove);
    for (const char* line : {"stop s> top", "snail s> nail", "snail n> sail", "spoon p> soon",
                             "plate p> late", "beach b> each", "beach tʃ> bee", "farm f> arm"})
        CHECK_MESSAGE(lines.count(line) == 1, line);
    for (const std::string& line : lines) CHECK(line.substr(0, 5) != "card ");
}

TEST_CASE("Adding a sound is taking it away, backwards") {
    const Vocabulary vocabulary = fixtures::pond();
    const auto away = made(vocabulary, Unit::phoneme, Task::remove);
    const auto added = made(vocabulary, Unit::phoneme, Task::add);
    CHECK(away.count("train t> rain") == 1);
    CHECK(added.count("rain t> train") == 1);
    CHECK(added.count("nail s> snail") == 1);
}

TEST_CASE("Changing a sound keeps all the others") {
    const auto lines = made(fixtures::pond(), Unit::phoneme, Task::substitute);
    CHECK(lines.count("cat k>h> hat") == 1);
    CHECK(lines.count("cat t>p> cap") == 1);
    CHECK(lines.count("soup u>oʊ> soap") == 1);
    CHECK(lines.count("sheep ʃ>s> sleep") == 0);
}

TEST_CASE("Adding and changing sounds stays within words of one syllable") {
    // CCSS RF.K.2.e (2010): individual sounds in simple, one-syllable words.
    const Vocabulary vocabulary = fixtures::pond();
    for (const Task task : {Task::add, Task::remove, Task::substitute})
        for (const Item& item : makeItems(vocabulary, {Unit::phoneme, task}))
            for (const std::string& id : {item.subject, item.choices[item.answer].id})
                CHECK(speech::syllableCount(vocabulary.word(id)->sounds) == 1);
}

TEST_CASE("A sound that stands in the word twice is not taken away") {
    // Pop without /p/: op or po?
    const Vocabulary vocabulary =
        fixtures::vocabularyOf({"pop", "pa", "cat", "hat", "bee", "moon", "ship", "nest"});
    CHECK(made(vocabulary, Unit::phoneme, Task::remove).empty());
}

TEST_CASE("Nothing is asked that sounds alike before and after to many") {
    const auto lines = made(fixtures::vocabularyOf({"pin", "pen", "tot", "taught", "bee", "moon",
                                                    "ship", "nest", "pan", "cat", "kit"}),
                            Unit::phoneme, Task::substitute);
    CHECK_FALSE(lines.empty());
    for (const char* line : {"pin ɪ>ɛ> pen", "pen ɛ>ɪ> pin", "tot ɑ>ɔ> taught", "taught ɔ>ɑ> tot"})
        CHECK(lines.count(line) == 0);
}

TEST_CASE("Who keeps the whole word, or takes the wrong end, is told apart") {
    std::set<std::string> told;
    const Vocabulary vocabulary = fixtures::vocabularyOf(
        {"cart", "car", "art", "cat", "hat", "moon", "bee", "ship", "snail", "nail", "sail"});
    for (const Item& item : makeItems(vocabulary, {Unit::phoneme, Task::remove}))
        for (const Choice& choice : item.choices) told.insert(choice.means);
    CHECK(told.count("took nothing away") == 1);
    CHECK(told.count("took away another sound, not the first") == 1);
}

TEST_CASE("Syllables are taken away where a word is left") {
    const Vocabulary vocabulary = fixtures::pond();
    const auto away = made(vocabulary, Unit::syllable, Task::remove);
    CHECK(away.count("candy di> can") == 1);
    CHECK(made(vocabulary, Unit::syllable, Task::add).count("win doʊ> window") == 1);
}

TEST_CASE("Compounds: a part is added, taken away, changed for another") {
    const Vocabulary vocabulary = fixtures::pond();
    CHECK(made(vocabulary, Unit::compound, Task::add).count("rain bow> rainbow") == 1);
    CHECK(made(vocabulary, Unit::compound, Task::add).count("drop rain> raindrop") == 1);
    CHECK(made(vocabulary, Unit::compound, Task::remove).count("sunlight light> sun") == 1);
    const auto swaps = made(vocabulary, Unit::compound, Task::substitute);
    CHECK(swaps.count("rainbow bow>coat> raincoat") == 1);
    CHECK(swaps.count("sunlight sun>moon> moonlight") == 1);
    CHECK(swaps.count("rainbow rain>gold> goldfish") == 0);
}

TEST_CASE("A chain of compounds changes a part, then another, and ends where it began") {
    const Vocabulary vocabulary = fixtures::pond();
    const auto chains = compoundChains(vocabulary);
    REQUIRE_FALSE(chains.empty());
    std::set<std::string> words;
    for (const Word* word : chains.front()) words.insert(word->id);
    CHECK(words == std::set<std::string>{"sunlight", "moonlight", "moonshine", "sunshine"});
    for (const auto& chain : chains) {
        CHECK(chain.size() >= 3);
        CHECK(chain.size() <= 6);
        CHECK(std::set<const Word*>(chain.begin(), chain.end()).size() == chain.size());
        for (std::size_t i = 0; i < chain.size(); ++i) {
            const auto& from = chain[i]->compound;
            const auto& to = chain[(i + 1) % chain.size()]->compound;
            CHECK(from.size() == 2);
            CHECK(((from[0] == to[0]) != (from[1] == to[1])));
        }
    }
    // The links are items, and follow each other.
    const auto items = makeItems(vocabulary, {Unit::compound, Task::substitute});
    REQUIRE(items.size() >= 4);
    for (std::size_t i = 0; i < 4; ++i)
        CHECK(items[i].choices[items[i].answer].id == items[(i + 1) % 4].subject);
}
