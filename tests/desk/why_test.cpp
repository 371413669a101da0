// What stands behind a line of a child's page, and a map narrowed to a part of the answers.
#include "editor/document/why.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "editor/document/class_map.hpp"
#include "editor/document/dose.hpp"
#include "editor/document/map_filter.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/desk/seat.hpp"

namespace wrenlet::desk {

TEST_CASE("Why: behind every line stand just the answers that its figures count") {
    const OpenedClass opened = demo::demoClass();
    std::size_t lines = 0;
    for (std::size_t child = 0; child < opened.children.size(); ++child)
        for (const practice::SoundLine& line : opened.children[child].lines) {
            const Why why = whyOf(opened, child, line.cell);
            const auto counted = std::count_if(why.answers.begin(), why.answers.end(),
                                               [](const WhyAnswer& one) { return one.is_counted; });
            const auto right =
                std::count_if(why.answers.begin(), why.answers.end(),
                              [](const WhyAnswer& one) { return one.is_counted && one.is_right; });
            CHECK(counted == line.evidence.seen);
            CHECK(right == line.evidence.right);
            CHECK(std::is_sorted(
                why.answers.begin(), why.answers.end(),
                [](const WhyAnswer& a, const WhyAnswer& b) { return a.day > b.day; }));
            CHECK(why.reasons.find(std::to_string(line.evidence.right) + " of " +
                                   std::to_string(line.evidence.seen)) == 0);
            CHECK(why.heading.find(wordOf(saidOf(line))) != std::string::npos);
            ++lines;
        }
    CHECK(lines > 100);
}

TEST_CASE("Why: answers given without listening are there, and said not to be counted") {
    std::vector<practice::Response> all;
    for (int at = 0; at < 70; ++at) {
        const bool listens = at < 55;
        practice::Response response;
        response.tablet = "t-1";
        response.sequence = at + 1;
        response.child = "c-1";
        response.session = 1 + at / 25;
        response.skill = "phoneme.blend";
        response.turns_on = {"t", exercise::Position::last};
        response.right = "yes";
        std::vector<std::string> listed{"yes", "no", "other"};
        std::rotate(listed.begin(), listed.begin() + at % 3, listed.end());
        response.choices = std::move(listed);
        const bool right = listens ? at % 10 != 7 : at % 4 == 0;
        response.chosen = right ? "yes" : "no";
        response.took_ms = listens ? 3'000 + at % 7 * 400 : 700;
        response.day = 20'000 + at / 25;
        all.push_back(response);
    }
    pack::ClassList list;
    list.children = {{"c-1", "Maya", "badge-01", {}}};
    const OpenedClass opened = classOf(list, all, {}, 0);
    const Why why = whyOf(opened, 0, opened.children[0].lines.front().cell);
    CHECK(why.answers.size() == 70);
    const auto left_out = std::count_if(why.answers.begin(), why.answers.end(),
                                        [](const WhyAnswer& one) { return !one.is_counted; });
    CHECK(left_out == 15);
    CHECK_FALSE(why.answers.front().is_counted);  // the newest
    CHECK(why.answers.front().note == "not counted: without listening");
    CHECK(why.reasons.find("15 more answers given without listening") != std::string::npos);
}

TEST_CASE("Why: a shielded line says so, and one never asked has no answers") {
    const OpenedClass opened = demo::demoClass();
    bool met = false;
    for (std::size_t child = 0; child < opened.children.size(); ++child)
        for (const practice::SoundLine& line : opened.children[child].lines) {
            if (line.evidence.shielded == 0) continue;
            met = true;
            CHECK(whyOf(opened, child, line.cell).reasons.find("shield") != std::string::npos);
        }
    CHECK(met);
    CHECK(
        whyOf(opened, 0, {"phoneme.first", {"never", exercise::Position::first}}).answers.empty());
}

TEST_CASE("Filter: all is all, and each choice leaves what belongs to it and nothing else") {
    const OpenedClass opened = demo::demoClass();
    const ClassMap whole = mapOf(opened, RowOrder::by_name);
    const ClassMap same = mapOf(narrowed(opened, {}), RowOrder::by_name);
    CHECK(same.columns.size() == whole.columns.size());
    int choices = 0;
    for (const FilterColumn& column : filterColumns(opened, {}))
        for (const FilterChoice& choice : column.choices) {
            ++choices;
            CHECK(choice.is_chosen == choice.filter.isAll());
            const OpenedClass left = narrowed(opened, choice.filter);
            CHECK(left.children.size() == opened.children.size());
            std::set<std::int64_t> days;
            for (const practice::Response& response : left.responses) {
                if (!choice.filter.unit.empty())
                    CHECK(unitOf(response.pack.string()) == choice.filter.unit);
                days.insert(response.day);
            }
            if (choice.filter.days > 0)
                CHECK(days.size() <= static_cast<std::size_t>(choice.filter.days));
            for (const practice::ChildProgress& child : left.children)
                for (const practice::SoundLine& line : child.lines) {
                    if (!choice.filter.skill.empty()) CHECK(line.cell.skill == choice.filter.skill);
                    if (choice.filter.position)
                        CHECK(line.cell.turns_on.position == *choice.filter.position);
                }
        }
    CHECK(choices > 10);
}

TEST_CASE("Filter: figures of the newest days are counted from their answers alone") {
    const OpenedClass opened = demo::demoClass();
    MapFilter filter;
    filter.days = 1;
    const OpenedClass left = narrowed(opened, filter);
    std::int64_t newest = 0;
    for (const practice::Response& response : opened.responses)
        newest = std::max(newest, response.day);
    for (const practice::ChildProgress& child : left.children) {
        int seen = 0, answers = 0;
        for (const practice::SoundLine& line : child.lines) seen += line.evidence.seen;
        for (const practice::LeftOut& out : child.not_counted) seen += out.answers;
        for (const practice::Response& response : opened.responses)
            answers +=
                response.child == child.child.id && response.isEvidence() && response.day == newest;
        CHECK(seen == answers);
    }
    CHECK(filterWords(filter) == "newest day");
    CHECK(filterWords({}) == "everything");
}

TEST_CASE("Filter: chosen from its list on the map, by real presses") {
    Seat seat(demo::demoClass());
    seat.alt(Key::five);
    seat.desk().showMap();
    seat.frame();
    const std::int64_t all = seat.desk().gathering().answers;
    seat.click("map filter");
    seat.click("filter:newest day");
    CHECK(seat.desk().filter().days == 1);
    CHECK(seat.desk().gathering().answers < all);
}

TEST_CASE("Dose: minutes are said as minutes, and stand against hours in all") {
    CHECK(doseOf(41 * 60'000).hours == doctest::Approx(41.0 / 60));
    CHECK(doseOf(41 * 60'000).says.find("41 minutes") == 0);
}

}  // namespace wrenlet::desk
