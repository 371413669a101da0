// Made-up words: how anyone who teaches the letters would say them, and what two synthesizers make
// of them. The words and their expected sounds were written for this test.
#include <doctest/doctest.h>

#include <array>
#include <cstdio>
#include <memory>
#include <string>

#include "editor/voice/letter_to_sound.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using speech::Phoneme;
using speech::Pronunciation;

namespace {

struct Nonword {
    std::string_view word, said;  // IPA, a space between sounds
};

constexpr Nonword kNonwords[] = {
    {"vab", "v æ b"},       {"zeb", "z ɛ b"},      {"gid", "ɡ ɪ d"},      {"fod", "f ɑ d"},
    {"tef", "t ɛ f"},       {"jub", "dʒ ʌ b"},     {"mip", "m ɪ p"},      {"yad", "j æ d"},
    {"wem", "w ɛ m"},       {"hib", "h ɪ b"},      {"lub", "l ʌ b"},      {"zop", "z ɑ p"},
    {"kez", "k ɛ z"},       {"vun", "v ʌ n"},      {"chab", "tʃ æ b"},    {"chup", "tʃ ʌ p"},
    {"shob", "ʃ ɑ b"},      {"thip", "θ ɪ p"},     {"thub", "θ ʌ b"},     {"phid", "f ɪ d"},
    {"whab", "w æ b"},      {"quib", "k w ɪ b"},   {"quav", "k w æ v"},   {"gock", "ɡ ɑ k"},
    {"vack", "v æ k"},      {"dath", "d æ θ"},     {"blid", "b l ɪ d"},   {"frub", "f ɹ ʌ b"},
    {"glep", "ɡ l ɛ p"},    {"stib", "s t ɪ b"},   {"trob", "t ɹ ɑ b"},   {"plun", "p l ʌ n"},
    {"skeb", "s k ɛ b"},    {"clup", "k l ʌ p"},   {"swid", "s w ɪ d"},   {"strup", "s t ɹ ʌ p"},
    {"splab", "s p l æ b"}, {"jamp", "dʒ æ m p"},  {"vilk", "v ɪ l k"},   {"gend", "ɡ ɛ n d"},
    {"zonk", "z ɑ ŋ k"},    {"vake", "v eɪ k"},    {"zibe", "z aɪ b"},    {"fobe", "f oʊ b"},
    {"gime", "ɡ aɪ m"},     {"stobe", "s t oʊ b"}, {"vame", "v eɪ m"},    {"feeb", "f i b"},
    {"zeem", "z i m"},      {"jaid", "dʒ eɪ d"},   {"zay", "z eɪ"},       {"boav", "b oʊ v"},
    {"veet", "v i t"},      {"doob", "d u b"},     {"stoid", "s t ɔɪ d"}, {"vark", "v ɑ ɹ k"},
    {"gorb", "ɡ ɔ ɹ b"},    {"forp", "f ɔ ɹ p"},   {"zirt", "z ɝ t"},     {"nerb", "n ɝ b"},
};

/// IPA without the spaces.
std::string close(std::string_view spaced) {
    std::string text;
    for (const char c : spaced)
        if (c != ' ') text += c;
    return text;
}

/// What espeak-ng (Debian 12) prints for the word, in our signs: no stress, no length, and its
/// vowel of "north" and "nurse" as ours.
std::string espeakSays(std::string_view word) {
    const std::string call = "espeak-ng -q --ipa -v en-us " + std::string(word) + " </dev/null";
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(call.c_str(), "r"), pclose);
    REQUIRE(pipe != nullptr);
    std::string said;
    for (std::array<char, 256> line{}; std::fgets(line.data(), line.size(), pipe.get());)
        said += line.data();
    constexpr std::array<std::array<std::string_view, 2>, 9> kSigns = {{{"ˈ", ""},
                                                                        {"ˌ", ""},
                                                                        {"ː", ""},
                                                                        {" ", ""},
                                                                        {"\n", ""},
                                                                        {"\u200d", ""},
                                                                        {"ɜ", "ɝ"},
                                                                        {"ɚ", "ɝ"},
                                                                        {"oɹ", "ɔɹ"}}};
    for (const auto& [theirs, ours] : kSigns)
        for (std::size_t at = said.find(theirs); at != said.npos; at = said.find(theirs, at))
            said.replace(at, theirs.size(), ours);
    return said;
}

}  // namespace

TEST_CASE("Unknown words: sixty made-up words, and none is in the dictionary") {
    const speech::Lexicon lexicon = fixtures::dictionary();
    CHECK(std::size(kNonwords) == 60);
    for (const Nonword& nonword : kNonwords) {
        INFO(nonword.word);
        CHECK(lexicon.lookUp(nonword.word).empty());
    }
}

// Counted here: 57 of 60. They say chab, quav and gend otherwise.
TEST_CASE("Unknown words: the desk's rules say 57 of 60 made-up words as expected") {
    const desk::FliteRules rules;
    int agreed = 0;
    std::string misses;
    for (const Nonword& nonword : kNonwords) {
        const std::string said = ipa(rules.guess(nonword.word));
        agreed += said == close(nonword.said);
        if (said != close(nonword.said)) misses += std::string(nonword.word) + " " + said + ", ";
    }
    INFO(misses);
    CHECK(agreed >= 57);
}

// Counted here: 58 of 60. It says gend and zonk otherwise.
TEST_CASE("Unknown words: espeak-ng says 58 of 60 made-up words as expected") {
    if (espeakSays("cat") != "kæt") FAIL("espeak-ng is missing or says cat otherwise");
    int agreed = 0;
    std::string misses;
    for (const Nonword& nonword : kNonwords) {
        const std::string said = espeakSays(nonword.word);
        agreed += said == close(nonword.said);
        if (said != close(nonword.said)) misses += std::string(nonword.word) + " " + said + ", ";
    }
    INFO(misses);
    CHECK(agreed >= 58);
}
