#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/exercise/item_maker.hpp"
#include "content/speech/word_parts.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

constexpr Task kTasks[] = {Task::first, Task::middle, Task::last};

std::set<std::string> shown(const Item& item) {
    std::set<std::string> ids;
    for (const Choice& choice : item.choices) ids.insert(choice.id);
    if (mechanicOf(item) == Mechanic::sort) ids.insert(item.subject);
    return ids;
}

/// The sound that `word` is asked for in items where it is right.
std::set<std::string> soundsOf(const Vocabulary& vocabulary, Task task, const std::string& word) {
    std::set<std::string> sounds;
    for (const Item& item : makeItems(vocabulary, {Unit::phoneme, task}))
        if (mechanicOf(item) == Mechanic::pick && item.choices[item.answer].id == word)
            sounds.insert(item.turns_on.sound);
    return sounds;
}

}  // namespace

TEST_CASE("First, last and middle: only CVC words that the standard names are asked or shown") {
    // CCSS RF.K.2.d (2010): initial, medial vowel and final sounds in three-phoneme words, not
    // those ending in /l/, /r/ or /x/.
    const Vocabulary vocabulary = fixtures::pond();
    for (const Task task : kTasks) {
        const auto items = makeItems(vocabulary, {Unit::phoneme, task});
        CHECK(items.size() > 20);
        for (const Item& item : items)
            for (const std::string& id : shown(item)) {
                const auto& sounds = vocabulary.word(id)->sounds;
                CAPTURE(item.id);
                CHECK(speech::shape(sounds) == "CVC");
                const std::string last(speech::ipa(sounds.back().phoneme));
                CHECK((last != "l" && last != "ɹ"));
            }
    }
}

TEST_CASE("First, last and middle sounds are those that are heard, whatever the spelling") {
    const Vocabulary vocabulary = fixtures::pond();
    using Sounds = std::set<std::string>;
    CHECK(soundsOf(vocabulary, Task::first, "ship") == Sounds{"ʃ"});
    CHECK(soundsOf(vocabulary, Task::last, "cake") == Sounds{"k"});
    CHECK(soundsOf(vocabulary, Task::last, "thumb") == Sounds{"m"});
    CHECK(soundsOf(vocabulary, Task::last, "mouse") == Sounds{"s"});
    CHECK(soundsOf(vocabulary, Task::middle, "moon") == Sounds{"u"});
    CHECK(soundsOf(vocabulary, Task::first, "king") == Sounds{"k"});
}

TEST_CASE("First sounds: of bag, bike, rat the odd one by first sound is rat") {
    // National Reading Panel, 2000. Sorted to bag or rat, bike goes to bag.
    const auto items = makeItems(fixtures::vocabularyOf({"bag", "bike", "rat", "rug"}),
                                 {Unit::phoneme, Task::first});
    const auto bike = std::find_if(items.begin(), items.end(),
                                   [](const Item& item) { return item.subject == "bike"; });
    REQUIRE(bike != items.end());
    CHECK(bike->choices[bike->answer].id == "bag");
    CHECK(bike->choices[1 - bike->answer].id == "rat");
}

TEST_CASE("A vowel that is another one in some accents is never asked for") {
    // Pin and pen are one word to many (Wells 1982); so are cot and caught.
    const Vocabulary vocabulary =
        fixtures::vocabularyOf({"pen", "pin", "bed", "pig", "cup", "moon", "taught", "cot"});
    for (const Item& item : makeItems(vocabulary, {Unit::phoneme, Task::middle}))
        for (const char* word : {"pen", "taught"}) CHECK(shown(item).count(word) == 0);
    CHECK(soundsOf(vocabulary, Task::first, "pen") == std::set<std::string>{"p"});
}

TEST_CASE("Foils tell what was taken for what, and which end was heard") {
    std::set<std::string> told;
    for (const Task task : kTasks)
        for (const Item& item : makeItems(fixtures::pond(), {Unit::phoneme, task}))
            for (const Choice& choice : item.choices) told.insert(choice.means);
    CHECK(told.count("took /p/ for /b/ first") == 1);
    CHECK(told.count("took the last sound, not the first") == 1);
    CHECK(told.count("took the first sound, not the last") == 1);
}

TEST_CASE("Foils come in grades: far ones first, in the end one feature away") {
    int one_feature = 0, far = 0;
    for (const Item& item : makeItems(fixtures::pond(), {Unit::phoneme, Task::first})) {
        if (mechanicOf(item) != Mechanic::pick) continue;
        const auto right = speech::fromIpa(item.turns_on.sound);
        REQUIRE(right.has_value());
        for (const Choice& choice : item.choices) {
            if (choice.means.empty()) continue;
            const auto first = fixtures::pond().word(choice.id)->sounds.front().phoneme;
            CHECK(first != *right);
            one_feature += speech::distance(first, *right) == 1;
            far += speech::distance(first, *right) > 3;
        }
        if (one_feature > 10 && far > 10) break;
    }
    CHECK(one_feature > 0);
    CHECK(far > 0);
}
