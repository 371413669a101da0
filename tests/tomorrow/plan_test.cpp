// Tomorrow's plan: how it is made, changed, taken back and kept on disk.
#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string_view>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/paper/papers.hpp"
#include "editor/tomorrow/plan_at_work.hpp"
#include "editor/tomorrow/plan_file.hpp"
#include "editor/tomorrow/tomorrow_place.hpp"
#include "tests/desk/demo_class.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

using practice::samples::Folder;

const pack::Pack& starter() {
    static const pack::Pack pack = [] {
        auto read = pack::readPackFile(WRENLET_TEST_STARTER "/packs/by-the-pond-1.zip");
        REQUIRE(read.ok());
        return std::move(read.value());
    }();
    return pack;
}

const OpenedClass& demoRoom() {
    static const OpenedClass opened = demo::demoClass();
    return opened;
}

TomorrowPlan demoPlan(const TomorrowPlan& before = {}) {
    return planFor(demoRoom().children, &starter(), "by-the-pond-1.zip", before, demo::kNowMs,
                   gatheringOf(demoRoom()).answers);
}

std::string fileText(const std::filesystem::path& file) {
    const auto bytes = readWhole(file, kMostPlanBytes);
    REQUIRE(bytes.ok());
    return bytes.value();
}

}  // namespace

TEST_CASE("Plan: tables of three or four with eight items each, and a lesson of five tasks") {
    const TomorrowPlan plan = demoPlan();
    REQUIRE(plan.tables.size() >= 2);
    for (const PlannedTable& table : plan.tables) {
        CHECK(table.children.size() >= 2);
        CHECK(table.children.size() <= practice::kMostInGroup);
        CHECK(table.items.size() <= kTableItems);
    }
    CHECK(std::count_if(plan.tables.begin(), plan.tables.end(), [](const PlannedTable& table) {
              return table.items.size() == kTableItems;
          }) >= 2);
    CHECK(plan.lesson.size() == kLessonTasks);
}

TEST_CASE("Plan: the same answers give the same tables day after day, and her own moves stay") {
    const TomorrowPlan monday = demoPlan();
    const TomorrowPlan tuesday = demoPlan(monday);
    CHECK(tuesday == monday);
    PlanAtWork work(monday);
    const std::string child = monday.tables[0].children.front();
    work.moveChild(child, "Maya", monday.tables[1].id, {demoRoom().children, &starter()});
    REQUIRE(work.plan().tableOf(child)->id == monday.tables[1].id);
    const TomorrowPlan wednesday = demoPlan(work.plan());
    const PlannedTable* with = wednesday.tableOf(child);
    REQUIRE(with != nullptr);
    CHECK(with->skill == monday.tables[1].skill);
    for (const std::string& other : monday.tables[1].children)
        CHECK(wednesday.tableOf(other) == with);
}

TEST_CASE("Plan: without a pack there are tables, and nothing is asked at them") {
    const TomorrowPlan plan =
        planFor(demoRoom().children, nullptr, "gone.zip", {}, demo::kNowMs, 10);
    CHECK(plan.pack == "gone.zip");
    CHECK_FALSE(plan.tables.empty());
    CHECK(plan.tables.front().items.empty());
    CHECK(plan.lesson.empty());
}

TEST_CASE("Plan: each thing she does is one step of undo, back to the first plan and forth") {
    PlanAtWork work({});
    work.planAnew(demoPlan());
    const TomorrowPlan made = work.plan();
    const PlanSources sources{demoRoom().children, &starter()};
    Random random(5);
    std::vector<TomorrowPlan> states{work.plan()};
    for (int step = 0; step < 200; ++step) {
        const TomorrowPlan& plan = work.plan();
        const auto some = [&](std::size_t count) {
            return random.below(static_cast<std::uint32_t>(std::max<std::size_t>(1, count)));
        };
        AskedAt at;
        if (random.below(2) == 0 && !plan.tables.empty())
            at = {plan.tables[some(plan.tables.size())].id, ""};
        else if (!plan.lesson.empty())
            at = {"", plan.lesson[some(plan.lesson.size())].skill};
        const std::string& child = demoRoom().children[some(demoRoom().children.size())].child.id;
        switch (random.below(6)) {
            case 0:
                work.moveChild(child, "Maya",
                               plan.tables.empty() ? "" : plan.tables[some(plan.tables.size())].id,
                               sources);
                break;
            case 1:
                work.moveChild(child, "Maya", "", sources);
                break;
            case 2:
                work.takeItemOut(at, some(work.itemsAt(at).size()));
                break;
            case 3: {
                const auto more = moreItemsFor("phoneme.first", starter(), demoRoom().children,
                                               work.itemsAt(at), 3);
                if (!more.empty()) work.putItemIn(at, more[some(more.size())]);
                break;
            }
            case 4:
                if (at.table.empty()) work.takeTaskOut(at.skill);
                break;
            default:
                work.putTaskIn({"phoneme.last", 1,
                                moreItemsFor("phoneme.last", starter(), demoRoom().children, {},
                                             kLessonItems)});
        }
        if (!(work.plan() == states.back())) states.push_back(work.plan());
        // whatever she does can be kept and read again
        const auto read = readPlan(writePlan(work.plan()), "tomorrow.json");
        REQUIRE(read.ok());
        CHECK(read.value() == work.plan());
    }
    REQUIRE(states.size() > 60);
    for (std::size_t i = states.size() - 1; i-- > 0;) {
        REQUIRE(work.undo());
        CHECK(work.plan() == states[i]);
    }
    CHECK(work.plan() == made);
    for (std::size_t i = 1; i < states.size(); ++i) REQUIRE(work.redo());
    CHECK(work.plan() == states.back());
}

TEST_CASE("Plan: harder items stand last also when she puts one in, and none stands twice") {
    PlanAtWork work(demoPlan());
    const AskedAt at{work.plan().tables.front().id, work.plan().tables.front().skill};
    const auto more = moreItemsFor(at.skill, starter(), demoRoom().children, work.itemsAt(at), 6);
    REQUIRE_FALSE(more.empty());
    const std::size_t before = work.itemsAt(at).size();
    for (const LessonItem& item : more) {
        work.putItemIn(at, item);
        work.putItemIn(at, item);
    }
    const auto items = work.itemsAt(at);
    CHECK(items.size() == before + more.size());
    CHECK(std::is_sorted(items.begin(), items.end(),
                         [](const auto& a, const auto& b) { return a.expected > b.expected; }));
}

TEST_CASE("Plan: a file that is no plan is told with its place, whatever stands in it") {
    const std::string whole = writePlan(demoPlan());
    REQUIRE(readPlan(whole, "tomorrow.json").ok());
    const auto broken = [&](const std::string& what, const std::string& by) {
        std::string text = whole;
        const std::size_t at = text.find(what);
        REQUIRE(at != std::string::npos);
        text.replace(at, what.size(), by);
        const auto read = readPlan(text, "tomorrow.json");
        CHECK_FALSE(read.ok());
        for (const Problem& problem : read.problems()) {
            CHECK(problem.where.find("tomorrow.json") == 0);
            CHECK_FALSE(problem.what.empty());
        }
    };
    broken("\"format_version\": 1", "\"format_version\": 2");
    broken("wrenlet tomorrow", "wrenlet class");
    broken("\"answers\": ", "\"answers\": -");
    broken("\"id\": \"t-2\"", "\"id\": \"t-1\"");
    broken("by-the-pond-1.zip", "../by-the-pond-1.zip");
    broken("\"expected\": 0", "\"expected\": 7");
    broken("\"skill\": \"", "\"skill\": \"x");
    TomorrowPlan twice = demoPlan();
    twice.tables[1].children.push_back(twice.tables[0].children.front());
    CHECK_FALSE(readPlan(writePlan(twice), "tomorrow.json").ok());
    Random random(3);
    for (int i = 0; i < 400; ++i) {
        std::string text = whole;
        const auto at = random.below(static_cast<std::uint32_t>(text.size()));
        if (i % 2 == 0)
            text.resize(at);
        else
            text[at] = static_cast<char>(random.below(256));
        const auto read = readPlan(text, "tomorrow.json");
        if (i % 2 == 0) CHECK_FALSE(read.ok());
    }
}

TEST_CASE("Plan: a broken file is put aside under another name, and told") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    practice::samples::writeBytes(planFile(classroom), "{ \"format\": \"wrenlet tomorrow\"");
    const OpenedPlan opened = openPlan(classroom, {});
    CHECK_FALSE(opened.plan.isMade());
    REQUIRE(opened.problems.size() == 1);
    CHECK(opened.problems.front().way_out.find("tomorrow-as-found.json") != std::string::npos);
    CHECK(fileText(folder / "tomorrow-as-found.json") == "{ \"format\": \"wrenlet tomorrow\"");
    PlanWriter writer(classroom, opened.bytes, {});
    CHECK(writer.write(demoPlan()).is_saved);
    CHECK(openPlan(classroom, {}).plan == demoPlan());
    CHECK(fileText(folder / "tomorrow-as-found.json") == "{ \"format\": \"wrenlet tomorrow\"");
}

TEST_CASE("Plan: what another desk planned meanwhile is kept beside") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    PlanWriter one(classroom, "", {});
    REQUIRE(one.write(demoPlan()).is_saved);
    PlanWriter other(classroom, fileText(planFile(classroom)), {});
    TomorrowPlan changed = demoPlan();
    changed.lesson.pop_back();
    REQUIRE(other.write(changed).is_saved);
    const auto outcome = one.write(demoPlan());
    CHECK(outcome.is_saved);
    REQUIRE(outcome.problems.size() == 1);
    CHECK(readPlan(fileText(folder / "tomorrow-other.json"), "").value() == changed);
    CHECK(openPlan(classroom, {}).plan == demoPlan());
}

TEST_CASE("Plan: while the classroom folder is gone, a copy is kept on this machine") {
    const Folder folder, machine;
    const pack::Classroom classroom{folder / "stick"};
    PlanWriter writer(classroom, "", machine.path());
    const auto outcome = writer.write(demoPlan());
    CHECK_FALSE(outcome.is_saved);
    CHECK(outcome.problems.size() == 2);
    CHECK(fileText(PlanWriter::asideFile(machine.path(), classroom)) == writePlan(demoPlan()));
    std::filesystem::create_directory(folder / "stick");
    CHECK(writer.write(demoPlan()).is_saved);
    CHECK_FALSE(std::filesystem::exists(PlanWriter::asideFile(machine.path(), classroom)));
}

TEST_CASE("Plan: a child who is deleted is forgotten, on disk and in what could be taken back") {
    const Folder folder;
    const pack::Classroom classroom{folder.path()};
    AtOnce at_once;
    TomorrowPlace place(classroom, {at_once, at_once, {}, {}, {}});
    OpenedClass opened = demoRoom();
    opened.classroom = classroom;
    opened.list.pack.clear();
    place.planAnew(opened);
    place.step(opened, 1);
    const std::string gone = place.plan().tables.front().children.front();
    place.takeChild(gone);
    place.moveChild("", opened);
    REQUIRE(place.undo());
    place.step(opened, 10'000);
    place.finish(10'000);
    REQUIRE(fileText(planFile(classroom)).find("\"" + gone + "\"") != std::string::npos);
    // one who left the class stays known
    const auto at = std::find_if(opened.list.children.begin(), opened.list.children.end(),
                                 [&](const pack::Child& child) { return child.id == gone; });
    opened.list.left.push_back(*at);
    opened.list.children.erase(at);
    place.step(opened, 11'000);
    CHECK(place.plan().tableOf(gone) != nullptr);
    // whoever deletes the child takes the id out of the file as well
    opened.list.left.clear();
    PlanAtWork cleared(place.plan());
    std::set<std::string_view> known;
    for (const pack::Child& child : opened.list.children) known.insert(child.id);
    REQUIRE(cleared.keepOnly(known));
    practice::samples::writeBytes(planFile(classroom), writePlan(cleared.plan()) + "\n");
    place.step(opened, 12'000);
    CHECK(place.plan() == cleared.plan());
    CHECK_FALSE(place.undo());
    place.finish(12'000);
    CHECK(place.problems().empty());
    CHECK(fileText(planFile(classroom)).find("\"" + gone + "\"") == std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "tomorrow-other.json"));
}

TEST_CASE("Plan: on paper stands what she made of it, each child in one place") {
    PlanAtWork work(demoPlan());
    const std::string child = work.plan().tables.front().children.front();
    work.moveChild(child, "Maya", "", {demoRoom().children, &starter()});
    const TablesOnPaper tables = tablesOnPaper(work.plan(), demoRoom().children);
    std::size_t count = 0;
    for (const auto& group : tables.grouping.groups) count += group.children.size();
    const auto& rest = tables.grouping;
    CHECK(std::find(rest.alone.begin(), rest.alone.end(), child) != rest.alone.end());
    CHECK(count + rest.alone.size() + rest.nothing.size() + rest.not_sure.size() ==
          demoRoom().children.size());
    CHECK(tables.plans.size() == tables.grouping.groups.size());
    const std::string page = paperOf(Paper::lesson, demoRoom(), 0, work.plan(), "by-the-pond 1");
    for (const LessonTask& task : work.plan().lesson)
        for (const LessonItem& item : task.items)
            CHECK(page.find(item.said.answer) != std::string::npos);
}

TEST_CASE("Papers: a name says what it is, of whom and of which day, on every system") {
    OpenedClass opened = demoRoom();
    CHECK(paperName(Paper::lesson, opened, 0) == "lesson-2026-10-09.html");
    CHECK(paperName(Paper::xapi, opened, 0) == "statements-2026-10-09.json");
    opened.children[0].child.name = "../Zo\u00eb / \"B.\"";
    CHECK(paperName(Paper::family, opened, 0) == "family-Zo\u00eb-B-2026-10-09.html");
    opened.children[0].child.name = "???";
    CHECK(paperName(Paper::specialist, opened, 0) == "specialist-child-2026-10-09.html");
    CHECK(paperName(Paper::tables, demo::nobodyPlayed(), 0) == "small-tables.html");
}

TEST_CASE("Papers: the address of a file is one that any browser takes") {
    // forms of RFC 8089, appendix B; the percent code of RFC 3986, section 2.1
    CHECK(fileAddress("/home/ada/Room 4/a#b%.html") == "file:///home/ada/Room%204/a%23b%25.html");
    CHECK(fileAddress(std::filesystem::u8path("/x/Zo\u00eb.html")) == "file:///x/Zo%C3%AB.html");
    CHECK(fileAddress("C:/Room 4/a.html") == "file:///C:/Room%204/a.html");
}

TEST_CASE("Papers: a folder that is gone is told, and nothing is written elsewhere") {
    const Folder folder;
    const auto lost = putPaper({folder / "gone"}, "lesson.html", "x");
    REQUIRE_FALSE(lost.ok());
    CHECK_FALSE(std::filesystem::exists(folder / "gone"));
    const auto put = putPaper({folder.path()}, "lesson.html", "x");
    REQUIRE(put.ok());
    CHECK(fileText(folder / "papers" / "lesson.html") == "x");
}

}  // namespace wrenlet::desk
