// What the desk says of a class, from answers written out by hand and from the invented class.
#include <doctest/doctest.h>

#include <algorithm>

#include "editor/document/desk.hpp"
#include "editor/look/wording.hpp"
#include "tests/desk/demo_class.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Position;

// Answers of one child to one sound: `right` of them right, the rest the same foil.
void answers(std::vector<practice::Response>& all, const char* child, const char* skill,
             exercise::TurnsOn turns_on, const char* asked, const char* head, const char* foil,
             int seen, int right, std::int64_t day = 20'000) {
    for (int at = 0; at < seen; ++at) {
        practice::Response response;
        response.tablet = "t-1";
        response.sequence = static_cast<std::int64_t>(all.size()) + 1;
        response.child = child;
        response.skill = skill;
        response.turns_on = turns_on;
        response.asked = asked;
        response.right = head;
        // Missed now and then, and not always in one place: as children do who listen.
        const bool is_right = (at + 1) * right / seen > at * right / seen;
        std::vector<std::string> listed{head, foil, "other"};
        std::rotate(listed.begin(), listed.begin() + at % 3, listed.end());
        response.choices = std::move(listed);
        response.chosen = is_right ? head : foil;
        response.means = is_right ? "" : std::string("took ") + foil;
        response.took_ms = 4'000;
        response.session = day;
        response.day = day;
        all.push_back(response);
    }
}

pack::ClassList twoChildren() {
    pack::ClassList list;
    list.title = "Room 4";
    list.children = {{"c-1", "Ada", "badge-01", {}}, {"c-2", "Ben", "badge-02", {}}};
    return list;
}

constexpr const char* kRhyme = "onset-rime.rhyme-sort";

OpenedClass rhymers() {
    std::vector<practice::Response> all;
    answers(all, "c-1", kRhyme, {"æt", Position::rime}, "cat", "hat", "ten", 20, 20);
    answers(all, "c-1", kRhyme, {"ɛn", Position::rime}, "hen", "ten", "hat", 20, 19, 20'001);
    answers(all, "c-2", kRhyme, {"æt", Position::rime}, "cat", "hat", "ten", 20, 18);
    answers(all, "c-2", kRhyme, {"ɛn", Position::rime}, "hen", "ten", "hat", 20, 6, 20'001);
    return classOf(twoChildren(), all, {}, 0);
}

}  // namespace

TEST_CASE("The child who misses most stands first, and within a skill the sound missed most") {
    const OpenedClass opened = rhymers();
    const ClassMap map = mapOf(opened, RowOrder::most_missed);
    REQUIRE(map.rows.size() == 2);
    CHECK(opened.children[map.rows[0].child].child.name == "Ben");
    CHECK(map.rows[0].missed == 1);
    REQUIRE(map.columns.size() == 2);
    CHECK(map.columns[0].label == "–ɛn");
    CHECK(map.columns[0].missed == 1);
    CHECK(map.rows[0].cells[0].said == Said::missed);
    const ClassMap by_name = mapOf(opened, RowOrder::by_name);
    CHECK(opened.children[by_name.rows[0].child].child.name == "Ada");
}

TEST_CASE("On the invented class rows and columns fall from most missed to least") {
    const ClassMap map = mapOf(demo::demoClass(), RowOrder::most_missed);
    REQUIRE(map.rows.size() == 22);
    CHECK(map.rows.front().missed > 0);
    for (std::size_t at = 1; at < map.rows.size(); ++at)
        CHECK(map.rows[at].missed <= map.rows[at - 1].missed);
    for (const MapGroup& group : map.groups)
        for (std::size_t at = group.first + 1; at < group.first + group.count; ++at)
            CHECK(map.columns[at].missed <= map.columns[at - 1].missed);
    for (std::size_t column = 0; column < map.columns.size(); ++column) {
        const auto missed = std::count_if(map.rows.begin(), map.rows.end(), [&](const MapRow& row) {
            return row.cells[column].said == Said::missed;
        });
        CHECK(missed == map.columns[column].missed);
    }
}

TEST_CASE("What stands out first is what most children miss, with their names") {
    const OpenedClass opened = rhymers();
    const auto standouts = standsOut(opened, mapOf(opened, RowOrder::most_missed));
    REQUIRE(!standouts.empty());
    CHECK(standouts[0].head == "Rhyme ɛn: 1 child misses it");
    CHECK(standouts[0].body == "Ben. Most often: took hat.");
    CHECK(standouts[0].column == 0);
}

TEST_CASE("A child's page says in a sentence what is missed and counts the rest") {
    const OpenedClass opened = rhymers();
    const ChildStory ben = storyOf(opened, 1);
    CHECK(ben.summary == "Misses rhyme ɛn. Steady on 1 of 2 places.");
    CHECK(ben.facts.substr(0, 21) == "40 answers on 2 days,");
    REQUIRE(ben.groups.size() == 1);
    REQUIRE(ben.groups[0].rows.size() == 2);
    CHECK(ben.groups[0].rows[0].label == "–ɛn");
    CHECK(ben.groups[0].rows[0].right == 6);
    CHECK(ben.groups[0].rows[0].seen == 20);
    CHECK(ben.groups[0].rows[0].examples == "hen");
    CHECK(ben.groups[0].rows[0].guess == doctest::Approx(1.0 / 3));
}

TEST_CASE("A child's page says which answers are not counted, and why") {
    practice::ChildProgress child;
    CHECK(notCountedSentence(child).empty());
    child.not_counted = {{"t-1", 4, 20'760, 31, 42, 12}};  // 3 November 2026
    CHECK(notCountedSentence(child) ==
          "12 answers on 3 Nov not counted: answered without listening.");
    child.not_counted.push_back({"t-1", 9, 20'763, 90, 90, 1});
    child.not_counted.push_back({"t-2", 2, 20'763, 7, 14, 8});
    CHECK(notCountedSentence(child) ==
          "21 answers on 6 Nov and 3 Nov not counted: answered without listening.");
}

TEST_CASE("The heads of a sort stand for their rimes in the table of what was chosen") {
    const ChoicesTaken taken = choicesTaken(rhymers(), "c-2", kRhyme);
    CHECK(taken.answers == 40);
    REQUIRE(taken.table.has_value());
    REQUIRE(taken.table->labels == std::vector<std::string>{"–æt", "–ɛn"});
    CHECK(taken.table->times == std::vector<std::vector<int>>{{18, 2}, {14, 6}});
    REQUIRE(taken.foils.size() == 2);
    CHECK(taken.foils[0].asked == "hen");
    CHECK(taken.foils[0].chosen == "hat");
    CHECK(taken.foils[0].times == 14);
    CHECK(taken.foils[0].of == 20);
}

TEST_CASE("Numbers of words make a table of their own") {
    std::vector<practice::Response> all;
    answers(all, "c-1", "sentence.count", {"5", Position::word_count}, "s-1", "5", "4", 9, 6);
    const ChoicesTaken taken =
        choicesTaken(classOf(twoChildren(), all, {}, 0), "c-1", "sentence.count");
    REQUIRE(taken.table.has_value());
    CHECK(taken.table->labels == std::vector<std::string>{"4", "5"});
    CHECK(taken.table->times == std::vector<std::vector<int>>{{0, 0}, {3, 6}});
}

TEST_CASE("Joined words are told as foils, for a word is not a sound") {
    std::vector<practice::Response> all;
    answers(all, "c-1", "phoneme.blend", {"t", Position::last}, "cat", "cat", "cap", 9, 6);
    const ChoicesTaken taken =
        choicesTaken(classOf(twoChildren(), all, {}, 0), "c-1", "phoneme.blend");
    CHECK(!taken.table.has_value());
    REQUIRE(taken.foils.size() == 1);
    CHECK(taken.foils[0].means == "took cap");
    CHECK(taken.foils[0].times == 3);
}

TEST_CASE("A second try is practice and changes no count") {
    std::vector<practice::Response> all;
    answers(all, "c-1", kRhyme, {"æt", Position::rime}, "cat", "hat", "ten", 5, 5);
    practice::Response again = all.back();
    again.sequence = 99;
    again.try_number = 2;
    again.chosen = "ten";
    again.day = 20'007;
    all.push_back(again);
    const OpenedClass opened = classOf(twoChildren(), all, {}, 0);
    CHECK(gatheringOf(opened).answers == 5);
    CHECK(choicesTaken(opened, "c-1", kRhyme).answers == 5);
    CHECK(courseOf(opened, "c-1", kRhyme).days.size() == 1);
}

TEST_CASE("The course counts each day for itself and keeps the latest") {
    const Course course = courseOf(rhymers(), "c-2", kRhyme);
    REQUIRE(course.days.size() == 2);
    CHECK(course.days[0].right == 18);
    CHECK(course.days[1].right == 6);
    CHECK(course.guess == doctest::Approx(1.0 / 3));
    CHECK(courseOf(rhymers(), "c-2", kRhyme, 1).days[0].day == 20'001);
}

TEST_CASE("The desk knows what it has to show") {
    CHECK(stateOf(OpenedClass{}) == ClassState::no_folder);
    CHECK(stateOf(demo::unreadableList()) == ClassState::no_list);
    CHECK(stateOf(demo::noChildren()) == ClassState::no_children);
    CHECK(stateOf(demo::nobodyPlayed()) == ClassState::nobody_played);
    CHECK(stateOf(demo::demoClass()) == ClassState::ready);
    for (const OpenedClass& opened :
         {OpenedClass{}, demo::unreadableList(), demo::noChildren(), demo::nobodyPlayed()}) {
        Desk desk(opened);
        desk.movePoint(1, 1);
        desk.openPointed();
        CHECK(desk.next().kind == NextStep::Kind::gather);
    }
}

TEST_CASE("Following the next step visits every child who misses something, once") {
    Desk desk(demo::demoClass());
    std::vector<std::size_t> seen;
    for (int steps = 0; steps < 50; ++steps) {
        const NextStep next = desk.next();
        if (next.kind != NextStep::Kind::see_child) break;
        seen.push_back(next.child);
        desk.openChild(next.child);
    }
    const auto needy = std::count_if(desk.map().rows.begin(), desk.map().rows.end(),
                                     [](const MapRow& row) { return row.missed > 0; });
    CHECK(static_cast<std::ptrdiff_t>(seen.size()) == needy);
    std::sort(seen.begin(), seen.end());
    CHECK(std::unique(seen.begin(), seen.end()) == seen.end());
    CHECK(desk.next().kind == NextStep::Kind::see_map);
}

TEST_CASE("Gathering again keeps the child, the skill and the place pointed at") {
    Desk desk(demo::afterOneDay());
    desk.orderBy(RowOrder::by_name);
    desk.movePoint(4, 3);
    const practice::Cell cell = desk.map().columns[desk.point().column].cell;
    desk.openPointed();
    const std::string child = desk.opened().children[desk.child()].child.id;
    desk.replace(demo::demoClass());
    CHECK(desk.page() == Page::child);
    CHECK(desk.opened().children[desk.child()].child.id == child);
    CHECK(desk.map().columns[desk.point().column].cell == cell);
    desk.replace(demo::noChildren());
    CHECK(desk.page() == Page::map);
}

TEST_CASE("The place pointed at stops at the map's edges") {
    Desk desk(demo::demoClass());
    desk.movePoint(-3, -3);
    CHECK(desk.point() == MapPoint{0, 0});
    desk.movePoint(1000, 1000);
    CHECK(desk.point() == MapPoint{desk.map().rows.size() - 1, desk.map().columns.size() - 1});
    CHECK(desk.pointedLine() == nullptr);  // the last child has not played
}

}  // namespace wrenlet::desk
