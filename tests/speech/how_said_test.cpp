#include "content/speech/how_said.hpp"

#include <doctest/doctest.h>

#include "content/speech/typed_word.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;

namespace {

/// Says /z/ to everything, and counts how often it is asked.
class OneSound : public LetterToSound {
  public:
    Pronunciation guess(std::string_view) const override {
        ++asked;
        return {{Phoneme::z}};
    }
    mutable int asked = 0;
};

}  // namespace

TEST_CASE("How said: the dictionary first, then the parts, and the rules last") {
    const Lexicon lexicon = fixtures::dictionary();
    const OneSound rules;
    const HowSaid cat = howSaid(" Cat ", lexicon, &rules);
    CHECK(cat.source == SaidBy::dictionary);
    CHECK_FALSE(cat.confirm_by_ear);
    CHECK(ipa(cat.pronunciations.front()) == "kæt");

    const HowSaid doorknob = howSaid("doorknob", lexicon, &rules);
    CHECK(doorknob.source == SaidBy::repaired);

    const HowSaid treehouse = howSaid("treehouse", lexicon, &rules);
    CHECK(treehouse.source == SaidBy::parts);
    CHECK(treehouse.confirm_by_ear);
    CHECK(treehouse.parts == std::vector<std::string>{"tree", "house"});
    CHECK(ipa(treehouse.pronunciations.front()) == "tɹihaʊs");
    CHECK(rules.asked == 0);

    const HowSaid vab = howSaid("vab", lexicon, &rules);
    CHECK(vab.source == SaidBy::rules);
    CHECK(vab.confirm_by_ear);
    CHECK(ipa(vab.pronunciations.front()) == "z");
    CHECK(rules.asked == 1);
    CHECK(howSaid("vab", lexicon, nullptr).pronunciations.empty());
}

TEST_CASE("How said: what is no word is said in no way, and the rules are not asked") {
    const Lexicon lexicon = fixtures::dictionary();
    const OneSound rules;
    for (const std::string& odd :
         {std::string(), std::string("  "), std::string("4"), std::string("c4t"),
          std::string(300, 'a'), std::string("vab\0b", 5), std::string("\U0001F408"),
          std::string("кот"), std::string("käse"), std::string("two words"), std::string("'-'"),
          std::string("\xff\xfe"), std::string("vab;ls")})
        CHECK(howSaid(odd, lexicon, &rules).pronunciations.empty());
    CHECK(rules.asked == 0);
}

TEST_CASE("Typed word: put into the dictionary's form, or refused in plain words") {
    CHECK(typedWord(" DON\u2019T\n").value() == "don't");
    CHECK(typedWord("t-shirt").value() == "t-shirt");
    const auto what = [](std::string_view typed) { return typedWord(typed).problems().front(); };
    CHECK(what("").what == "There is no word here.");
    CHECK(what("7").what == "This has digits in it.");
    CHECK(what("\U0001F408").what == "This is not written in English letters.");
    CHECK(what("hot dog").what == "These are several words.");
    CHECK(what(std::string(300, 'a')).what == "This is longer than any word.");
    CHECK(what(std::string(300, 'a')).where.size() < 60);
    CHECK(what("\x01\xff").where == "\"??\"");
    CHECK(what(std::string_view("a\0b", 3)).where == "\"a?b\"");
    CHECK(what("a\u202Eb\u200B\u2066\uFEFF\u0085").where == "\"a?b????\"");
    CHECK(what("\xE0\x80\x80\xED\xA0\x80\xF0\x80\x80\x80").where == "\"??????????\"");
    CHECK(what("\u05d7\u05ea").where == "\"\u05d7\u05ea\"");
}
