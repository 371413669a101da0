#include "content/exercise/rude.hpp"

#include <doctest/doctest.h>

#include "content/exercise/item_maker.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::exercise;

namespace {

Vocabulary wordsOf(const std::vector<std::string>& texts) {
    Vocabulary vocabulary;
    for (const std::string& text : texts)
        vocabulary.words.push_back({text, text, fixtures::said(text), {}, text});
    return vocabulary;
}

speech::BlockList built() {
    auto list = speech::BlockList::open(WRENLET_TEST_SHARE "/blocked.bin");
    REQUIRE(list.ok());
    return std::move(list.value());
}

std::size_t asking(const std::vector<Item>& items, const std::string& subject) {
    std::size_t count = 0;
    for (const Item& item : items) count += item.subject == subject;
    return count;
}

}  // namespace

TEST_CASE("Rude: a rime that is rude by itself is not said alone, and the word stays elsewhere") {
    const Vocabulary vocabulary =
        wordsOf({"glass", "grass", "frog", "flag", "crab", "snail", "drum", "tree", "block"});
    const speech::BlockList list = built();
    const auto made = makeItems(vocabulary, {Unit::onset_rime, Task::blend});
    const auto kept = withoutRude(made, vocabulary, list);
    REQUIRE(asking(made, "glass") > 0);
    CHECK(asking(kept, "glass") == 0);
    CHECK(asking(kept, "frog") == asking(made, "frog"));
    const auto sounds = makeItems(vocabulary, {Unit::phoneme, Task::blend});
    REQUIRE(asking(sounds, "glass") > 0);
    CHECK(withoutRude(sounds, vocabulary, list) == sounds);
}

TEST_CASE("Rude: a word that is left when a sound is taken away is neither asked nor offered") {
    const Vocabulary vocabulary = wordsOf({"clock", "cock", "snail", "nail", "sail", "plate",
                                           "late", "lock", "block", "tray", "ray", "slip", "lip"});
    const speech::BlockList list = built();
    const auto made = makeItems(vocabulary, {Unit::phoneme, Task::remove});
    const auto kept = withoutRude(made, vocabulary, list);
    const auto offers = [](const std::vector<Item>& items, const std::string& id) {
        std::size_t count = 0;
        for (const Item& item : items)
            for (const Choice& choice : item.choices) count += choice.id == id;
        return count;
    };
    REQUIRE(offers(made, "cock") > 0);
    CHECK(offers(kept, "cock") == 0);
    CHECK(asking(kept, "snail") > 0);
}
