// A teacher plans tomorrow and writes papers, by real keys and presses.
#include <doctest/doctest.h>

#include "content/common/files.hpp"
#include "tests/desk/library.hpp"
#include "tests/desk/seat.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace {

struct Room {
    practice::samples::Folder folder;
    Seat seat;

    explicit Room(OpenedClass (*opened)() = demo::demoClass)
        : seat(classIn(folder.path(), opened()), 1280, 720, &library().bench) {
        seat.alt(Key::five);
    }
    static OpenedClass classIn(const std::filesystem::path& path, OpenedClass opened) {
        REQUIRE(writeWhole(path / "class.json", pack::writeClassList(opened.list)).ok());
        std::filesystem::create_directory(path / "packs");
        std::filesystem::copy_file(WRENLET_TEST_STARTER "/packs/by-the-pond-1.zip",
                                   path / "packs" / opened.list.pack);
        opened.classroom.folder = path;
        return opened;
    }
    TomorrowPlace& place() { return *seat.window().tomorrow(); }
    const TomorrowPlan& plan() { return place().plan(); }
    void makePlan() {
        seat.click("page:Tomorrow");
        seat.click("next");
        REQUIRE(plan().isMade());
    }
    TomorrowPlan saved() {
        seat.wait(2000);
        seat.wait(1);
        const auto bytes = readWhole(folder / "tomorrow.json", kMostPlanBytes);
        REQUIRE(bytes.ok());
        auto read = readPlan(bytes.value(), "tomorrow.json");
        REQUIRE(read.ok());
        return read.value();
    }
    std::string paper(const std::string& name) {
        const auto bytes = readWhole(folder / "papers" / name, 64 << 20);
        REQUIRE_MESSAGE(bytes.ok(), name);
        return bytes.value();
    }
};

}  // namespace

TEST_CASE("From the map the next step plans tomorrow, shows the lesson and prints it") {
    Room room;
    REQUIRE(room.seat.desk().page() == Page::map);
    room.seat.ctrl(Key::enter);
    CHECK(room.seat.desk().page() == Page::tomorrow);
    room.seat.frame();
    REQUIRE(room.plan().isMade());
    CHECK(room.seat.shows("table:t-1"));
    CHECK(room.place().table() == "t-1");
    room.seat.ctrl(Key::enter);
    CHECK(room.place().table().empty());
    CHECK(room.seat.shownOutside().empty());
    room.seat.ctrl(Key::enter);
    REQUIRE(room.seat.shownOutside().size() == 1);
    CHECK(room.seat.shownOutside()[0] == room.folder / "papers" / "lesson-2026-10-09.html");
    CHECK(room.paper("lesson-2026-10-09.html").find("Ten minutes aloud") != std::string::npos);
    room.seat.click("open printed");
    CHECK(room.seat.shownOutside().size() == 2);
    CHECK(room.saved() == room.plan());
    // opened again later, the plan is there
    room.seat.key(Key::escape);
    CHECK(room.seat.desk().page() == Page::map);
    TomorrowPlace again({room.folder.path()}, {library().at_once, library().at_once, {}, {}, {}});
    CHECK(again.plan() == room.plan());
}

TEST_CASE("A child is put at another table and back, and the class list is left alone") {
    Room room;
    room.makePlan();
    const std::string child = room.plan().tables[0].children.front();
    const std::size_t left = room.seat.desk().opened().list.children.size();
    room.seat.click("seat:" + child);
    room.seat.click("move:t-2");
    CHECK(room.plan().tableOf(child)->id == "t-2");
    CHECK(room.plan().tableOf(child)->placed == std::vector<std::string>{child});
    CHECK(room.saved().tableOf(child)->id == "t-2");
    room.seat.ctrl(Key::z);
    CHECK(room.plan().tableOf(child)->id == "t-1");
    room.seat.click("seat:" + child);
    room.seat.click("move:none");
    CHECK(room.plan().tableOf(child) == nullptr);
    room.seat.click("undo");
    CHECK(room.plan().tableOf(child)->id == "t-1");
    room.seat.ctrl(Key::y);
    CHECK(room.plan().tableOf(child) == nullptr);
    CHECK(room.seat.desk().opened().list.children.size() == left);
}

TEST_CASE("Items and tasks go out and come in by the keyboard alone") {
    Room room;
    room.makePlan();
    room.seat.key(Key::home);  // the lesson
    REQUIRE(room.place().table().empty());
    room.seat.key(Key::right);
    room.seat.key(Key::home);
    const TomorrowPlan first = room.plan();
    room.seat.key(Key::down);  // the first item of the first task
    room.seat.key(Key::erase);
    CHECK(room.plan().lesson[0].items.size() == first.lesson[0].items.size() - 1);
    const auto rows = room.place().rows();
    const auto more = std::find_if(rows.begin(), rows.end(), [](const SheetRow& row) {
        return row.kind == SheetRow::Kind::more;
    });
    for (auto i = room.place().at(); i < std::size_t(more - rows.begin()); ++i)
        room.seat.key(Key::down);
    room.seat.key(Key::enter);
    REQUIRE(room.place().isChoosing());
    room.seat.key(Key::escape);
    CHECK_FALSE(room.place().isChoosing());
    CHECK(room.seat.desk().page() == Page::tomorrow);
    room.seat.key(Key::enter);
    room.seat.key(Key::down);
    room.seat.key(Key::enter);
    CHECK(room.plan().lesson[0].items.size() == first.lesson[0].items.size());
    CHECK_FALSE(room.plan() == first);
    // a whole task
    room.seat.key(Key::home);
    room.seat.key(Key::erase);
    CHECK(room.plan().lesson.size() == first.lesson.size() - 1);
    room.seat.key(Key::end);
    room.seat.key(Key::enter);
    REQUIRE_FALSE(room.place().taskChoices().empty());
    const std::string chosen = room.place().taskChoices().front();
    room.seat.key(Key::down);
    room.seat.key(Key::enter);
    const auto& tasks = room.plan().lesson;
    CHECK(std::count_if(tasks.begin(), tasks.end(),
                        [&](const LessonTask& task) { return task.skill == chosen; }) == 1);
    for (int i = 0; i < 4; ++i) room.seat.ctrl(Key::z);
    CHECK(room.plan() == first);
}

TEST_CASE("A table's words are changed for others, and the tables are printed") {
    Room room;
    room.makePlan();
    std::string skill;
    for (const PlannedTable& table : room.plan().tables)
        if (table.items.size() == kTableItems && skill.empty()) {
            skill = table.skill;
            room.place().take(table.id);
        }
    room.seat.frame();
    const auto before = room.plan().table(room.place().table())->items;
    room.seat.click("other words");
    const auto& after = room.plan().table(room.place().table())->items;
    REQUIRE_FALSE(after.empty());
    for (const LessonItem& one : after)
        for (const LessonItem& other : before) CHECK_FALSE(one.item == other.item);
    room.seat.ctrl(Key::p);
    const std::string page = room.paper("small-tables-2026-10-09.html");
    CHECK(page.find("Small tables") != std::string::npos);
    CHECK(page.find("not a test, a screening or a diagnosis") != std::string::npos);
}

TEST_CASE("Before anybody has played there is a lesson, and no table") {
    Room room(demo::nobodyPlayed);
    room.makePlan();
    CHECK(room.plan().tables.empty());
    CHECK(room.plan().lesson.size() == kLessonTasks);
}

TEST_CASE("New answers or another pack ask for a new plan, and the old one stays until then") {
    Room room;
    room.makePlan();
    const OpenedClass& opened = room.seat.desk().opened();
    const std::int64_t answers = room.seat.desk().gathering().answers;
    CHECK_FALSE(room.place().isBehind(opened, answers));
    CHECK(room.place().isBehind(opened, answers + 3));
    OpenedClass later = opened;
    later.list.pack = "on-the-farm-1.zip";
    CHECK(room.place().isBehind(later, answers));
    CHECK(room.place().next(opened, answers + 3).sentence == "3 new answers");
    CHECK(room.place().next(opened, answers + 3).button == "Plan anew");
}

TEST_CASE("A pack that is not good is told, and tables are made all the same") {
    Room room;
    practice::samples::writeBytes(room.folder / "packs" / "by-the-pond-3.zip", "no zip");
    room.makePlan();
    CHECK_FALSE(room.plan().tables.empty());
    CHECK(room.plan().lesson.empty());
    CHECK_FALSE(room.place().problems().empty());
}

TEST_CASE("Papers of a child and of the class are written, and shown when asked") {
    Room room;
    room.seat.click("page:Papers");
    const std::string maya = room.seat.desk().opened().children[2].child.id;
    const std::string name = room.seat.desk().opened().children[2].child.name;
    room.seat.click("about:" + maya);
    CHECK(room.seat.childShown() == name);
    room.seat.click("paper:0:write");
    CHECK(room.seat.shownOutside().empty());
    CHECK(room.paper("family-" + name + "-2026-10-09.html").find(name) != std::string::npos);
    room.seat.click("paper:0:open");
    CHECK(room.seat.shownOutside().size() == 1);
    room.seat.key(Key::down);
    room.seat.key(Key::enter);
    CHECK(room.paper("specialist-" + name + "-2026-10-09.html").find(name) != std::string::npos);
    for (int i = 0; i < 3; ++i) {
        room.seat.key(Key::down);
        room.seat.ctrl(Key::enter);
    }
    for (const char* file :
         {"answers-2026-10-09.csv", "progress-2026-10-09.csv", "statements-2026-10-09.json"}) {
        const std::string text = room.paper(file);
        CHECK(text.find(maya) != std::string::npos);
        for (const auto& child : room.seat.desk().opened().children)
            CHECK_MESSAGE(text.find("\"" + child.child.name + "\"") == std::string::npos, file);
    }
    // another child's page is not written yet
    room.seat.key(Key::up);
    room.seat.key(Key::right);
    for (int i = 0; i < 4; ++i) room.seat.key(Key::up);
    CHECK(room.seat.window().papers()->at() == 0);
    CHECK(room.seat.window().papers()->written(
              Paper::family, room.seat.desk().opened().children[3].child.id) == nullptr);
}

}  // namespace wrenlet::desk
