#include "editor/paper/exports.hpp"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>
#include <regex>
#include <set>

#include "tests/desk/demo_class.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

/// A reader of RFC 4180 written for this test alone: rows of cells.
std::vector<std::vector<std::string>> cellsOf(const std::string& csv) {
    std::vector<std::vector<std::string>> rows(1, {""});
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        std::string& cell = rows.back().back();
        if (quoted && csv[i] == '"' && i + 1 < csv.size() && csv[i + 1] == '"')
            cell += csv[++i];
        else if (csv[i] == '"')
            quoted = !quoted;
        else if (!quoted && csv[i] == ',')
            rows.back().push_back("");
        else if (!quoted && csv.compare(i, 2, "\r\n") == 0) {
            rows.push_back({""});
            ++i;
        } else
            cell += csv[i];
    }
    rows.pop_back();
    return rows;
}

}  // namespace

TEST_CASE("Exports: every answer is a row, and a cell is what it was") {
    auto responses = demo::responses(3);
    responses.resize(50);
    responses[7].means = "heard \"d\", not \"t\"\nat the end";
    const auto rows = cellsOf(paper::responsesCsv(responses));
    REQUIRE(rows.size() == 51);
    for (const auto& row : rows) CHECK(row.size() == rows.front().size());
    CHECK(rows.front()[2] == "child");
    CHECK(rows[8][2] == responses[7].child);
    CHECK(rows[8][13] == responses[7].means);
    CHECK(rows[8][5] == responses[7].item);
}

TEST_CASE("Exports: nothing that a spreadsheet would run, and no child's name") {
    auto responses = demo::responses(3);
    responses.resize(1);
    for (const char* cell : {"=1+1", "+1", "-1", "@SUM(A1)", "\tx"}) {
        responses[0].chosen = cell;
        CHECK(cellsOf(paper::responsesCsv(responses))[1][10] == "'" + std::string(cell));
    }
    const OpenedClass opened = demo::demoClass();
    for (const std::string& text :
         {paper::responsesCsv(opened.responses), paper::progressCsv(opened.children),
          paper::xapiStatements(std::span(opened.responses).first(500))})
        for (const auto& child : opened.children)
            if (child.child.name.size() > 3)
                CHECK(text.find(child.child.name) == std::string::npos);
}

TEST_CASE("Exports: what is said of each child stands in the progress file") {
    const OpenedClass opened = demo::demoClass();
    const auto rows = cellsOf(paper::progressCsv(opened.children));
    std::size_t lines = 0;
    for (const auto& child : opened.children) lines += child.lines.size();
    CHECK(rows.size() == lines + 1);
    std::set<std::string> said;
    for (std::size_t i = 1; i < rows.size(); ++i) said.insert(rows[i].back());
    CHECK(said.count("missed") == 1);
    CHECK(said.count("steady") == 1);
}

// The rules are those of xAPI 1.0.3, part two, "Statements": 2.2 (properties), 2.4.1 (id), 2.4.2
// (actor: exactly one identifier), 2.4.3 (verb), 2.4.4.1 (interactions), 2.4.7 (timestamp), 4.6
// (durations).
TEST_CASE("Exports: statements are as xAPI 1.0.3 wants them") {
    auto responses = demo::responses(3);
    responses.resize(40);
    responses[0].took_ms = 12'345;
    responses[0].at_ms = 1'760'000'000'123;
    const auto statements = nlohmann::json::parse(paper::xapiStatements(responses));
    REQUIRE(statements.size() == 40);
    const std::regex uuid("[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}");
    const std::regex iri("https?://[^ ]+");
    std::set<std::string> ids;
    for (std::size_t i = 0; i < statements.size(); ++i) {
        const auto& one = statements[i];
        for (const auto& [key, value] : one.items())
            CHECK(std::set<std::string>{"id", "actor", "verb", "object", "result", "context",
                                        "timestamp"}
                      .count(key) == 1);
        CHECK(std::regex_match(one["id"].get<std::string>(), uuid));
        CHECK(ids.insert(one["id"]).second);
        CHECK(one["actor"].size() == 2);
        CHECK(one["actor"]["account"].size() == 2);
        CHECK(one["actor"]["account"]["name"] == responses[i].child.string());
        CHECK(one["verb"]["id"] == "http://adlnet.gov/expapi/verbs/answered");
        CHECK(std::regex_match(one["object"]["id"].get<std::string>(), iri));
        CHECK(one["result"]["success"] == responses[i].isRight());
        std::set<std::string> choices;
        for (const auto& choice : one["object"]["definition"]["choices"])
            CHECK(choices.insert(choice["id"]).second);
        CHECK(choices.count(one["object"]["definition"]["correctResponsesPattern"][0]) == 1);
        CHECK(choices.count(one["result"]["response"]) == 1);
        for (const auto& [key, value] : one["context"]["extensions"].items())
            CHECK(std::regex_match(key, iri));
    }
    CHECK(statements[0]["result"]["duration"] == "PT12.34S");
    CHECK(statements[0]["timestamp"] == "2025-10-09T08:53:20.123Z");
    CHECK(paper::xapiStatements(responses) == paper::xapiStatements(responses));
    CHECK(nlohmann::json::parse(paper::xapiStatements({})).empty());
}

// RFC 4122's own namespace for URLs; the value was computed with Python's uuid.uuid5.
TEST_CASE("Exports: a statement's id is the version 5 UUID of the answer's own name") {
    practice::Response response = practice::samples::response();
    response.tablet = "t-4f2a";
    response.sequence = 17;
    const auto statements = nlohmann::json::parse(paper::xapiStatements(std::span(&response, 1)));
    CHECK(statements[0]["id"] == "1572ed46-4db0-53f5-a24d-f0fc3e75c67e");
}

}  // namespace wrenlet::desk
