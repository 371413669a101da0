#include "content/link/message.hpp"

#include <doctest/doctest.h>

#include <string>

#include "content/common/random.hpp"
#include "content/link/bytes.hpp"
#include "content/link/talk.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::link;

namespace {

practice::Response response(std::int64_t sequence) {
    practice::Response one = practice::samples::response();
    one.tablet = "";
    one.sequence = sequence;
    return one;
}

std::string framed(const std::string& json) {
    std::string bytes(4, '\0');
    bytes[2] = static_cast<char>(json.size() >> 8);
    bytes[3] = static_cast<char>(json.size());
    return bytes + json;
}

pack::ClassList room() {
    pack::ClassList list;
    list.title = "Room 4";
    list.children = {{"c-01", "Wilhelmina", "badge-07", {"b/v"}, {"apple", "sock"}, "roster-9"},
                     {"c-02", "Ottokar", "badge-99", {}, {}, {}}};
    list.left = {{"c-03", "Leopoldine", "badge-03", {}, {}, {}}};
    list.deleted = {"c-04"};
    list.pack = "by-the-pond-1.zip";
    list.settings.session_minutes = 7;
    list.settings.focus = {"first-sort"};
    return list;
}

}  // namespace

TEST_CASE("Everything that is asked comes out as it went in") {
    const Hello hello{1'790'000'000'000, 12, true, hashOf("pack")};
    const WantPiece want{hashOf("pack"), 262'144};
    const Responses sent{{response(1), response(2)}};
    for (const Ask& ask : {Ask(hello), Ask(Hello{}), Ask(want), Ask(sent)})
        CHECK(readAsk(writeAsk(ask)) == ask);
}

TEST_CASE("Everything that is answered comes out as it went in") {
    Welcome welcome = welcomeOf(room());
    welcome.pack_hash = hashOf("pack");
    welcome.pack_bytes = 4;
    welcome.clock_ms = 1'790'000'000'000;
    welcome.utc_offset_min = -300;
    const std::string bytes = std::string("PK\0\xff{}", 6);
    for (const Answer& answer :
         {Answer(welcome), Answer(Welcome{}), Answer(Piece{hashOf("pack"), 4, bytes}),
          Answer(Piece{hashOf("pack"), 0, ""}), Answer(Kept{{1, 2}, {3}}), Answer(Behind{256}),
          Answer(Busy{}), Answer(Removed{})})
        CHECK(readAnswer(writeAnswer(answer)) == answer);
}

TEST_CASE("No name of a child, and nothing of the school's list, leaves the desk") {
    const std::string bytes = writeAnswer(welcomeOf(room()));
    for (const char* kept_back : {"Wilhelmina", "Ottokar", "Leopoldine", "roster-9", "Room 4"})
        CHECK(bytes.find(kept_back) == bytes.npos);
    CHECK(bytes.find("c-03") == bytes.npos);  // who left is none of a tablet's business
}

TEST_CASE("A tablet plays from a list in which each child is called what her badge shows") {
    const pack::ClassList list = classOf(welcomeOf(room()));
    REQUIRE(list.children.size() == 2);
    CHECK(list.children[0].name == "acorn");
    CHECK(list.children[1].name == "badge-99");  // one that is not drawn
    CHECK(list.children[0].key == std::vector<std::string>{"apple", "sock"});
    CHECK(list.settings.session_minutes == 7);
    CHECK(list.deleted == std::vector<std::string>{"c-04"});
    CHECK(pack::readClassList(pack::writeClassList(list), "kept").ok());
}

TEST_CASE("A full message of the longest answers goes into one, or is parted") {
    practice::Response longest = response(kHighestSequence);
    for (Text* text : {&longest.child, &longest.pack, &longest.item, &longest.skill, &longest.asked,
                       &longest.chosen, &longest.right, &longest.means})
        *text = std::string(400, '\x01');  // six letters in JSON
    longest.choices = std::vector<std::string>(16, std::string(400, '\x01'));
    for (const practice::Response& one : {response(1), longest}) {
        std::vector<practice::Response> all(1000, one);
        const std::size_t count = fitting(all);
        CHECK(count >= 1);
        CHECK(count <= kMostResponses);
        all.resize(count);
        const std::string bytes = writeAsk(Responses{all});
        CHECK(bytes.size() + 200 < kMostTalkBytes);
        CHECK(readAsk(bytes) == Ask(Responses{all}));
    }
    CHECK(fitting(std::vector(1000, response(1))) == kMostResponses);
}

TEST_CASE("An answer that makes no sense is named and the others are read") {
    practice::Response odd = response(2);
    odd.try_number = 0;
    practice::Response without_choices = response(3);
    without_choices.choices = TextList();
    const auto ask = readAsk(writeAsk(Responses{{response(1), odd, without_choices, response(4)}}));
    REQUIRE(ask);
    const auto& sent = std::get<Responses>(*ask);
    CHECK(sent.responses == std::vector{response(1), response(4)});
    CHECK(sent.senseless == std::vector<std::int64_t>{2, 3});
}

TEST_CASE("What is too much, missing or of the wrong kind is no message") {
    for (const char* json :
         {"", "[]", "3", "{}", R"({"kind":"other"})", R"({"kind":3})", R"({"kind":"hello")",
          R"({"kind":"hello","clock_ms":"now"})", R"({"kind":"hello","clock_ms":1e300})",
          R"({"kind":"hello","unsent":-1})", R"({"kind":"hello","pack":"../../etc/passwd"})",
          R"({"kind":"want"})", R"({"kind":"want","pack":"","from":0})", R"({"kind":"responses"})",
          R"({"kind":"responses","responses":[]})", R"({"kind":"responses","responses":[{}]})",
          R"({"kind":"responses","responses":[3]})",
          R"({"kind":"responses","responses":[{"sequence":0}]})",
          R"({"kind":"responses","responses":[{"sequence":18446744073709551615}]})"}) {
        CAPTURE(json);
        CHECK_FALSE(readAsk(framed(json)));
        CHECK_FALSE(readAnswer(framed(json)));
    }
    const std::vector<practice::Response> too_many(kMostResponses + 1, response(1));
    CHECK_FALSE(readAsk(writeAsk(Responses{too_many})));
    CHECK_FALSE(readAsk(framed(R"({"kind":"hello"})") + "more"));
    CHECK_FALSE(readAnswer(framed(R"({"kind":"piece","pack":"","from":0})") +
                           std::string(kPieceBytes + 1, 'x')));
    CHECK_FALSE(readAsk(framed(std::string(20, '[') + std::string(20, ']'))));
}

TEST_CASE("A message with bytes changed at random is read as one within bounds, or not at all") {
    Random random(8);
    const std::string whole = writeAsk(Responses{{response(1), response(2)}});
    int read = 0;
    for (int i = 0; i < 5'000; ++i) {
        std::string bytes = whole;
        for (std::uint32_t changes = 1 + random.below(3); changes > 0; --changes)
            bytes[random.below(static_cast<std::uint32_t>(bytes.size()))] =
                static_cast<char>(random.below(256));
        const auto ask = readAsk(bytes);
        if (!ask) continue;
        ++read;
        for (const practice::Response& one : std::get<Responses>(*ask).responses) {
            CHECK(one.sequence >= 1);
            CHECK(one.child.size() <= 400);
        }
        if (!std::get<Responses>(*ask).responses.empty())
            CHECK(readAsk(writeAsk(*ask)).has_value());
    }
    CHECK(read > 0);
}
