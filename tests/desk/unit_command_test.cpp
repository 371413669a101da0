// `wrenlet-desk items` and `wrenlet-desk lint` on the starter unit and on spoiled ones.
#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "content/common/files.hpp"
#include "content/exercise/skill.hpp"
#include "editor/commands/command.hpp"
#include "tests/practice/samples.hpp"

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

const std::string kStarter = WRENLET_TEST_SOURCE "/assets/starter/by-the-pond.json";

/// A unit of these words in the folder, by its path.
std::string unitOf(const practice::samples::Folder& folder, const std::string& words,
                   const std::string& accents = "") {
    const auto path = folder / "unit.json";
    REQUIRE(writeWhole(path, R"({"format": "wrenlet unit", "format_version": 1, "id": "u",
        "title": "U", "words": [)" +
                                 words + R"(], "accents": [)" + accents + "]}")
                .ok());
    return path.string();
}

std::set<std::string> codesOf(const Json& lint) {
    std::set<std::string> codes;
    for (const Json& warning : lint["warnings"]) {
        codes.insert(warning["code"].get<std::string>());
        CHECK_FALSE(warning["why"].get<std::string>().empty());
        CHECK_FALSE(warning["way_out"].get<std::string>().empty());
    }
    return codes;
}

}  // namespace

TEST_CASE("Items command: every skill's items are whole, played yet or not") {
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const std::string id(row.id);
        CAPTURE(id);
        const Said said = run(itemsCommand, {kStarter, "--skill", id, "--json"});
        CHECK(said.status == 0);
        const Json items = Json::parse(said.out, nullptr, false);
        REQUIRE(items.is_array());
        CHECK(items.empty() == !said.err.empty());
        for (const Json& item : items) {
            CHECK(item["skill"] == id);
            CHECK(item["prompt"].get<std::string>().size() > 8);
            CHECK(item["prompt"].get<std::string>().find("\"\"") == std::string::npos);
            CHECK(item["turns_on"]["phoneme"].is_string());
            CHECK_FALSE(item["turns_on"]["position"].get<std::string>().empty());
            const Json& choices = item["choices"];
            CHECK(std::count(choices.begin(), choices.end(), item["answer"]) == 1);
            CHECK(item["foils"].size() + 1 == choices.size());
            for (const Json& foil : item["foils"]) {
                CHECK(foil["choice"] != item["answer"]);
                CHECK(std::count(choices.begin(), choices.end(), foil["choice"]) == 1);
                CHECK_FALSE(foil["means"].get<std::string>().empty());
            }
        }
    }
}

TEST_CASE("Items command: what is asked reads as a question") {
    const practice::samples::Folder folder;
    const std::string unit = unitOf(folder, R"({"text": "cat", "picture": "cat"},
        {"text": "hat", "picture": "hat"}, {"text": "bat", "picture": "bat"},
        {"text": "rain", "picture": "rain"}, {"text": "train", "picture": "train"},
        {"text": "pig", "picture": "pig"}, {"text": "chair", "picture": "chair"},
        {"text": "sun", "picture": "sun"})");
    const auto asks = [&](const char* skill, const std::string& prompt) {
        INFO(std::string(skill));
        CHECK(run(itemsCommand, {unit, "--skill", skill}).out.find(prompt) != std::string::npos);
    };
    asks("phoneme.first", "Which one begins with /p/?");
    asks("phoneme.middle", "Which one has /æ/ in the middle?");
    asks("phoneme.blend", "Which word is k + æ + t?");
    asks("phoneme.delete", "Say \"train\" without /t/: which word is it?");
    CHECK(run(itemsCommand, {kStarter, "--skill", "phoneme.add"})
              .out.find("Say \"bow\" with /t/ at the end: which word is it?") != std::string::npos);
    asks("phoneme.substitute", "Say \"cat\" with /h/ for /k/: which word is it?");
    asks("phoneme.segment", "How many sounds are in \"pig\"?");
    asks("onset-rime.rhyme-pick", "Which one rhymes with \"cat\"?");
    asks("onset-rime.rhyme-judge", "Do \"cat\" and \"hat\" rhyme?");
    asks("letter.digraph", "Which letters say /tʃ/ in \"chair\"?");
    asks("letter.sound", "Which sound does the letter p say?");
}

TEST_CASE("Items command: what breaks in the unit's accents is not shown") {
    const practice::samples::Folder folder;
    const std::string words = R"({"text": "cup", "picture": "cup"},
        {"text": "bug", "picture": "bug"}, {"text": "truck", "picture": "truck"})";
    const auto items = [&](const std::string& unit, const char* skill) {
        return run(itemsCommand, {unit, "--skill", skill, "--json"});
    };
    const std::string plain = unitOf(folder, words);
    CHECK_FALSE(Json::parse(items(plain, "phoneme.segment").out).empty());
    CHECK(items(plain, "phoneme.segment").err.empty());
    const std::string there = unitOf(folder, words, R"("foot-strut", "sing-song")");
    const Said lost = items(there, "phoneme.segment");
    CHECK(lost.status == 0);
    CHECK(Json::parse(lost.out).empty());
    CHECK(lost.err.find("that hold in the unit's accents") != std::string::npos);
    CHECK(lost.err.find("sing-song") != std::string::npos);
    CHECK_FALSE(Json::parse(items(there, "onset-rime.segment").out).empty());
}

TEST_CASE("Items command: an unknown skill lists the known ones, a missing one is asked for") {
    const Said unknown = run(itemsCommand, {kStarter, "--skill", "phoneme.sing"});
    CHECK(unknown.status == 2);
    for (const exercise::SkillRow& row : exercise::skillTable())
        CHECK(unknown.err.find("  " + std::string(row.id) + " ") != std::string::npos);
    CHECK(run(itemsCommand, {kStarter}).status == 2);
    CHECK(run(itemsCommand, {"--skill", "phoneme.first"}).status == 2);
    CHECK(run(itemsCommand, {kStarter, "--skill"}).status == 2);
    const Said nowhere = run(itemsCommand, {"/nowhere.json", "--skill", "phoneme.first"});
    CHECK(nowhere.status == 1);
    CHECK(nowhere.err.find("nowhere.json") != std::string::npos);
    CHECK(nowhere.out.empty());
}

TEST_CASE("Items command: a word that is not known is told, and the others are asked about") {
    const practice::samples::Folder folder;
    const std::string unit = unitOf(folder, R"("blorb", {"text": "cat", "picture": "cat"},
        {"text": "sun", "picture": "sun"}, {"text": "pig", "picture": "pig"},
        {"text": "catblorb", "sounds": ["k", "æ", "t"], "compound": ["cat", "blorb"]},
        {"text": "hat", "picture": "no-such-picture"}, "7up")");
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const Said said = run(itemsCommand, {unit, "--skill", std::string(row.id), "--json"});
        CHECK(said.status == 1);
        CHECK(said.err.find("unit.json, words, 1") != std::string::npos);
        CHECK(said.err.find("no-such-picture") != std::string::npos);
        CHECK(said.err.find("unit.json, words, 7") != std::string::npos);
        CHECK(Json::parse(said.out, nullptr, false).is_array());
    }
    const Said first = run(itemsCommand, {unit, "--skill", "phoneme.first", "--json"});
    const Json items = Json::parse(first.out);
    CHECK(items.size() == 3);
    CHECK(first.out.find("hat") == std::string::npos);
}

TEST_CASE("Lint command: a unit's words, the words together, and the skills that lack some") {
    const practice::samples::Folder folder;
    const std::string unit = unitOf(folder, R"({"text": "cat", "picture": "cat"},
        {"text": "knee", "picture": "cat"}, "bell", "fox", "towel", "pin", "pen", "stop", "dukk")");
    const Said said = run(lintCommand, {unit, "--json"});
    CHECK(said.status == 1);
    CHECK(said.err.find("unit.json, words, 9") != std::string::npos);
    const Json lint = Json::parse(said.out, nullptr, false);
    REQUIRE(lint.is_object());
    CHECK(lint["words"] == 9);
    const std::set<std::string> codes = codesOf(lint);
    for (const char* code : {"first-letter-misleads", "vowel-before-l-or-r", "ends-in-ks",
                             "count-varies", "no-picture", "shared-picture", "accent-dependent",
                             "cluster-among-singles", "unknown", "too-few-words"})
        CHECK(codes.count(code) == 1);
    for (const Json& warning : lint["warnings"]) {
        if (warning["code"] == "unknown")
            CHECK(warning["way_out"].get<std::string>().find("/dʌk/") != std::string::npos);
        CHECK((warning["code"] == "too-few-words") == warning.contains("suggestions"));
    }
}

TEST_CASE("Lint command: a rude word, and one that looks like a compound, are told") {
    const practice::samples::Folder folder;
    const std::string unit = unitOf(folder, R"("pee", "bookshop",
        {"text": "bookcase", "compound": ["book", "case"]})");
    const Json lint = Json::parse(run(lintCommand, {unit, "--json"}).out);
    for (const auto& [code, word] : {std::pair{"rude", "pee"}, {"looks-compound", "bookshop"}}) {
        CAPTURE(word);
        std::size_t told = 0;
        for (const Json& warning : lint["warnings"])
            if (warning["code"] == code) told += warning["words"] == Json::array({word}) ? 1 : 10;
        CHECK(told == 1);
    }
}

TEST_CASE("Lint command: one skill alone, and what it suggests makes items of it") {
    const practice::samples::Folder folder;
    const std::string unit = unitOf(folder, R"({"text": "cat", "picture": "cat"})");
    const Said said = run(lintCommand, {unit, "--skill", "phoneme.last", "--json"});
    CHECK(said.status == 0);
    const Json lint = Json::parse(said.out);
    REQUIRE(lint["warnings"].size() == 1);
    CHECK(lint["warnings"][0]["skill"] == "phoneme.last");
    std::string list = "cat\n";
    for (const Json& word : lint["warnings"][0]["suggestions"])
        list += word.get<std::string>() + "\n";
    const auto path = folder / "words.txt";
    REQUIRE(writeWhole(path, list).ok());
    const Said after = run(lintCommand, {path.string(), "--skill", "phoneme.last", "--json"});
    CHECK(codesOf(Json::parse(after.out)).count("too-few-words") == 0);
    const Said items = run(itemsCommand, {path.string(), "--skill", "phoneme.last", "--json"});
    CHECK(Json::parse(items.out).size() >= 8);
}

TEST_CASE("Lint command: a clean list has nothing to warn of but skills") {
    const practice::samples::Folder folder;
    const auto path = folder / "words.txt";
    REQUIRE(writeWhole(path, "cat, sun\nmap").ok());
    const Said said = run(lintCommand, {path.string(), "--json"});
    CHECK(said.status == 0);
    CHECK(said.err.empty());
    CHECK(codesOf(Json::parse(said.out)) == std::set<std::string>{"too-few-words"});
    const Said text = run(lintCommand, {path.string(), "--skill", "letter.name"});
    CHECK(text.out.find("words.txt: 3 words, 0 warnings") != std::string::npos);
}

TEST_CASE("Lint command: says what it needs") {
    CHECK(run(lintCommand, {}).status == 2);
    CHECK(run(lintCommand, {kStarter, "--loud"}).status == 2);
    CHECK(run(lintCommand, {kStarter, "--skill", "x"}).err.find("phoneme.first") !=
          std::string::npos);
    CHECK(run(lintCommand, {"/nowhere.txt"}).status == 1);
}

}  // namespace wrenlet::desk
