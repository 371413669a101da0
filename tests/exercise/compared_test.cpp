#include "content/exercise/compared.hpp"

#include <doctest/doctest.h>

#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

Item itemOf(Skill skill) {
    Item item;
    item.skill = skill;
    item.choices = {{"letter:ch", ""}, {"letter:a", "took a for ch"}};
    item.parts = {{"word:chair", "chair"}, {"sound:tʃ", "tʃ"}};
    return item;
}

Word word(const char* text) {
    return {text, text, fixtures::said(text), {}, text};
}

}  // namespace

TEST_CASE("Compared: what decides in a word is the part that is asked about") {
    const Item first = itemOf({Unit::phoneme, Task::first});
    const Item middle = itemOf({Unit::phoneme, Task::middle});
    const Item last = itemOf({Unit::phoneme, Task::last});
    const Item rhyme = itemOf({Unit::onset_rime, Task::rhyme_pick});
    const Item length = itemOf({Unit::phoneme, Task::long_short});
    const Item blend = itemOf({Unit::phoneme, Task::blend});
    const Word cat = word("cat"), cake = word("cake");
    CHECK(decidingClip(first, cat) == "sound:k");
    CHECK(decidingClip(middle, cat) == "sound:æ");
    CHECK(decidingClip(last, cat) == "sound:t");
    CHECK(decidingClip(rhyme, cat) == "part:æt");
    CHECK(decidingClip(length, cake) == "sound:eɪ");
    CHECK(decidingClip(blend, cat).empty());
    CHECK(decidingPlace(first, cat) == Position::first);
    CHECK(decidingPlace(middle, cat) == Position::middle);
    CHECK(decidingPlace(last, cat) == Position::last);
    CHECK(decidingPlace(rhyme, cat) == Position::rime);
    CHECK(decidingPlace(blend, cat) == Position::whole);
}

TEST_CASE("Compared: a letter says its name, its sound or both, as it is asked") {
    using Clips = std::vector<std::string>;
    const Letter &a = *letterById("letter:a"), &ch = *letterById("letter:ch");
    CHECK(saidBy(itemOf({Unit::letter, Task::name}), a) == Clips{"letter-name:a"});
    CHECK(saidBy(itemOf({Unit::letter, Task::for_sound}), a) == Clips{"sound:æ"});
    CHECK(saidBy(itemOf({Unit::letter, Task::both_sounds}), a) == Clips{"sound:æ", "sound:eɪ"});
    Item digraph = itemOf({Unit::letter, Task::digraph});
    CHECK(saidBy(digraph, ch) == Clips{"sound:tʃ"});
    digraph.parts[1] = {"sound:k", "k"};  // as in "chord"
    CHECK(saidBy(digraph, ch) == Clips{"sound:k"});
}

TEST_CASE("Compared: a sound leads back to the letter that is taught with it first") {
    REQUIRE(letterSaying("sound:b") != nullptr);
    CHECK(letterSaying("sound:b")->text == "b");
    CHECK(letterSaying("part:ks")->text == "x");
    CHECK(letterSaying("sound:ʒ") == nullptr);
}
