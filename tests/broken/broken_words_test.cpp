// Units and lists of words as they come out of other programs, mails and web pages: each bad one is
// told by its place, and the rest is kept.
#include <doctest/doctest.h>

#include <string>

#include "content/pack/pack_builder.hpp"
#include "content/pack/pasted_words.hpp"
#include "content/pack/text_rules.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;

namespace {

std::string texts(const std::vector<pack::UnitWord>& words) {
    std::string all;
    for (const pack::UnitWord& word : words) all += (all.empty() ? "" : " ") + word.text;
    return all;
}

std::string unitOf(const std::string& words) {
    return R"({"format": "wrenlet unit", "format_version": 1, "id": "u", "title": "U", "words": [)" +
           words + "]}";
}

bool says(const std::vector<Problem>& problems, std::string_view where, std::string_view what) {
    for (const Problem& problem : problems)
        if (problem.where == where && problem.what.find(what) != std::string::npos &&
            !problem.way_out.empty() && problem.weight == Problem::Weight::warning)
            return true;
    return false;
}

}  // namespace

TEST_CASE("Pasted words: lines, commas, tabs and any line ends part them") {
    const auto words = pack::readPastedWords(
        "\xEF\xBB\xBF"
        "cat, dog\r\nsun;\tmoon\r\rDON\u2019T\n\n  hat  ",
        "list");
    REQUIRE(words.ok());
    CHECK(words.problems().empty());
    CHECK(texts(words.value()) == "cat dog sun moon DON'T hat");
    CHECK(words.value()[5].place == 6);
}

TEST_CASE("Pasted words: what is no word is told by its line, and the rest is kept") {
    const std::string pasted = "cat\n\n7up\n\U0001F986\n" + std::string(300, 'a') +
                               "\ncafé\n\u05d7\u05ea\u05d5\u05dc\nкот\ndu" + std::string(1, '\0') +
                               "ck\nhot dog\nCat\nd\u202Eog\n\xff\xfe\n-\nsun";
    const auto words = pack::readPastedWords(pasted, "list");
    REQUIRE(words.ok());
    CHECK(texts(words.value()) == "cat sun");
    CHECK(words.problems().size() == 12);
    CHECK(says(words.problems(), "list, line 3", "digit"));
    CHECK(says(words.problems(), "list, line 4", "cannot be said"));
    CHECK(says(words.problems(), "list, line 5", "longer than 40 letters"));
    CHECK(says(words.problems(), "list, line 6", "not English"));
    CHECK(says(words.problems(), "list, line 7", "letters that are not English"));
    CHECK(says(words.problems(), "list, line 8", "letters that are not English"));
    CHECK(says(words.problems(), "list, line 9", "cannot be seen"));
    CHECK(says(words.problems(), "list, line 10", "several words"));
    CHECK(says(words.problems(), "list, line 11", "already"));
    CHECK(says(words.problems(), "list, line 12", "cannot be seen"));
    CHECK(says(words.problems(), "list, line 13", "readable"));
    CHECK(says(words.problems(), "list, line 14", "no letter"));
    for (const Problem& problem : words.problems()) {
        CHECK(sentence(problem).size() < 200);
        CHECK(sentence(problem).find('\0') == std::string::npos);
        CHECK(sentence(problem).find("\u202E") == std::string::npos);
        CHECK(pack::letters(sentence(problem)).has_value());
    }
}

TEST_CASE("Pasted words: of ten megabytes the beginning is read, and that is said") {
    std::string lines;
    while (lines.size() < (10u << 20)) lines += "7up\n\U0001F986\n" + std::string(500, 'b') + "\n";
    lines.insert(0, "cat\n");
    const auto words = pack::readPastedWords(lines, "list");
    REQUIRE(words.ok());
    CHECK(texts(words.value()) == "cat");
    CHECK(says(words.problems(), "list", "longer than 1 MB"));
    CHECK(words.problems().size() == 101);
    CHECK(says(words.problems(), "list", "more notes like these"));
    const auto one = pack::readPastedWords(std::string(10u << 20, 'a'), "list");
    REQUIRE(one.ok());
    CHECK(one.value().empty());
    CHECK(says(one.problems(), "list, line 1", "longer than 40 letters"));
}

TEST_CASE("Pasted words: more than two thousand are not read, and nothing at all is said so") {
    std::string many;
    for (char a = 'a'; a <= 'z'; ++a)
        for (char b = 'a'; b <= 'z'; ++b)
            for (char c = 'a'; c <= 'd'; ++c) many += std::string{a, b, c} + "\n";
    const auto words = pack::readPastedWords(many, "list");
    REQUIRE(words.ok());
    CHECK(words.value().size() == pack::kMostUnitWords);
    CHECK(says(words.problems(), "list, line 2001", "not read"));
    for (const char* empty : {"", "\n \t,;\r\n", "\xEF\xBB\xBF"})
        CHECK(says(pack::readPastedWords(empty, "list").problems(), "list", "no word here"));
}

TEST_CASE("Broken units: raw control characters and broken UTF-8 cost one word, not the file") {
    const std::string words = "\"cat\", \"du" + std::string(1, '\0') +
                              "ck\", \"h\xff"
                              "en\", \"pi\x07g\", " +
                              "\"a\\\"b\\\\\", \"sun\"";
    const auto unit = pack::readUnit(unitOf(words), "unit.json");
    REQUIRE(unit.ok());
    CHECK(texts(unit.value().words) == "cat sun");
    CHECK(says(unit.problems(), "unit.json, words, 2", "cannot be seen"));
    CHECK(says(unit.problems(), "unit.json, words, 3", "cannot be said"));
    CHECK(says(unit.problems(), "unit.json, words, 4", "cannot be seen"));
    CHECK(says(unit.problems(), "unit.json, words, 5", "cannot be said"));
    CHECK_FALSE(pack::readUnit(unitOf("\"cat\", " + std::string(1, '\0')), "unit.json").ok());
    CHECK_FALSE(pack::readUnit(unitOf("\"cat\nsun\""), "unit.json").ok());
}

TEST_CASE("Broken units: other scripts, direction marks and letters with accents are left out") {
    const auto unit = pack::readUnit(
        unitOf("\"cat\", \"\u05d7\u05ea\u05d5\u05dc\", \"d\u202Eog\", \"café\", \"кот\", "
               "{\"text\": \"piñata\", \"sounds\": [\"p\", \"ɪ\", \"n\"]}, \"Cat\""),
        "unit.json");
    REQUIRE(unit.ok());
    CHECK(texts(unit.value().words) == "cat piñata");
    CHECK(says(unit.problems(), "unit.json, words, 2", "letters that are not English"));
    CHECK(says(unit.problems(), "unit.json, words, 3", "\"d?og\" has a character"));
    CHECK(says(unit.problems(), "unit.json, words, 4", "no sounds given"));
    CHECK(says(unit.problems(), "unit.json, words, 7", "twice"));
}

TEST_CASE("Broken units: several words, an accent after its letter and a sign are told apart") {
    const auto unit = pack::readUnit(
        unitOf("\"hot dog\", \"cafe\u0301\", \"cat\u2665\", \"hot - dog\", \"sun\""), "unit.json");
    REQUIRE(unit.ok());
    CHECK(texts(unit.value().words) == "sun");
    CHECK(says(unit.problems(), "unit.json, words, 1", "is several words"));
    CHECK(says(unit.problems(), "unit.json, words, 2", "letters that are not English"));
    CHECK(says(unit.problems(), "unit.json, words, 3", "cannot be said"));
    CHECK(says(unit.problems(), "unit.json, words, 4", "is several words"));
}

TEST_CASE("Broken units: what another program saved as UTF-16 is told as that") {
    const std::string bytes("\xFF\xFE{\0}\0", 6);
    const auto unit = pack::readUnit(bytes, "unit.json");
    REQUIRE_FALSE(unit.ok());
    CHECK(sentence(unit.problems().front()).find("UTF-16") != std::string::npos);
    const auto words = pack::readPastedWords("\xFE\xFF", "list");
    REQUIRE(words.ok());
    REQUIRE(words.problems().size() == 1);
    CHECK(says(words.problems(), "list", "UTF-16"));
}

TEST_CASE("Broken units: the rest of many warnings is counted") {
    std::string words = "\"cat\"";
    for (int i = 0; i < 100; ++i) words += ",\"" + std::to_string(i) + "\"";
    const auto unit = pack::readUnit(unitOf(words), "unit.json");
    REQUIRE(unit.ok());
    CHECK(unit.problems().size() == 41);
    CHECK(says(unit.problems(), "unit.json", "There are 60 more like these."));
}

TEST_CASE("Broken units: what is known of one is read, with an error for each word that is not") {
    const auto unit = pack::readUnit(unitOf(R"("dukk", "cat", "blorb", "sun")"), "unit.json");
    REQUIRE(unit.ok());
    const auto known = pack::readKnownWords(unit.value(), fixtures::dictionary());
    REQUIRE(known.vocabulary.words.size() == 2);
    CHECK(known.vocabulary.words[1].id == "sun");
    REQUIRE(known.problems.size() == 2);
    CHECK(known.problems[1].where == "unit.json, words, 3");
    CHECK_FALSE(pack::readVocabulary(unit.value(), fixtures::dictionary()).ok());
}
