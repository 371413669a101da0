#include "content/speech/rhyme.hpp"

#include <doctest/doctest.h>

#include <array>

#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::said;

namespace {

RhymeKind kind(std::string_view a, std::string_view b) {
    return rhymeKind(said(a), said(b));
}

}  // namespace

TEST_CASE("Words rhyme by sound, whatever their spelling") {
    CHECK(kind("cat", "hat") == RhymeKind::perfect);
    CHECK(kind("bee", "tree") == RhymeKind::perfect);
    CHECK(kind("bear", "chair") == RhymeKind::perfect);
    CHECK(kind("moon", "spoon") == RhymeKind::perfect);
    CHECK(kind("money", "honey") == RhymeKind::perfect);
    CHECK(kind("pond", "stand") == RhymeKind::none);
    CHECK(kind("cat", "cot") == RhymeKind::none);
    CHECK(kind("comb", "tomb") == RhymeKind::none);
    CHECK(kind("cat", "cap") == RhymeKind::none);
}

TEST_CASE("The same stressed syllable, or the same word, is no rhyme for an item") {
    CHECK(kind("leave", "believe") == RhymeKind::identical);
    CHECK(kind("pear", "pair") == RhymeKind::homophone);
    CHECK(kind("cat", "cat") == RhymeKind::homophone);
    CHECK(kind("light", "daylight") == RhymeKind::none);  // stressed on "day"
    CHECK(kind("two", "too") == RhymeKind::homophone);
}

TEST_CASE("Half a beat before the last r, listed or not, spoils no rhyme") {
    CHECK(kind("fire", "choirs") == RhymeKind::none);
    CHECK(kind("fires", "choirs") == RhymeKind::perfect);
    CHECK(kind("fire", "admire") == RhymeKind::perfect);
    CHECK(kind("power", "devour") == RhymeKind::perfect);
    CHECK(kind("pirate", "fire") == RhymeKind::none);
    CHECK(ipa(rhymingKey(said("admire"))) == "aɪɝ");
    CHECK(ipa(rhymingKey(said("pirate"))) == "aɪɹət");
}

TEST_CASE("An onset may be missing, or grow by one sound") {
    CHECK(kind("egg", "leg") == RhymeKind::perfect);
    CHECK(kind("lay", "play") == RhymeKind::perfect);
}

TEST_CASE("What rhyming words share begins at the stressed vowel") {
    CHECK(ipa(rhymingPart(said("cat"))) == "æt");
    CHECK(ipa(rhymingPart(said("balloon"))) == "un");
    CHECK(ipa(rhymingPart(said("rainbow"))) == "eɪnboʊ");
    CHECK(rhymingPart({}).empty());
    CHECK(rhymeKind({}, {}) == RhymeKind::none);
    CHECK(rhymeKind({{Phoneme::s}}, {{Phoneme::s}}) == RhymeKind::none);
}

TEST_CASE("Words that an accent makes one are no rhyme there, and that is said") {
    const std::array accents{Accent::cot_caught};
    const RhymeVerdict verdict = rhymeVerdict(said("cot"), said("caught"), accents);
    CHECK(verdict.answer == RhymeAnswer::no);
    CHECK(verdict.why.find("one word to the ear where cot and caught are said alike") !=
          std::string::npos);
    CHECK(rhymeVerdict(said("cot"), said("caught"), {}).why.find("one word") == std::string::npos);
}
