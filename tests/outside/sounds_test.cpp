// The dictionary and what is computed from it, against examples printed by others.
#include <doctest/doctest.h>

#include "content/speech/word_parts.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::said;

// National Reading Panel (2000), examples of phonemic awareness tasks.
TEST_CASE("The National Reading Panel's own examples come out as printed") {
    CHECK(said("pot").size() == 3);
    const Pronunciation stop = said("stop");
    CHECK(sameSounds({stop.begin() + 1, stop.end()}, said("top")));
    CHECK(said("bag").front() == said("bike").front());
    CHECK_FALSE(said("bag").front() == said("rat").front());
    CHECK(ipa(said("cat")) == "kæt");
}

// Counts and sounds usual in phonics teaching; from memory.
TEST_CASE("Sounds are counted, not letters") {
    CHECK(said("box").size() == 4);
    CHECK(said("ship").size() == 3);
    CHECK(said("cube").size() == 4);
    CHECK(said("bank").at(2).phoneme == Phoneme::ng);
    CHECK(said("think").at(2).phoneme == Phoneme::ng);
}

// First and last sounds that letters hide; from memory, as any dictionary's key has them.
TEST_CASE("First and last sounds follow the ear") {
    const auto first = [](std::string_view word) { return ipa(said(word).front().phoneme); };
    const auto last = [](std::string_view word) { return ipa(said(word).back().phoneme); };
    CHECK(first("one") == "w");
    CHECK(first("unicorn") == "j");
    CHECK(first("eye") == "aɪ");
    CHECK(first("knee") == "n");
    CHECK(first("gem") == "dʒ");
    CHECK(first("city") == "s");
    CHECK(first("phone") == "f");
    CHECK(first("giraffe") == "dʒ");
    CHECK(last("fox") == "s");
    CHECK(last("bees") == "z");
    CHECK(last("lamb") == "m");
    CHECK(last("cake") == "k");
}
