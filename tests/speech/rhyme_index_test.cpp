#include "content/speech/rhyme_index.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>

#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::dictionary;
using wrenlet::fixtures::said;

TEST_CASE("Lexicon: every word is visited once, in order, as it is looked up") {
    const Lexicon lexicon = dictionary();
    std::size_t words = 0;
    std::string before;
    lexicon.forEach([&](std::string_view word, const std::vector<Pronunciation>& listed) {
        if (word <= before) FAIL("out of order: " << word);
        if (++words % 97 == 0) CHECK(lexicon.lookUp(word) == listed);
        before = word;
    });
    CHECK(words == lexicon.wordCount());
}

TEST_CASE("Rhymes: the index finds those that going through all words finds, and no other") {
    const Lexicon lexicon = dictionary();
    const RhymeIndex index(lexicon);
    for (const char* asked : {"cat", "bee", "money", "station", "balloon", "believe", "egg",
                              "orange", "pear", "rainbow", "a"}) {
        const Pronunciation sounds = said(asked);
        std::map<std::string, bool> expected;  // word, whether its likeliest way rhymes
        lexicon.forEach([&](std::string_view word, const std::vector<Pronunciation>& listed) {
            for (const Pronunciation& other : listed)
                if (rhymeKind(sounds, other) == RhymeKind::perfect)
                    expected.emplace(word, &other == &listed.front());
        });
        std::map<std::string, bool> found;
        std::string before;
        for (const RhymingWord& rhyme : index.rhymesOf(sounds)) {
            CHECK(before < rhyme.word);
            before = rhyme.word;
            found.emplace(rhyme.word, rhyme.likeliest);
        }
        INFO(asked);
        CHECK(found == expected);
    }
}

TEST_CASE("Rhymes: bed rhymes with red, and with read only when that is past") {
    const RhymeIndex index(dictionary());
    const auto rhymes = index.rhymesOf(said("bed"));
    const auto find = [&rhymes](std::string_view word) {
        return std::find_if(rhymes.begin(), rhymes.end(),
                            [word](const RhymingWord& rhyme) { return rhyme.word == word; });
    };
    REQUIRE(find("red") != rhymes.end());
    CHECK(find("red")->likeliest);
    REQUIRE(find("read") != rhymes.end());
    CHECK_FALSE(find("read")->likeliest);
    CHECK(find("bed") == rhymes.end());
    CHECK(find("bad") == rhymes.end());
}

TEST_CASE("Rhymes: nothing rhymes with what has no vowel, and the index stays small") {
    const RhymeIndex index(dictionary());
    CHECK(index.rhymesOf({}).empty());
    CHECK(index.rhymesOf({{Phoneme::s}}).empty());
    CHECK(index.bytes() < 40'000'000);
    CHECK(index.bytes() > 1'000'000);
}
