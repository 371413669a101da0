// `wrenlet-desk word` and `wrenlet-desk rhyme` on the built dictionary and the classroom list.
#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>
#include <vector>

#include "editor/commands/command.hpp"

namespace wrenlet::desk {

namespace {

using Json = nlohmann::json;

struct Said {
    int status;
    std::string out, err;
};

Said run(int (*command)(std::span<const std::string>, Console), std::vector<std::string> args) {
    std::ostringstream out, err;
    const int status = command(args, {out, err, WRENLET_TEST_SHARE});
    return {status, out.str(), err.str()};
}

/// What is said of one word, which must be known.
Json about(const std::string& word) {
    const Said said = run(wordCommand, {word, "--json"});
    INFO(word);
    CHECK(said.status == 0);
    CHECK(said.err.empty());
    const Json json = Json::parse(said.out, nullptr, false);
    REQUIRE(json.is_object());
    return json;
}

Json rhyme(std::vector<std::string> args) {
    args.push_back("--json");
    const Said said = run(rhymeCommand, args);
    CHECK(said.status == 0);
    const Json json = Json::parse(said.out, nullptr, false);
    REQUIRE(json.is_object());
    return json;
}

bool warns(const Json& word, std::string_view code) {
    for (const Json& warning : word["warnings"])
        if (warning["code"] == code)
            return !warning["why"].get<std::string>().empty() &&
                   !warning["way_out"].get<std::string>().empty();
    return false;
}

Json list(std::initializer_list<const char*> texts) {
    Json json = Json::array();
    for (const char* text : texts) json.push_back(text);
    return json;
}

}  // namespace

// The sounds of cat are those that the National Reading Panel (2000) gives: k-a-t.
TEST_CASE(
    "Word command: a word is told with its sounds, parts and source, and nothing to warn of") {
    const Json cat = about("Cat");
    CHECK(cat["word"] == "cat");
    CHECK(cat["sense"].is_null());
    CHECK(cat["ipa"] == list({"k", "æ", "t"}));
    CHECK(cat["syllables"] == Json::array({list({"k", "æ", "t"})}));
    CHECK(cat["onset"] == list({"k"}));
    CHECK(cat["rime"] == list({"æ", "t"}));
    CHECK(cat["first"] == "k");
    CHECK(cat["middle"] == "æ");
    CHECK(cat["last"] == "t");
    CHECK(cat["compound"].is_null());
    CHECK(cat["source"] == "dictionary");
    CHECK(cat["warnings"].empty());
}

TEST_CASE("Word command: symbols are those of the International Phonetic Alphabet") {
    CHECK(about("frog")["ipa"] == list({"f", "ɹ", "ɑ", "ɡ"}));
    CHECK(about("cheese")["first"] == "tʃ");
    CHECK(about("giraffe")["first"] == "dʒ");
    CHECK(about("box")["ipa"].size() == 4);
}

TEST_CASE("Word command: a word without an onset, a long word, a word of one vowel") {
    CHECK(about("egg")["onset"] == Json::array());
    CHECK(about("egg")["middle"].is_null());
    const Json banana = about("banana");
    CHECK(banana["onset"].is_null());
    CHECK(banana["rime"].is_null());
    CHECK(banana["middle"].is_null());
    CHECK(banana["syllables"].size() == 3);
    CHECK(about("eye")["first"] == about("eye")["last"]);
}

TEST_CASE("Word command: a compound of the classroom list is told with its words, part by part") {
    const Json bedroom = about("bedroom");
    CHECK(bedroom["compound"] == list({"bed", "room"}));
    CHECK(bedroom["syllables"] == Json::array({list({"b", "ɛ", "d"}), list({"ɹ", "u", "m"})}));
    CHECK(about("rainbow")["compound"] == list({"rain", "bow"}));
    CHECK(about("carpet")["compound"].is_null());
}

TEST_CASE("Word command: the list's sense is told, and the others of the spelling are named") {
    const Json bow = about("bow");
    CHECK(bow["sense"] == "tied in hair");
    CHECK(bow["ipa"] == list({"b", "oʊ"}));
    CHECK(warns(bow, "several-senses"));
    CHECK(about("bow~bend")["ipa"] == list({"b", "aʊ"}));
    CHECK(about("bow~bend")["source"] == "repaired");
    CHECK(run(wordCommand, {"bow~ship"}).status == 1);
}

TEST_CASE("Word command: what the dictionary lacks is guessed, and to be confirmed by ear") {
    const Json vab = about("vab");
    CHECK(vab["source"] == "rules");
    CHECK(vab["ipa"] == list({"v", "æ", "b"}));
    CHECK(warns(vab, "confirm-by-ear"));
    const Json made = about("frogmoon");
    CHECK(made["source"] == "parts");
    CHECK(made["compound"] == list({"frog", "moon"}));
    CHECK(warns(made, "confirm-by-ear"));
    CHECK(about("doorknob")["source"] == "repaired");
    const Said mumbled = run(wordCommand, {"qwrtp", "--json"});
    CHECK(mumbled.status == 1);
    CHECK(mumbled.err.find("not known") != std::string::npos);
}

TEST_CASE("Word command: what lint says of a word is told with it") {
    CHECK(warns(about("fire"), "count-varies"));
    CHECK(warns(about("knee"), "first-letter-misleads"));
    CHECK(warns(about("bell"), "vowel-before-l-or-r"));
    CHECK(warns(about("clock"), "rude-remainder"));
    CHECK(warns(about("pee"), "rude"));
    CHECK_FALSE(warns(about("pea"), "rude"));
    CHECK(about("sun")["warnings"].empty());
}

TEST_CASE("Word command: a word that looks like a compound and is on no list is told") {
    CHECK(warns(about("bookshop"), "looks-compound"));
    CHECK(about("bookshop")["compound"].is_null());
    for (const char* known : {"bedroom", "carpet", "cat", "basket", "frogmoon"}) {
        CAPTURE(known);
        CHECK_FALSE(warns(about(known), "looks-compound"));
    }
    const Json cream = about("ice-cream");
    CHECK(warns(cream, "looks-compound"));
    CHECK(cream["syllables"] == Json::array({list({"aɪ", "s"}), list({"k", "ɹ", "i", "m"})}));
}

TEST_CASE("Word command: several words are a list, and what is no word costs the others nothing") {
    std::vector<std::string> asked = {"dog",
                                      "7up",
                                      "",
                                      "\U0001F986",
                                      std::string(300, 'a'),
                                      "кот",
                                      "\u05d7\u05ea\u05d5\u05dc",
                                      "café",
                                      std::string("du\0ck", 5),
                                      "du\x07"
                                      "ck",
                                      "\xff\xfe",
                                      "cat\u202Etac",
                                      "two words",
                                      "sun",
                                      "--json"};
    const Said said = run(wordCommand, asked);
    CHECK(said.status == 1);
    const Json words = Json::parse(said.out, nullptr, false);
    REQUIRE(words.is_array());
    REQUIRE(words.size() == 2);
    CHECK(words[0]["word"] == "dog");
    CHECK(words[1]["word"] == "sun");
    CHECK(std::count(said.err.begin(), said.err.end(), '\n') == 12);
    for (const char* part : {"digits", "no word", "longer", "English letters", "several words"})
        CHECK(said.err.find(part) != std::string::npos);
    // Nothing that moves a terminal's cursor or turns its text around comes back out.
    for (const char* hidden : {"\x07", "\u202E", "\xff"})
        CHECK(said.err.find(hidden) == std::string::npos);
    CHECK(said.err.find('\0') == std::string::npos);
    const Said alone = run(wordCommand, {"7up", "--json"});
    CHECK(alone.status == 1);
    CHECK(alone.out.empty());
}

TEST_CASE("Word command: as text it says the same, and without words what it needs") {
    const Said said = run(wordCommand, {"ship", "vab"});
    CHECK(said.status == 0);
    CHECK(said.out.find("ship  /ʃɪp/") != std::string::npos);
    CHECK(said.out.find("first ʃ, middle ɪ, last p") != std::string::npos);
    CHECK(said.out.find("confirm-by-ear") != std::string::npos);
    CHECK(run(wordCommand, {}).status == 2);
    CHECK(run(wordCommand, {"cat", "--loud"}).status == 2);
    std::ostringstream out, err;
    const std::vector<std::string> words{"cat"};
    CHECK(wordCommand(words, {out, err, "/nowhere"}) == 1);
    CHECK_FALSE(err.str().empty());
}

TEST_CASE("Rhyme command: yes, no, and words that are said alike") {
    CHECK(rhyme({"bear", "chair"})["rhyme"] == "yes");
    CHECK(rhyme({"bear", "chair"})["kind"] == "perfect");
    CHECK(rhyme({"bear", "ear"})["rhyme"] == "no");
    CHECK(rhyme({"bear", "ear"})["kind"] == "none");
    CHECK(rhyme({"pear", "pair"})["kind"] == "homophone");
    CHECK(rhyme({"pear", "pair"})["rhyme"] == "no");
    CHECK(rhyme({"leave", "believe"})["kind"] == "identical");
    CHECK_FALSE(rhyme({"bear", "ear"})["why"].get<std::string>().empty());
}

TEST_CASE("Rhyme command: an accent that is on can make it depend") {
    CHECK(rhyme({"pen", "pin"})["rhyme"] == "no");
    CHECK(rhyme({"hen", "pin"})["rhyme"] == "no");
    CHECK(rhyme({"hen", "pin", "--accent", "pin-pen"})["rhyme"] == "depends");
    CHECK(rhyme({"hen", "pin", "--accent", "cot-caught", "--accent", "pin-pen"})["rhyme"] ==
          "depends");
    const Said unknown = run(rhymeCommand, {"hen", "pin", "--accent", "martian"});
    CHECK(unknown.status == 2);
    CHECK(unknown.err.find("martian") != std::string::npos);
    CHECK(unknown.err.find("cot-caught") != std::string::npos);
    CHECK(unknown.err.find("non-rhotic") != std::string::npos);
    CHECK(run(rhymeCommand, {"hen", "pin", "--accent"}).status == 2);
}

TEST_CASE("Rhyme command: another way to say a word, and a guess, are told in the reason") {
    const Json read = rhyme({"read", "bed"});
    CHECK(read["rhyme"] == "no");
    CHECK(read["why"].get<std::string>().find("/ɹɛd/ and /bɛd/, they rhyme") != std::string::npos);
    const Json guess = rhyme({"vab", "cab"});
    CHECK(guess["rhyme"] == "yes");
    CHECK(guess["why"].get<std::string>().find("confirm by ear") != std::string::npos);
}

TEST_CASE("Rhyme command: needs two words, and names each that is none") {
    CHECK(run(rhymeCommand, {"cat"}).status == 2);
    CHECK(run(rhymeCommand, {"cat", "hat", "bat"}).status == 2);
    const Said said = run(rhymeCommand, {"c4t", "\U0001F986", "--json"});
    CHECK(said.status == 1);
    CHECK(said.out.empty());
    CHECK(std::count(said.err.begin(), said.err.end(), '\n') == 2);
    CHECK(run(rhymeCommand, {"cat", "hat"}).out.substr(0, 3) == "yes");
}

}  // namespace wrenlet::desk
