// What is said of a child: counts, order, and differences that are not errors.
#include "content/practice/progress.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <vector>

#include "content/practice/shield.hpp"

namespace wrenlet::practice {

namespace {

using exercise::Position;

// `seen` first tries on one sound, of them `right` right, the others with this meaning.
void answers(std::vector<Response>& all, const char* child, const char* skill,
             const exercise::TurnsOn& turns_on, int seen, int right, const char* means) {
    for (int at = 0; at < seen; ++at) {
        Response response;
        response.tablet = "t-1";
        response.sequence = static_cast<std::int64_t>(all.size()) + 1;
        response.child = child;
        response.skill = skill;
        response.turns_on = turns_on;
        response.right = "yes";
        response.choices = {"yes", "no", "other"};
        response.chosen = at < right ? "yes" : "no";
        response.means = at < right ? "" : means;
        response.took_ms = 1'000;
        response.day = 20'000 + at % 3;
        all.push_back(response);
    }
}

pack::ClassList classOf(std::vector<std::string> shields) {
    pack::ClassList list;
    list.title = "Room 4";
    list.children = {{"c-1", "Ada", "badge-01", std::move(shields)},
                     {"c-2", "Ben", "badge-02", {}}};
    return list;
}

}  // namespace

TEST_CASE("Every child of the class is told of, in its order, also one who has not played") {
    std::vector<Response> all;
    answers(all, "c-2", "phoneme.blend", {"t", Position::last}, 6, 6, "");
    answers(all, "gone", "phoneme.blend", {"t", Position::last}, 6, 6, "");
    const auto children = progressOf(classOf({}), all);
    REQUIRE(children.size() == 2);
    CHECK(children[0].child.name == "Ada");
    CHECK(children[0].answers == 0);
    CHECK(children[0].lines.empty());
    CHECK(children[1].answers == 6);
    CHECK(children[1].days == 3);
    CHECK(children[1].practised_ms == 6'000);
}

TEST_CASE("Sounds stand by skill in the table's order and, within one, the most missed first") {
    std::vector<Response> all;
    answers(all, "c-1", "phoneme.blend", {"n", Position::last}, 20, 20, "");
    answers(all, "c-1", "phoneme.blend", {"t", Position::last}, 20, 5, "heard /d/ for /t/ last");
    answers(all, "c-1", "phoneme.blend", {"p", Position::last}, 20, 8, "heard /b/ for /p/ last");
    answers(all, "c-1", "sentence.count", {"5", Position::word_count}, 2, 2, "");
    const auto lines = progressOf(classOf({}), all)[0].lines;
    REQUIRE(lines.size() == 4);
    CHECK(lines[0].cell.skill == "sentence.count");
    CHECK(lines[0].said == Standing::too_little);
    CHECK(lines[1].cell.turns_on.sound == "t");
    CHECK(lines[1].said == Standing::missed);
    CHECK(lines[2].cell.turns_on.sound == "p");
    CHECK(lines[3].said == Standing::steady);
    CHECK(lines[1].evidence.taken.at("heard /d/ for /t/ last") == 15);
}

TEST_CASE("A sound missed only along a shielded contrast is never called missed") {
    std::vector<Response> all;
    answers(all, "c-1", "phoneme.blend", {"b", Position::first}, 20, 6, "heard /v/ for /b/ first");
    REQUIRE(progressOf(classOf({}), all)[0].lines[0].said == Standing::missed);
    const SoundLine line = progressOf(classOf({"b/v"}), all)[0].lines[0];
    CHECK(line.shielded);
    CHECK(line.said != Standing::missed);
    CHECK(line.evidence.seen == 20);  // the counts stay as they were
    CHECK(line.evidence.right == 6);
}

TEST_CASE("A shield covers its own contrast and nothing else") {
    std::vector<Response> all;
    answers(all, "c-1", "phoneme.blend", {"b", Position::first}, 20, 6, "heard /d/ for /b/ first");
    const SoundLine line = progressOf(classOf({"b/v", "nonsense", "/"}), all)[0].lines[0];
    CHECK(!line.shielded);
    CHECK(line.said == Standing::missed);
}

TEST_CASE("A merger shields whole rimes too, and ɡ may be typed as g") {
    const std::vector<std::string> merger{"pin-pen"}, typed{"g/k"};
    CHECK(isShielded({"ɛn", Position::rime}, "heard /ɪn/ for /ɛn/", merger));
    CHECK_FALSE(isShielded({"ɛn", Position::rime}, "heard /æt/ for /ɛn/", merger));
    CHECK(isShielded({"ɡ", Position::last}, "heard /k/ for /ɡ/ last", typed));
    CHECK_FALSE(isShielded({"ɡ", Position::last}, "heard /d/ for /ɡ/ last", typed));
}

TEST_CASE("Answers given without listening stand in no line, and their day is told") {
    std::vector<Response> all;
    int touches = 0;
    for (int at = 0; at < 70; ++at) {
        const bool listens = at < 55;  // two sessions and a half
        Response response;
        response.tablet = "t-1";
        response.sequence = at + 1;
        response.child = "c-1";
        response.session = 1 + at / 25;
        response.skill = "phoneme.blend";
        response.turns_on = {at % 2 == 0 ? "t" : "p", Position::last};
        response.right = "yes";
        std::vector<std::string> listed{"yes", "no", "other"};
        std::rotate(listed.begin(), listed.begin() + at % 3, listed.end());
        response.choices = std::move(listed);
        const bool right = listens ? at % 10 != 7 : at % 4 == 0;
        response.chosen = right ? "yes" : "no";
        response.means = right ? "" : "heard another sound";
        response.took_ms = listens ? 3'000 + at % 7 * 400 : 700;
        response.day = 20'000 + at / 25;
        touches += listens ? 0 : 1;
        all.push_back(response);
    }
    const auto children = progressOf(classOf({}), all);
    const ChildProgress& child = children[0];
    CHECK(child.answers == 70);
    const auto days = answersByDay(child.not_counted);
    REQUIRE(days.size() == 1);
    CHECK(days.begin()->first == 20'002);
    CHECK(days.begin()->second == touches);
    int counted = 0, taken = 0;
    for (const SoundLine& line : child.lines) {
        counted += line.evidence.seen;
        taken += line.evidence.seen - line.evidence.right;
    }
    CHECK(counted == 70 - touches);
    CHECK(taken == 5);
    CHECK(children[1].not_counted.empty());
    const auto json = nlohmann::json::parse(progressJson(classOf({}), children, {}));
    CHECK(json["children"][0]["not_counted"][0]["day"] == 20'002);
    CHECK(json["children"][0]["not_counted"][0]["answers"] == touches);
    CHECK(json["children"][1]["not_counted"].empty());
}

TEST_CASE("The JSON carries counts, words, foils, problems and the caution") {
    std::vector<Response> all;
    answers(all, "c-1", "phoneme.blend", {"t", Position::last}, 20, 5, "heard /d/ for /t/ last");
    pack::ClassList list = classOf({});
    list.title = "Room \xff 4";
    const std::vector<Problem> problems{{"t-9.db", "Cut short.", "Gather again."}};
    const auto json = nlohmann::json::parse(progressJson(list, progressOf(list, all), problems));
    CHECK(json["caution"].get<std::string>().find("not a diagnosis") != std::string::npos);
    CHECK(json["children"].size() == 2);
    const auto& sound = json["children"][0]["sounds"][0];
    CHECK(sound["said"] == "missed");
    CHECK(sound["seen"] == 20);
    CHECK(sound["right_first_time"] == 5);
    CHECK(sound["position"] == "last");
    CHECK(sound["foils_taken"][0]["times"] == 15);
    CHECK(json["problems"][0]["where"] == "t-9.db");
}

}  // namespace wrenlet::practice
