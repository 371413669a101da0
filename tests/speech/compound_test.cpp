#include "content/speech/compound.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>

#include "content/speech/syllable.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;
using fixtures::said;

namespace {

bool joins(std::string_view a, std::string_view b, std::string_view whole) {
    return joinsTo(std::array{said(a), said(b)}, said(whole));
}

std::vector<CompoundSplit> split(std::string_view word) {
    const Lexicon lexicon = fixtures::dictionary();
    return compoundParts(word, [&lexicon](std::string_view part) { return lexicon.lookUp(part); });
}

/// "tree+house", or nothing.
std::string likeliest(std::string_view word) {
    const auto splits = split(word);
    return splits.empty() ? "" : splits.front().parts[0] + "+" + splits.front().parts[1];
}

struct Compound {
    const char *first, *second, *whole;
};

// Written for this test: compounds that a child of six knows.
constexpr Compound kCompounds[] = {
    {"book", "case", "bookcase"},       {"fire", "man", "fireman"},
    {"ear", "ring", "earring"},         {"fire", "fly", "firefly"},
    {"cow", "boy", "cowboy"},           {"air", "port", "airport"},
    {"light", "house", "lighthouse"},   {"sun", "flower", "sunflower"},
    {"cup", "cake", "cupcake"},         {"rain", "bow", "rainbow"},
    {"snow", "man", "snowman"},         {"mail", "man", "mailman"},
    {"police", "man", "policeman"},     {"butter", "fly", "butterfly"},
    {"bed", "room", "bedroom"},         {"bath", "room", "bathroom"},
    {"fire", "place", "fireplace"},     {"camp", "fire", "campfire"},
    {"foot", "ball", "football"},       {"basket", "ball", "basketball"},
    {"grass", "hopper", "grasshopper"}, {"finger", "nail", "fingernail"},
    {"water", "fall", "waterfall"},     {"play", "ground", "playground"},
    {"key", "board", "keyboard"},       {"horse", "shoe", "horseshoe"},
    {"skate", "board", "skateboard"},   {"moon", "light", "moonlight"},
    {"tooth", "brush", "toothbrush"},   {"door", "knob", "doorknob"},
    {"bath", "tub", "bathtub"},         {"hot", "dog", "hotdog"},
    {"note", "book", "notebook"},       {"straw", "berry", "strawberry"},
    {"some", "body", "somebody"},       {"birth", "day", "birthday"},
    {"out", "side", "outside"},         {"in", "side", "inside"},
};

}  // namespace

TEST_CASE("Compound: the parts of a compound join to it") {
    for (const Compound& compound : kCompounds) {
        INFO(compound.whole << " " << ipa(said(compound.whole)));
        CHECK(joins(compound.first, compound.second, compound.whole));
    }
}

TEST_CASE("Compound: words that only look like two words do not join") {
    CHECK_FALSE(joins("cup", "board", "cupboard"));
    CHECK_FALSE(joins("break", "fast", "breakfast"));
    CHECK_FALSE(joins("hand", "some", "handsome"));
    CHECK_FALSE(joins("car", "pet", "carpet"));
    CHECK_FALSE(joins("sea", "son", "season"));
    CHECK_FALSE(joins("mush", "room", "mushroom"));
    CHECK_FALSE(joins("pump", "kin", "pumpkin"));
    CHECK_FALSE(joins("cot", "ton", "cotton"));
    CHECK_FALSE(joins("but", "ton", "button"));
    CHECK_FALSE(joins("kit", "ten", "kitten"));
    CHECK_FALSE(joins("bee", "tree", "beat"));
    CHECK_FALSE(joins("cake", "cup", "cupcake"));
    CHECK_FALSE(joins("cup", "cake", "cup"));
    CHECK_FALSE(joins("cup", "cake", "pancake"));
    CHECK_FALSE(joinsTo({}, {}));
    CHECK_FALSE(joinsTo({}, said("cup")));
    CHECK_FALSE(joinsTo(std::array{said("cup"), Pronunciation{}}, said("cup")));
}

TEST_CASE("Compound: a consonant where parts meet is heard once or twice") {
    const auto heard = [](std::string_view line) {
        return joinsTo(std::array{said("book"), said("case")}, *fromArpabetLine(line));
    };
    CHECK(heard("B UH1 K K EY2 S"));
    CHECK(heard("B UH1 K EY2 S"));
    CHECK_FALSE(heard("B UH1 K K K EY2 S"));
    CHECK_FALSE(heard("B UH1 EY2 S"));
    CHECK_FALSE(heard("B UH1 K EY0 S"));
}

TEST_CASE("Compound: joined parts have one main stress and join to what they make") {
    const Pronunciation treehouse = joined(std::array{said("tree"), said("house")});
    CHECK(ipa(treehouse) == "tɹihaʊs");
    CHECK(treehouse[2].stress == Stress::primary);
    CHECK(treehouse[4].stress == Stress::secondary);
    CHECK(joinsTo(std::array{said("tree"), said("house")}, treehouse));
    CHECK(joined({}).empty());
}

TEST_CASE("Compound: a word is cut where both parts are heard in it") {
    for (const Compound& compound : kCompounds) {
        INFO(compound.whole);
        CHECK(likeliest(compound.whole) == std::string(compound.first) + "+" + compound.second);
    }
    for (const char* word :
         {"cupboard", "breakfast", "handsome", "carpet", "season", "mushroom", "pumpkin",
          "cotton",   "button",    "kitten",   "garden", "rabbit", "tiger",    "elephant",
          "banana",   "window",    "cat",      "a",      "",       "tomato",   "monkey"}) {
        INFO(word);
        CHECK(likeliest(word).empty());
    }
}

TEST_CASE("Compound: an unknown word is said as its parts are") {
    const Lexicon lexicon = fixtures::dictionary();
    for (const auto& [word, parts, sounds] : {std::tuple{"treehouse", "tree+house", "tɹihaʊs"},
                                              {"lunchbox", "lunch+box", "lʌntʃbɑks"},
                                              {"seahorse", "sea+horse", "sihɔɹs"},
                                              {"sandcastle", "sand+castle", "sændkæsəl"},
                                              {"dragonfly", "dragon+fly", "dɹæɡənflaɪ"}}) {
        INFO(word);
        REQUIRE(lexicon.lookUp(word).empty());
        CHECK(likeliest(word) == parts);
        CHECK(ipa(split(word).front().said) == sounds);
    }
    CHECK(split("zzyzxqv").empty());
}

TEST_CASE("Compound: a word with hyphens is cut at all of them") {
    const auto cut = [](std::string_view word) {
        std::string text;
        const auto splits = split(word);
        if (splits.empty()) return text;
        for (const std::string& part : splits.front().parts) text += part + " ";
        return text + ipa(splits.front().said);
    };
    CHECK(cut("ice-cream") == "ice cream aɪskɹim");
    CHECK(cut("teddy-bear") == "teddy bear tɛdibɛɹ");
    CHECK(cut("jack-o-lantern") == "jack o lantern dʒækoʊlæntɝn");
    CHECK(cut("zzyzx-cat") == "");
    CHECK(cut("cat-") == "");
    CHECK(cut("-") == "");
}
