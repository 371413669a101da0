#include "content/speech/syllable.hpp"

#include <doctest/doctest.h>

#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet::speech;
using wrenlet::fixtures::said;

namespace {

std::string beats(std::string_view word) {
    std::string text;
    for (const Pronunciation& syllable : syllables(said(word)))
        text += (text.empty() ? "" : ".") + ipa(syllable);
    return text;
}

}  // namespace

TEST_CASE("Beats are counted by vowels, syllabic l and n among them") {
    CHECK(syllableCount(said("cat")) == 1);
    CHECK(syllableCount(said("turtle")) == 2);
    CHECK(syllableCount(said("button")) == 2);
    CHECK(syllableCount(said("elephant")) == 3);
    CHECK(syllableCount(said("caterpillar")) == 4);
    CHECK(syllableCount({}) == 0);
}

TEST_CASE("Words with one beat or two are known") {
    for (const char* word : {"fire", "wire", "our", "towel", "owl", "squirrel", "flower"})
        CHECK(countVaries(said(word)));
    for (const char* word : {"cat", "tiger", "turtle", "window", "snail", "girl", "pony"})
        CHECK_FALSE(countVaries(said(word)));
}

TEST_CASE("Words with two beats or three are known, for some leave out a weak vowel") {
    for (const char* word :
         {"camera", "battery", "celery", "factory", "every", "family", "broccoli", "different"})
        CHECK_MESSAGE(countVaries(said(word)), word);
    for (const char* word : {"gorilla", "alligator", "ambulance", "elephant", "strawberry",
                             "buffalo", "caterpillar", "butterfly", "tomorrow"})
        CHECK_FALSE_MESSAGE(countVaries(said(word)), word);
}

TEST_CASE("A vowel that glides has no half a beat before the next syllable's own sound") {
    for (const char* word : {"pilot", "pirate", "island", "toilet", "violin", "eyelash", "silent"})
        CHECK_FALSE_MESSAGE(countVaries(said(word)), word);
    for (const char* word : {"child", "boil", "crocodile", "vampire", "iron", "jewel", "cruel"})
        CHECK_MESSAGE(countVaries(said(word)), word);
}

TEST_CASE("A stressed short vowel keeps a consonant and a long one stands open") {
    CHECK(beats("tiger") == "taɪ.ɡɝ");
    CHECK(beats("basket") == "bæs.kət");
    CHECK(beats("rabbit") == "ɹæb.ət");
    CHECK(beats("window") == "wɪn.doʊ");
    CHECK(beats("monkey") == "mʌŋ.ki");
    CHECK(beats("zebra") == "zi.bɹə");
    CHECK(beats("balloon") == "bə.lun");
    CHECK(beats("cat") == "kæt");
}

TEST_CASE("A compound breaks between its parts") {
    std::string text;
    for (const Pronunciation& syllable : syllables(std::vector{said("bed"), said("room")}))
        text += ipa(syllable) + "|";
    CHECK(text == "bɛd|ɹum|");
}

TEST_CASE("A consonant that belongs to both sides is known") {
    for (const char* word : {"butter", "scissors", "rabbit", "lemon"})
        CHECK(isAmbisyllabic(said(word)));
    for (const char* word : {"tiger", "basket", "window", "balloon", "cat"})
        CHECK_FALSE(isAmbisyllabic(said(word)));
}

TEST_CASE("English words begin with str and never with ng") {
    using P = Phoneme;
    CHECK(isOnset(Pronunciation{{P::s}, {P::t}, {P::r}}));
    CHECK(isOnset(Pronunciation{{P::b}, {P::l}}));
    CHECK(isOnset(Pronunciation{}));
    CHECK_FALSE(isOnset(Pronunciation{{P::ng}}));
    CHECK_FALSE(isOnset(Pronunciation{{P::d}, {P::l}}));
    CHECK_FALSE(isOnset(Pronunciation{{P::s}, {P::t}, {P::n}}));
}
