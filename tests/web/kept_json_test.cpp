#include "game/web/kept_json.hpp"

#include <doctest/doctest.h>

#include <nlohmann/json.hpp>

#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::web;
using nlohmann::json;

TEST_CASE("What a browser kept comes back as it was, under the numbers the browser gave") {
    const practice::Session session{4,      "c-01", "pond 1", 18'446'744'073'709'551'615u,
                                    20'000, 61'000, true};
    const practice::Response response = practice::samples::response();
    const json all = {{"sessions", {{4, sessionText(session)}}},
                      {"responses", {{17, 4, responseText(response)}}}};
    const auto kept = readKept(all.dump());
    REQUIRE(kept.ok());
    CHECK(kept.value().unreadable == 0);
    CHECK(kept.value().sessions == std::vector{session});
    practice::Response expected = response;
    expected.tablet = Text();
    expected.sequence = 17;
    expected.session = 4;
    CHECK(kept.value().responses == std::vector{expected});
}

TEST_CASE("What makes no sense of what a browser kept is left out, and the rest stays") {
    const practice::Session session{1, "c-01", "pond 1", 7, 20'000, 0, false};
    const std::string good = responseText(practice::samples::response());
    const json all = {{"sessions", {{1, sessionText(session)}, {2, "{}"}, {3, 5}, "x"}},
                      {"responses",
                       {{1, 1, good},
                        {2, 9, good},  // no such session
                        {3, 1, "{}"},
                        {4, 1, "no JSON"},
                        {-5, 1, good},
                        {1, 1}}}};
    const auto kept = readKept(all.dump());
    REQUIRE(kept.ok());
    CHECK(kept.value().sessions.size() == 1);
    CHECK(kept.value().responses.size() == 1);
    CHECK(kept.value().unreadable == 8);
    CHECK_FALSE(readKept("").ok());
    CHECK_FALSE(readKept("[]").ok());
    CHECK_FALSE(readKept("{\"sessions\": [], \"responses\": 1}").ok());
}
