#include "content/speech/repairs.hpp"

#include <doctest/doctest.h>

#include "content/speech/rhyme.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;
using fixtures::said;

TEST_CASE("A repaired compound has its parts' sounds") {
    const auto joined = [](std::string_view a, std::string_view b) {
        return ipa(said(a)) + ipa(said(b));
    };
    CHECK(ipa(said("doorknob")) == joined("door", "knob"));
    CHECK(ipa(said("scarecrow")) == joined("scare", "crow"));
    CHECK(ipa(said("toothbrush")) == joined("tooth", "brush"));
    CHECK(ipa(said("bathtub")) == joined("bath", "tub"));
    CHECK(ipa(said("birdhouse")) == joined("bird", "house"));
    CHECK(ipa(said("earring")) == joined("ear", "ring"));
}

TEST_CASE("Every repair is a pronunciation and heads its word's list") {
    const Lexicon lexicon = fixtures::dictionary();
    for (const Repair& repair : repairTable()) {
        INFO(repair.word);
        const auto sounds = fromArpabetLine(repair.said);
        REQUIRE(sounds.has_value());
        CHECK(lexicon.lookUp(repair.word).front() == *sounds);
        CHECK_FALSE(repair.why.empty());
    }
}

TEST_CASE("Another sense goes first and the listed ones stay") {
    CHECK(ipa(said("wind")) == "wɪnd");
    CHECK(ipa(said("bow")) == "boʊ");
    CHECK(fixtures::dictionary().lookUp("bow").size() == 2);
}

TEST_CASE("Vowels listed unevenly are made one, so that true rhymes are heard") {
    const auto rhyme = [](std::string_view a, std::string_view b) {
        return rhymeKind(said(a), said(b)) == RhymeKind::perfect;
    };
    CHECK(rhyme("dog", "hog"));
    CHECK(rhyme("dog", "log"));
    CHECK(rhyme("frog", "log"));
    CHECK(rhyme("deer", "hear"));
    CHECK(rhyme("ear", "near"));
    CHECK(rhyme("poor", "door"));
    CHECK(rhyme("caught", "taught"));
    CHECK(rhyme("chalk", "talk"));
    CHECK(rhyme("boss", "cross"));
    CHECK(rhyme("cost", "lost"));
    CHECK_FALSE(rhyme("caught", "hot"));
    CHECK_FALSE(rhyme("hug", "dog"));
    CHECK_FALSE(rhyme("deer", "door"));
}

TEST_CASE("A weak beat before a stressed one gives its r away, as it is heard") {
    CHECK(ipa(said("giraffe")) == "dʒəɹæf");
    CHECK(ipa(said("around")) == "əɹaʊnd");
    CHECK(ipa(said("garage")) == "ɡəɹɑʒ");
    CHECK(ipa(said("parade")) == "pəɹeɪd");
    // Not one that is stressed, ends a part, or stands before a weak beat.
    CHECK(ipa(said("syrup")) == "sɝəp");
    CHECK(ipa(said("surprise")) == "sɝpɹaɪz");
    CHECK(ipa(said("overalls")) == "oʊvɝɔlz");
    CHECK(ipa(said("camera")) == "kæmɝə");
}

TEST_CASE("The dictionary's lines are read strictly") {
    CHECK(ipa(*fromArpabetLine("CH IH1 P M AH2 NG K")) == "tʃɪpmʌŋk");
    CHECK(fromArpabetLine("AH0 B AW1 T")->front().phoneme == Phoneme::ax);
    CHECK(fromArpabetLine("B ER1 D")->at(1).stress == Stress::primary);
    for (const char* bad : {"", " ", "K AE T", "K1", "K AE3 T", "K  AE1", "k ae1 t", "AX0", "1"})
        CHECK_FALSE(fromArpabetLine(bad).has_value());
}
