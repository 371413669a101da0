#include "content/speech/word_parts.hpp"

#include <doctest/doctest.h>

#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::said;

TEST_CASE("A one-syllable word is its onset and its rime") {
    const auto parts = [](std::string_view word) {
        const auto found = onsetAndRime(said(word));
        return found ? ipa(found->onset) + "-" + ipa(found->rime) : std::string("no");
    };
    CHECK(parts("cat") == "k-æt");
    CHECK(parts("stop") == "st-ɑp");
    CHECK(parts("egg") == "-ɛɡ");
    CHECK(parts("bee") == "b-i");
    CHECK(parts("tiger") == "no");
    CHECK_FALSE(onsetAndRime({}).has_value());
}

TEST_CASE("A digraph is one consonant in a word's shape") {
    CHECK(shape(said("ship")) == "CVC");
    CHECK(shape(said("chick")) == "CVC");
    CHECK(shape(said("stop")) == "CCVC");
    CHECK(shape(said("ant")) == "VCC");
}

TEST_CASE("Words are as far apart as their sounds") {
    CHECK(wordDistance(said("cat"), said("cat")) == 0);
    CHECK(wordDistance(said("cat"), said("bat")) < wordDistance(said("cat"), said("bee")));
    CHECK(wordDistance(said("coat"), said("goat")) == 1);
    CHECK(wordDistance(said("top"), said("stop")) == kSoundAdded);
    CHECK(wordDistance(said("top"), said("stop")) == wordDistance(said("stop"), said("top")));
}

TEST_CASE("The places where two words part are found") {
    using Places = std::vector<std::size_t>;
    CHECK(placesApart(said("cat"), said("hat")) == Places{0});
    CHECK(placesApart(said("cat"), said("cot")) == Places{1});
    CHECK(placesApart(said("cat"), said("cap")) == Places{2});
    CHECK(placesApart(said("stop"), said("top")) == Places{0});
    CHECK(placesApart(said("top"), said("stop")).empty());
    CHECK(placesApart(said("cat"), {}) == Places{0, 1, 2});
}
