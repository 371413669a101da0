#include "content/speech/letter.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

using namespace wrenlet::speech;

namespace {

std::string name(std::string_view letter) {
    return ipa(taughtLetter(letter)->name);
}

std::string sounds(std::string_view letter) {
    std::string text;
    for (const Pronunciation& sound : taughtLetter(letter)->sounds)
        text += (text.empty() ? "" : ", ") + ipa(sound);
    return text;
}

}  // namespace

// Common practice in phonics teaching.
TEST_CASE("Letters: vowels say their short sound, then their long one, which is their name") {
    CHECK(sounds("a") == "æ, eɪ");
    CHECK(sounds("e") == "ɛ, i");
    CHECK(sounds("i") == "ɪ, aɪ");
    CHECK(sounds("o") == "ɑ, oʊ");
    CHECK(sounds("u") == "ʌ, ju");
    for (const char* vowel : {"a", "e", "i", "o", "u"})
        CHECK(name(vowel) == ipa(taughtLetter(vowel)->sounds[1]));
}

TEST_CASE("Letters: c and g are hard, then soft, and q, x and y say what is taught") {
    CHECK(sounds("c") == "k, s");
    CHECK(sounds("g") == "ɡ, dʒ");
    CHECK(sounds("q") == "kw");
    CHECK(sounds("x") == "ks");
    CHECK(sounds("y") == "j");
    CHECK(sounds("s") == "s");
}

TEST_CASE("Letters: digraphs say one sound") {
    CHECK(sounds("sh") == "ʃ");
    CHECK(sounds("ch") == "tʃ");
    CHECK(sounds("th") == "θ, ð");
    CHECK(sounds("ng") == "ŋ");
    CHECK(sounds("ck") == "k");
    CHECK(sounds("wh") == "w");
    CHECK(sounds("ph") == "f");
    CHECK(taughtLetter("sh")->name.empty());
}

// Treiman: w's name begins with /d/ and y's with /w/.
TEST_CASE("Letters: a name may begin with another sound than the letter says") {
    CHECK(name("w").substr(0, 1) == "d");
    CHECK(name("y") == "waɪ");
    CHECK(name("h") == "eɪtʃ");
    CHECK(name("z") == "zi");
    CHECK(name("b") == "bi");
    CHECK(name("f") == "ɛf");
    CHECK(name("c") == "si");
}

TEST_CASE("Letters: all twenty-six are there with a name of their own, and nothing else is") {
    std::set<std::string> names;
    for (char letter = 'a'; letter <= 'z'; ++letter) names.insert(name(std::string(1, letter)));
    CHECK(names.size() == 26);
    CHECK(taughtLetters().size() == 26 + 7);
    for (const char* other : {"", "A", "1", "qu", "\u00E4"}) CHECK(taughtLetter(other) == nullptr);
}
