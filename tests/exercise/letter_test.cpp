#include "content/exercise/letter_table.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/item_maker.hpp"
#include "tests/fixtures/pond.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

std::vector<Item> letterItems(Task task) {
    return makeItems(fixtures::pond(), {Unit::letter, task});
}

std::string tiles(const char* word) {
    const Vocabulary vocabulary = fixtures::vocabularyOf({word});
    const auto found = regularTiles(vocabulary.words.front());
    std::string text;
    if (found)
        for (const Tile& tile : *found) text += std::string(tile.letter->text) + " ";
    return text;
}

}  // namespace

TEST_CASE("Letters: there are 26, each with a name of its own and a sound") {
    std::set<std::string> names;
    for (const Letter& letter : letters()) {
        names.insert(speech::ipa(letter.name));
        CHECK_FALSE(letter.taught.empty());
        CHECK(letterById(letter.id) == &letter);
    }
    CHECK(names.size() == 26);
    CHECK(letterById("letter:sh") != nullptr);
    CHECK(letterById("letter:zz") == nullptr);
}

TEST_CASE("Letters: a name may begin with another sound than the letter says") {
    // w's name begins with /d/, y's with /w/ (Treiman).
    CHECK(speech::ipa(letterById("letter:w")->name.front().phoneme) == "d");
    CHECK(speech::ipa(letterById("letter:y")->name.front().phoneme) == "w");
    CHECK(standsFor(*letterById("letter:w"), {{speech::Phoneme::w}}, false));
    CHECK(standsFor(*letterById("letter:y"), {{speech::Phoneme::y}}, false));
}

TEST_CASE("Letters: the sound of a letter is asked for consonants alone") {
    // CCSS RF.K.3.a (2010): the sound of each consonant.
    for (const Item& item : letterItems(Task::sound))
        CHECK(std::string("aeiou").find(item.subject.back()) == std::string::npos);
}

TEST_CASE("Letters: no foil has the asked sound too") {
    // c and k, and q with u, all say /k/; g and j both say the sound of jam.
    int asked = 0;
    for (const Item& item : letterItems(Task::for_sound)) {
        std::set<std::string> shown;
        for (const Choice& choice : item.choices) shown.insert(choice.id);
        asked += item.subject == "sound:k";
        if (item.subject == "sound:k")
            CHECK(shown.count("letter:c") + shown.count("letter:k") == 1);
        if (item.subject == "sound:k") CHECK(shown.count("letter:q") == 0);
        if (item.subject == "sound:dʒ") CHECK(shown.count("letter:g") == 0);
    }
    CHECK(asked > 0);
}

TEST_CASE("Letters: both sounds are heard short before long, hard before soft") {
    std::map<std::string, std::string> heard;
    for (const Item& item : letterItems(Task::both_sounds))
        heard[item.subject] = item.parts[0].label + " " + item.parts[1].label;
    CHECK(heard == std::map<std::string, std::string>{{"letter:a", "æ eɪ"},
                                                      {"letter:e", "ɛ i"},
                                                      {"letter:i", "ɪ aɪ"},
                                                      {"letter:o", "ɑ oʊ"},
                                                      {"letter:u", "ʌ ju"},
                                                      {"letter:c", "k s"},
                                                      {"letter:g", "ɡ dʒ"}});
}

TEST_CASE("Letters: two letters that say one sound, where they stand in the word") {
    std::map<std::string, std::string> right;
    for (const Item& item : letterItems(Task::digraph))
        right[item.subject] =
            item.choices[item.answer].id + " " + std::string(positionId(item.turns_on.position));
    CHECK(right.at("ship") == "letter:sh first");
    CHECK(right.at("fish") == "letter:sh last");
    CHECK(right.at("thumb") == "letter:th first");
    CHECK(right.at("king") == "letter:ng last");
    CHECK(right.at("duck") == "letter:ck last");
    CHECK(right.at("chin") == "letter:ch first");
    CHECK(right.count("cat") == 0);
}

TEST_CASE("Letters: a word is built only when every letter says what it is taught to say") {
    CHECK(tiles("cat") == "c a t ");
    CHECK(tiles("ship") == "sh i p ");
    CHECK(tiles("duck") == "d u ck ");
    CHECK(tiles("box") == "b o x ");
    CHECK(tiles("nest") == "n e s t ");
    for (const char* word : {"cake", "one", "city", "knee", "car", "moon", "said", "happy", "gem"})
        CHECK_MESSAGE(tiles(word).empty(), word);
}

TEST_CASE("Letters: a built word turns on the letter that a near foil has not") {
    for (const Item& item :
         makeItems(fixtures::vocabularyOf({"cat", "cap", "sun"}), {Unit::letter, Task::build}))
        if (item.subject == "cat") CHECK(item.turns_on == TurnsOn{"letter:t", Position::letter});
}
