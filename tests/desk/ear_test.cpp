// What a teacher marks when she asks aloud: kept apart, weighed as what it is, and never lost.
#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/files.hpp"
#include "editor/document/desk.hpp"
#include "editor/ear/ear_place.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

using practice::Heard;
using practice::HeardAs;
using practice::samples::fileBytes;
using practice::samples::Folder;
using practice::samples::writeBytes;

constexpr std::int64_t kToday = 20'785;

Heard mark(HeardAs as, const std::string& child = "c-01") {
    return {child, kToday, "phoneme.last", {"t", exercise::Position::last}, "cat", as, false};
}

/// What is said of /t/ last after these marks and no answer at a tablet.
practice::SoundLine after(const std::vector<Heard>& marks) {
    pack::ClassList list;
    list.children = {{"c-01", "Maya", "badge-01", {}}};
    const auto progress = practice::progressOf(list, {}, marks);
    REQUIRE(progress.front().lines.size() == 1);
    return progress.front().lines.front();
}

}  // namespace

TEST_CASE("Ear: marks read back as they were written, and none is there before the first") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    CHECK(openEar(classroom).value().empty());
    std::vector<Heard> marks{mark(HeardAs::right), mark(HeardAs::almost), mark(HeardAs::wrong)};
    marks[2].is_new_word = true;
    REQUIRE(changeEar(classroom, marks).ok());
    CHECK(openEar(classroom).value() == marks);
    REQUIRE(changeEar(classroom, std::span(marks).first(1), std::span(marks).last(1)).ok());
    CHECK(openEar(classroom).value() == std::vector{marks[0], marks[1], marks[0]});
}

TEST_CASE("Ear: a mark that makes no sense is left out and told, a broken file is left alone") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    REQUIRE(changeEar(classroom, std::vector{mark(HeardAs::right), mark(HeardAs::wrong)}).ok());
    std::string text = fileBytes(classroom.earFile());
    const auto at = text.find("\"wrong\"");
    REQUIRE(at != std::string::npos);
    writeBytes(classroom.earFile(), text.replace(at, 7, "\"maybe\""));
    const auto read = openEar(classroom);
    REQUIRE(read.ok());
    CHECK(read.value().size() == 1);
    CHECK(read.problems().size() == 1);

    for (const char* broken : {"", "{", "[]", "{\"format\": \"wrenlet ear\"}", "\xFF\xFE{"}) {
        writeBytes(classroom.earFile(), broken);
        CHECK_FALSE(openEar(classroom).ok());
        CHECK_FALSE(changeEar(classroom, std::vector{mark(HeardAs::right)}).ok());
        CHECK(fileBytes(classroom.earFile()) == broken);
    }
}

TEST_CASE(
    "Ear: right and wrong move what is believed, almost moves nothing, all are counted apart") {
    const double almost = after({mark(HeardAs::almost)}).evidence.reading.p_missed;
    const double nothing =
        practice::readingOf(practice::Mastery().known(practice::featuresOf(
                                "phoneme.last", {"t", exercise::Position::last})))
            .p_missed;
    CHECK(almost == doctest::Approx(nothing));
    CHECK(after({mark(HeardAs::right)}).evidence.reading.p_missed < almost - .05);
    CHECK(after({mark(HeardAs::wrong)}).evidence.reading.p_missed > almost + .05);
    const auto line = after({mark(HeardAs::right), mark(HeardAs::wrong), mark(HeardAs::wrong)});
    CHECK(line.evidence.seen == 0);
    CHECK(line.heard == practice::HeardCounts{1, 0, 2});
    CHECK(after({mark(HeardAs::almost), mark(HeardAs::almost), mark(HeardAs::almost)}).said ==
          practice::Standing::too_little);
    std::vector<Heard> wrong(8, mark(HeardAs::wrong));
    CHECK(after(wrong).said == practice::Standing::missed);
}

TEST_CASE("Ear: an answer aloud tells more than one among three, since it is hardly a guess") {
    practice::Response answer = practice::samples::response();
    answer.skill = "phoneme.last";
    answer.turns_on = {"t", exercise::Position::last};
    answer.day = kToday;
    answer.choices = {"hat", "pen", "dog"};
    pack::ClassList list;
    list.children = {{"c-01", "Maya", "badge-01", {}}};
    const auto tapped = practice::progressOf(list, std::span(&answer, 1));
    CHECK(after({mark(HeardAs::right)}).evidence.reading.p_missed <
          tapped.front().lines.front().evidence.reading.p_missed);
}

TEST_CASE("Probe: every skill gives words that nobody practised, each once, the same each time") {
    const Workbench& bench = library().bench;
    practice::Response answer = practice::samples::response();
    std::set<std::string> practised;
    for (std::size_t i = 0; i < bench.known.classroom().words.size(); i += 3)
        practised.insert(bench.known.classroom().words[i].id);
    std::size_t skills = 0;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const auto probe =
            probeFor(row.skill, bench.known.classroom(), practised, bench.blocked, 7, 5);
        std::set<std::string> asked;
        for (const AskedAloud& item : probe) {
            CHECK(practised.count(item.asked) == 0);
            CHECK(item.is_new_word);
            CHECK_FALSE(item.said.ask.empty());
            CHECK_FALSE(item.said.answer.empty());
            CHECK(asked.insert(item.said.ask).second);
        }
        skills += probe.size() == 5;
        const auto again =
            probeFor(row.skill, bench.known.classroom(), practised, bench.blocked, 7, 5);
        REQUIRE(again.size() == probe.size());
        for (std::size_t i = 0; i < probe.size(); ++i) CHECK(again[i].said == probe[i].said);
    }
    CHECK(skills >= 20);  // letters are no words, and have no new ones
    CHECK(practisedWords(std::span(&answer, 1)) == std::set<std::string>{"cat", "hat", "pen"});
}

TEST_CASE("Ear: ten are marked by key, each is in the folder at once, and undo takes each back") {
    const Folder folder;
    OpenedClass opened = demo::demoClass();
    opened.classroom.folder = folder.path();
    Seat seat(opened, 1280, 720, &library().bench);
    seat.alt(Key::five);
    seat.window().desk().openChild(0);
    seat.frame();
    seat.click("ask aloud");
    seat.click("ear fresh");
    const EarPlace& ear = seat.window().ear();
    REQUIRE(ear.isOpen());
    REQUIRE(ear.items().size() >= 3);
    const pack::Classroom& classroom = opened.classroom;
    seat.key(Key::one);
    CHECK(openEar(classroom).value().size() == 1);
    seat.key(Key::two);
    seat.click("ear wrong");
    const auto all = openEar(classroom).value();
    REQUIRE(all.size() == 3);
    CHECK(all[0].mark == HeardAs::right);
    CHECK(all[1].mark == HeardAs::almost);
    CHECK(all[2].mark == HeardAs::wrong);
    CHECK(all[2].is_new_word);
    CHECK(all[2].child == opened.children[0].child.id);
    seat.ctrl(Key::z);
    CHECK(openEar(classroom).value().size() == 2);
    seat.click("ear item 0");
    seat.key(Key::three);  // another mark for the first one
    CHECK(openEar(classroom).value().size() == 2);
    CHECK(openEar(classroom).value().back().mark == HeardAs::wrong);
    seat.ctrl(Key::z);
    CHECK(openEar(classroom).value().back().mark == HeardAs::right);
    const int gathered = seat.gathered();
    seat.key(Key::escape);
    CHECK_FALSE(ear.isOpen());
    CHECK(seat.gathered() == gathered + 1);  // figures are read anew
}

TEST_CASE("Transfer: practised and new words stand side by side") {
    std::vector<practice::Response> answers(3, practice::samples::response());
    for (practice::Response& answer : answers) answer.skill = "phoneme.last";
    answers[1].chosen = "pen";
    answers[2].try_number = 2;  // practice, no evidence
    std::vector<Heard> marks{mark(HeardAs::right), mark(HeardAs::almost), mark(HeardAs::wrong),
                             mark(HeardAs::right)};
    marks[2].is_new_word = marks[3].is_new_word = true;
    const Transfer transfer = transferOf(answers, marks, "c-01", "phoneme.last");
    CHECK(transfer.practised == 3);
    CHECK(transfer.practised_right == 2);
    CHECK(transfer.new_words == practice::HeardCounts{1, 0, 1});
    CHECK(transferOf(answers, marks, "c-02", "phoneme.last").practised == 0);
}

}  // namespace wrenlet::desk
