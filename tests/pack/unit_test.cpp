#include "content/pack/unit.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;
using pack::readUnit;
using pack::Unit;

namespace {

std::string unitOf(const std::string& words, const std::string& sentences = "[]") {
    return R"({"format": "wrenlet unit", "format_version": 1, "id": "farm", "title": "The farm",
 "words": )" +
           words + R"(, "sentences": )" + sentences + "}";
}

bool says(const std::vector<Problem>& problems, std::string_view where, std::string_view what) {
    for (const Problem& problem : problems)
        if (problem.where.find(where) != std::string::npos &&
            problem.what.find(what) != std::string::npos && !problem.way_out.empty())
            return true;
    return false;
}

}  // namespace

TEST_CASE("A unit is read with its words, senses, sounds and sentences") {
    const auto unit =
        readUnit(unitOf(R"(["duck", {"text": "bow", "sense": "rain", "sounds": ["b", "ˈoʊ"]},
                   {"text": "rainbow", "compound": ["rain", "bow~rain"], "picture": "rainbow"}])",
                        R"(["The duck swims.", {"id": "farm-2", "text": "It’s  wet!"}])"),
                 "farm.json");
    REQUIRE(unit.ok());
    CHECK(unit.problems().empty());
    const Unit& farm = unit.value();
    CHECK(farm.words[0].text == "duck");
    CHECK(farm.words[1].sense == "rain");
    CHECK(farm.words[1].sounds == std::vector<std::string>{"b", "ˈoʊ"});
    CHECK(farm.words[2].compound == std::vector<std::string>{"rain", "bow~rain"});
    CHECK(farm.words[2].place == 3);
    CHECK(farm.sentences[0].id == "s-1");
    CHECK(farm.sentences[1].text == "It's wet!");
}

TEST_CASE("A unit names the accents of the room, each once, and an unknown one is told") {
    const auto unit = readUnit(R"({"format": "wrenlet unit", "format_version": 1, "id": "farm",
        "title": "The farm", "words": ["hen"],
        "accents": ["th-fronting", "sing-song", "non-rhotic", "th-fronting"]})",
                               "farm.json");
    REQUIRE(unit.ok());
    CHECK(unit.value().accents ==
          std::vector{speech::Accent::th_fronting, speech::Accent::non_rhotic});
    REQUIRE(unit.problems().size() == 1);
    const Problem& unknown = unit.problems()[0];
    CHECK(unknown.weight == Problem::Weight::warning);
    CHECK(says(unit.problems(), "farm.json, accents, 2", "\"sing-song\""));
    for (const speech::Accent accent : speech::allAccents())
        CHECK(unknown.way_out.find(speech::accentName(accent)) != std::string::npos);
    CHECK(readUnit(unitOf(R"(["hen"])"), "farm.json").value().accents.empty());
}

TEST_CASE("Broken JSON is told with its line") {
    const auto unit = readUnit("{\"format\": \"wrenlet unit\",\n \"id\" \"farm\"}", "farm.json");
    REQUIRE_FALSE(unit.ok());
    CHECK(unit.problems()[0].where == "farm.json, line 2");
}

TEST_CASE("What cannot be said is left out by its place, and the rest is kept") {
    std::string control = unitOf(R"(["duck", "du\u0007ck", "7up", "🦆", ")" +
                                     std::string(300, 'a') + R"(", "", "duck", "hen"])",
                                 R"(["The hen has 3 eggs.", "The hen sits."])");
    const auto unit = readUnit(control, "farm.json");
    REQUIRE(unit.ok());
    REQUIRE(unit.value().words.size() == 2);
    CHECK(unit.value().words[1].text == "hen");
    CHECK(unit.value().sentences.size() == 1);
    CHECK(says(unit.problems(), "farm.json, words, 2", "cannot be seen"));
    CHECK(says(unit.problems(), "farm.json, words, 3", "digit"));
    CHECK(says(unit.problems(), "farm.json, words, 4", "\"🦆\""));
    CHECK(says(unit.problems(), "farm.json, words, 5", "longer than 40 letters"));
    CHECK(says(unit.problems(), "farm.json, words, 6", "empty"));
    CHECK(says(unit.problems(), "farm.json, words, 7", "twice"));
    CHECK(says(unit.problems(), "farm.json, sentences, 1", "digit"));
}

TEST_CASE("Fields of the wrong kind are all told at once") {
    const auto unit = readUnit(
        R"({"format": "wrenlet unit", "format_version": 1, "id": "The Farm", "title": 7,
            "words": [{"text": "hen", "sounds": "h"}, 5], "sentences": {},
            "accents": "th-fronting"})",
        "farm.json");
    REQUIRE_FALSE(unit.ok());
    CHECK(says(unit.problems(), "farm.json, id", "\"The Farm\""));
    CHECK(says(unit.problems(), "farm.json, title", "text in quotes"));
    CHECK(says(unit.problems(), "farm.json, words, 1, sounds", "list"));
    CHECK(says(unit.problems(), "farm.json, words, 2", "fields"));
    CHECK(says(unit.problems(), "farm.json, sentences", "list"));
    CHECK(says(unit.problems(), "farm.json, accents", "list"));
    for (const char* accents : {"[7]", "{}", R"(["th-fronting", null])"}) {
        const auto wrong = readUnit(
            R"({"format": "wrenlet unit", "format_version": 1, "id": "farm", "title": "The farm",
            "words": ["hen"], "accents": )" +
                std::string(accents) + "}",
            "farm.json");
        CHECK_FALSE(wrong.ok());
        CHECK(says(wrong.problems(), "farm.json, accents", "list"));
    }
}

TEST_CASE("A paste of ten megabytes, a deep nest and a list of 2001 are refused") {
    CHECK_FALSE(readUnit(std::string(10 << 20, 'a'), "farm.json").ok());
    CHECK_FALSE(readUnit(std::string(100'000, '['), "farm.json").ok());
    std::string many = "[\"a\"";
    for (int i = 0; i < 2000; ++i) many += ",\"a\"";
    const auto unit = readUnit(unitOf(many + "]"), "farm.json");
    REQUIRE_FALSE(unit.ok());
    CHECK(says(unit.problems(), "farm.json, words", "2001 entries"));
}

TEST_CASE("Another file and a newer one are told apart") {
    const auto other = readUnit(R"({"format": "something"})", "farm.json");
    CHECK(says(other.problems(), "farm.json", "not a unit"));
    const auto newer = readUnit(R"({"format": "wrenlet unit", "format_version": 2})", "farm.json");
    CHECK(says(newer.problems(), "farm.json", "another version"));
}
