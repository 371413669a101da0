// Whatever a teacher does to her class list can be taken back, is on disk soon, and never costs
// what somebody else wrote.
#include <doctest/doctest.h>

#include <set>

#include "content/common/files.hpp"
#include "content/pack/badges.hpp"
#include "content/pack/picture_key.hpp"
#include "content/practice/shield.hpp"
#include "editor/classlist/class_merge.hpp"
#include "editor/classlist/open_class_list.hpp"
#include "editor/classlist/shield_choices.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace fs = std::filesystem;

namespace {

using practice::samples::Folder;

pack::ClassList room() {
    pack::ClassList list;
    list.title = "Room 4";
    list.pack = "pond-1.zip";
    for (const char* name : {"Maya", "Leo", "Sol"})
        list.children.push_back({std::string("c-") + name[0],
                                 name,
                                 std::string(pack::kBadges[list.children.size()].id),
                                 {}});
    for (pack::Child& child : list.children)
        for (char& letter : child.id)
            if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return list;
}

bool badgesDiffer(const pack::ClassList& list) {
    std::set<std::string> badges;
    for (const pack::Child& child : list.children)
        if (pack::badge(child.badge) == nullptr || !badges.insert(child.badge).second) return false;
    return true;
}

pack::ClassList onDisk(const fs::path& folder) {
    const auto read = pack::openClassList({folder});
    REQUIRE(read.ok());
    return read.value();
}

void put(const fs::path& folder, const pack::ClassList& list) {
    REQUIRE(writeWhole(folder / "class.json", pack::writeClassList(list)).ok());
}

std::vector<std::string> names(const std::vector<pack::Child>& children) {
    std::vector<std::string> all;
    for (const pack::Child& child : children) all.push_back(child.name);
    return all;
}
using Names = std::vector<std::string>;

/// Something a teacher may do, by chance.
void doSomething(ClassAtWork& work, Random& random, int number) {
    const auto& list = work.list();
    const auto any = [&](const std::vector<pack::Child>& children) {
        return children.empty()
                   ? std::string()
                   : children[random.below(static_cast<std::uint32_t>(children.size()))].id;
    };
    const auto& shields = shieldChoices();
    switch (random.below(9)) {
        case 0:
            work.add({{"Child" + std::to_string(number), "Vale", "r" + std::to_string(number)},
                      {"Maya", "King", ""}},
                     "list");
            return;
        case 1:
            work.leave(any(list.children));
            return;
        case 2:
            work.comeBack(any(list.left));
            return;
        case 3:
            work.giveBadge(any(list.children), pack::kBadges[random.below(36)].id);
            return;
        case 4:
            work.giveKeyByChance(any(list.children));
            return;
        case 5:
            work.giveKey(any(list.children), {});
            return;
        case 6:
            work.setShields(
                any(list.children),
                {std::string(shields[random.below(static_cast<std::uint32_t>(shields.size()))].id)},
                random.below(2) == 0, "b/v");
            return;
        case 7:
            work.rename(any(list.children), "Name " + std::to_string(number));
            return;
        default:
            work.keepGivenNames({any(list.children)});
    }
}

}  // namespace

TEST_CASE("A thousand things done to a class, taken back, give the same file byte for byte") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        CAPTURE(seed);
        ClassAtWork work(room(), seed);
        const std::string before = pack::writeClassList(work.list());
        Random random(seed + 100);
        for (int i = 0; i < 1000; ++i) {
            doSomething(work, random, i);
            REQUIRE(badgesDiffer(work.list()));
            for (std::uint32_t back = random.below(3); back > 0; --back) work.undo();
            if (random.below(2) == 0)
                while (work.redo()) {
                }
        }
        const std::string after = pack::writeClassList(work.list());
        CHECK(after != before);
        const auto read = pack::readClassList(after, "class.json");
        REQUIRE(read.ok());
        CHECK(read.problems().empty());
        CHECK(read.value() == work.list());
        int undone = 0;
        while (work.undo()) ++undone;
        CHECK(pack::writeClassList(work.list()) == before);
        for (int i = 0; i < undone; ++i) work.redo();
        CHECK(pack::writeClassList(work.list()) == after);
    }
}

TEST_CASE("Only given names are kept, but for two that are alike") {
    ClassAtWork work({}, 1);
    const auto told = work.add({{"Maya", "King", "1"},
                                {"Leo", "Brook", "2"},
                                {"Maya", "Kent", "3"},
                                {"Maya", "Vale", "4"}},
                               "users.csv");
    CHECK(told.empty());
    CHECK(names(work.list().children) == Names{"Maya K.", "Leo", "Maya Ke.", "Maya V."});
    CHECK(badgesDiffer(work.list()));
    CHECK(pack::writeClassList(work.list()).find("Brook") == std::string::npos);
    // the same list once more adds nobody
    CHECK(work.add({{"Leo", "Brook", "2"}}, "users.csv").at(0).what ==
          "All of these children are in the class already.");
    // a name that is there already, with nothing to tell them apart
    const auto twice = work.add({{"Leo", "", ""}, {"Ida", "", ""}}, "What you typed");
    REQUIRE(twice.size() == 1);
    CHECK(twice[0].way_out == "If this is another one, write a letter with the name: Leo B.");
    CHECK(work.list().children.size() == 5);
}

TEST_CASE("A badge is never given twice, and when all are given that is told") {
    ClassAtWork work({}, 1);
    std::vector<NewChild> many;
    for (std::size_t i = 0; i < pack::kBadges.size() + 2; ++i)
        many.push_back({"Child" + std::to_string(i), "", "", i + 1});
    const auto told = work.add(many, "list");
    CHECK(work.list().children.size() == pack::kBadges.size());
    CHECK(badgesDiffer(work.list()));
    REQUIRE(told.size() == 2);
    CHECK(told[0].what.find("all badges are given") != std::string::npos);
    const std::string first = work.list().children[0].id, badge = work.list().children[0].badge;
    work.giveBadge(first, work.list().children[1].badge);
    CHECK(work.list().children[1].badge == badge);
    CHECK(badgesDiffer(work.list()));
    // who left has no badge to hold, and gets another one on coming back
    work.leave(first);
    work.add({{"Ola", "", ""}}, "list");
    CHECK_FALSE(work.comeBack(first));
    work.leave(work.list().children.back().id);
    CHECK(work.comeBack(first));
    CHECK(badgesDiffer(work.list()));
}

TEST_CASE("A child who leaves is kept whole, and the school's list brings the same one back") {
    ClassAtWork work({}, 1);
    work.add({{"Maya", "", "s-1"}}, "users.csv");
    const pack::Child maya = work.list().children[0];
    work.setShields(maya.id, {"b/v"}, true, "berry, very");
    work.leave(maya.id);
    CHECK(work.list().children.empty());
    REQUIRE(work.leftChild(maya.id) != nullptr);
    CHECK(work.leftChild(maya.id)->shields == Names{"b/v"});
    work.add({{"Maya", "", "s-1"}}, "users.csv");
    REQUIRE(work.child(maya.id) != nullptr);
    CHECK(work.child(maya.id)->shields == Names{"b/v"});
    CHECK(work.list().left.empty());
}

TEST_CASE("A key is two pictures that are not alike, and by chance nobody else's") {
    ClassAtWork work(room(), 3);
    work.giveKey("c-m", {"sock", "sock"});
    work.giveKey("c-m", {"sock", "dragon"});
    CHECK(work.child("c-m")->key.empty());
    std::set<std::vector<std::string>> keys;
    for (const char* id : {"c-m", "c-l", "c-s"}) {
        work.giveKeyByChance(id);
        CHECK(work.child(id)->key.size() == pack::kKeyLength);
        CHECK(keys.insert(work.child(id)->key).second);
    }
    work.giveKey("c-m", {});
    CHECK(work.child("c-m")->key.empty());
}

TEST_CASE("Every shield that is offered covers the contrast that it names") {
    for (const ShieldChoice& choice : shieldChoices()) {
        CAPTURE(choice.id);
        const std::string id(choice.id);
        const std::vector<std::string> shields{id};
        std::string one, other;
        if (const auto slash = id.find('/'); slash != std::string::npos) {
            one = id.substr(0, slash);
            other = id.substr(slash + 1);
        } else {
            // the mergers, by the vowels that practice/shield.hpp names
            one = id == "pin-pen" ? "\u026a" : id == "cot-caught" ? "\u0251" : "\u025b";
            other = id == "pin-pen" ? "\u025b" : id == "cot-caught" ? "\u0254" : "\u00e6";
        }
        exercise::TurnsOn turns_on;
        turns_on.sound = one;
        CHECK(practice::isShielded(turns_on, "heard /" + other + "/ for /" + one + "/ first",
                                   shields));
        CHECK_FALSE(practice::isShielded(turns_on, "heard /m/ for /" + one + "/ first", shields));
        CHECK_FALSE(std::string(choice.says).empty());
    }
    for (const ShieldSet& set : shieldSets())
        for (const std::string& id : set.shields) CHECK(shieldChoice(id) != nullptr);
}

TEST_CASE(
    "A change is on disk within two seconds, and the file is read anew before it is written") {
    const Folder folder;
    put(folder.path(), room());
    AtOnce at_once;
    OpenClassList list({folder.path()}, room(), {at_once, {}, {}, 1});
    list.change().rename("c-m", "Maja");
    for (std::int64_t now = 0; now <= 2000; now += 50) list.step(now);
    CHECK(list.isSaved());
    CHECK(onDisk(folder.path()).child("c-m")->name == "Maja");
    // a pack is handed out meanwhile: it stays out, and undo still reaches what was done before
    REQUIRE(changeClassFile({folder.path()}, [](pack::ClassList& there) {
                there.pack = "pond-2.zip";
            }).ok());
    list.change().rename("c-l", "Leon");
    list.finish(3000);
    CHECK(onDisk(folder.path()).pack == "pond-2.zip");
    CHECK(onDisk(folder.path()).child("c-l")->name == "Leon");
    CHECK(list.problems().empty());
    CHECK(list.list().pack == "pond-2.zip");
    CHECK(list.change().undo());
    CHECK(list.change().undo());
    list.finish(4000);
    pack::ClassList expected = room();
    expected.pack = "pond-2.zip";
    CHECK(onDisk(folder.path()) == expected);
}

TEST_CASE("What somebody else did to the class meanwhile is brought together and told") {
    const Folder folder;
    put(folder.path(), room());
    AtOnce at_once;
    OpenClassList mine({folder.path()}, room(), {at_once, {}, {}, 1});
    OpenClassList theirs({folder.path()}, room(), {at_once, {}, {}, 2});
    theirs.change().leave("c-s");
    theirs.change().add({{"Ida", "", ""}}, "list");
    theirs.change().setShields("c-m", {"b/v"}, true, "berry, very");
    theirs.finish(0);
    mine.change().add({{"Wim", "", ""}}, "list");
    mine.change().rename("c-m", "Maja");
    mine.finish(10);
    const pack::ClassList both = onDisk(folder.path());
    CHECK(names(both.children) == Names{"Maja", "Leo", "Ida", "Wim"});
    CHECK(names(both.left) == Names{"Sol"});
    CHECK(both.child("c-m")->shields == Names{"b/v"});
    CHECK(badgesDiffer(both));
    CHECK(mine.list() == both);
    REQUIRE(mine.problems().size() == 1);
    CHECK(mine.problems()[0].what == "Somebody else changed the class list meanwhile.");
    CHECK(mine.isSaved());
}

TEST_CASE("Two states of a class that went apart lose no child, whoever did what") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        CAPTURE(seed);
        ClassAtWork mine(room(), seed), theirs(room(), seed + 1000);
        Random random(seed + 5000);
        for (int i = 0; i < 25; ++i) {
            doSomething(mine, random, i);
            doSomething(theirs, random, 1000 + i);
        }
        const pack::ClassList made = mergeClassLists(room(), mine.list(), theirs.list());
        std::set<std::string> ids, once;
        for (const auto* list : {&made.children, &made.left})
            for (const pack::Child& child : *list) CHECK(once.insert(child.id).second);
        for (const auto* state : {&mine.list(), &theirs.list()})
            for (const auto* list : {&state->children, &state->left})
                for (const pack::Child& child : *list) ids.insert(child.id);
        CHECK(ids == once);
        if (made.children.size() <= pack::kBadges.size()) CHECK(badgesDiffer(made));
        CHECK(mergeClassLists(room(), mine.list(), room()).children == mine.list().children);
        CHECK(mergeClassLists(room(), room(), theirs.list()) == theirs.list());
    }
}

TEST_CASE("A stick that is pulled out costs nothing, and is written when it is back") {
    const Folder folder;
    const fs::path stick = folder / "stick", aside = folder / "aside";
    fs::create_directories(stick);
    put(stick, room());
    AtOnce at_once;
    OpenClassList list({stick}, room(), {at_once, aside, {}, 1});
    fs::rename(stick, folder / "out");
    list.change().rename("c-m", "Maja");
    list.finish(0);
    CHECK_FALSE(list.isSaved());
    REQUIRE(list.problems().size() == 2);
    CHECK(list.problems()[0].what == "The classroom folder is not there.");
    CHECK_FALSE(fs::exists(stick));
    CHECK(fs::exists(aside / "class-stick.json"));
    fs::rename(folder / "out", stick);
    REQUIRE(list.due());
    list.step(*list.due());
    CHECK(list.isSaved());
    CHECK(onDisk(stick).child("c-m")->name == "Maja");
    CHECK_FALSE(fs::exists(aside / "class-stick.json"));
}

TEST_CASE("A class file of which not all is understood is copied before it is written over") {
    const Folder folder;
    std::string bytes = pack::writeClassList(room());
    bytes.replace(bytes.find("\"focus\": []"), 11, "\"focus\": [\"tone.hum\"]");
    practice::samples::writeBytes(folder / "class.json", bytes);
    AtOnce at_once;
    OpenClassList list({folder.path()}, onDisk(folder.path()), {at_once, {}, {}, 1});
    list.change().rename("c-m", "Maja");
    list.finish(0);
    CHECK(list.isSaved());
    CHECK(practice::samples::fileBytes(folder / "class-as-found.json") == bytes);
    // one that is broken is kept too, and the list goes on
    practice::samples::writeBytes(folder / "class.json", "{ broken");
    list.change().rename("c-m", "Maya");
    list.finish(10);
    CHECK(practice::samples::fileBytes(folder / "class-as-found-2.json") == "{ broken");
    CHECK(onDisk(folder.path()).child("c-m")->name == "Maya");
}

}  // namespace wrenlet::desk
