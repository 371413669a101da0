// Saving a unit as she works: soon, whole, and never over somebody else's work.
#include <doctest/doctest.h>

#include <fstream>

#include "content/common/files.hpp"
#include "editor/unit/unit_folder.hpp"
#include "tests/desk/library.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {

namespace fs = std::filesystem;

namespace {

using Folder = practice::samples::Folder;

pack::Unit unitOf(const std::string& title) {
    pack::Unit unit;
    unit.id = "reeds";
    unit.title = title;
    return unit;
}

std::string titleIn(const fs::path& file) {
    const auto bytes = readWhole(file, 1 << 20);
    if (!bytes.ok()) return "";
    const auto unit = pack::readUnit(bytes.value(), "unit.json");
    return unit.ok() ? unit.value().title : "";
}

}  // namespace

TEST_CASE("A change is on disk within two seconds, however she goes on typing") {
    const Folder temp;
    const UnitFolder folder = newUnitFolder(temp.path(), "Reeds");
    AtOnce at_once;
    UnitSaver saver(UnitWriter(folder, "", temp.path() / "aside"), at_once);
    std::int64_t saved_at = -1;
    std::uint64_t changes = 0;
    for (std::int64_t now = 0; now < 5000 && saved_at < 0; now += 50) {
        saver.changed(++changes, now);  // never quiet
        saver.step(unitOf("Reeds"), now);
        if (saver.isSaved()) saved_at = now;
    }
    CHECK(saved_at >= 0);
    CHECK(saved_at <= 2000);
    CHECK(titleIn(folder.file()) == "Reeds");
    CHECK(saver.problems().empty());
}

TEST_CASE("Nothing is written when nothing changed") {
    const Folder temp;
    const UnitFolder folder = newUnitFolder(temp.path(), "Reeds");
    AtOnce at_once;
    UnitSaver saver(UnitWriter(folder, "", {}), at_once);
    CHECK_FALSE(saver.due());
    saver.finish(unitOf("Reeds"), 10'000);
    CHECK_FALSE(fs::exists(folder.file()));
}

TEST_CASE("A classroom folder that vanishes is told, and the work is put aside until it is back") {
    const Folder temp;
    const fs::path classroom = temp.path() / "stick";
    fs::create_directories(classroom);
    const UnitFolder folder = newUnitFolder(classroom, "Reeds");
    const fs::path aside = temp.path() / "aside";
    AtOnce at_once;
    UnitSaver saver(UnitWriter(folder, "", aside), at_once);
    fs::rename(classroom, temp.path() / "pulled-out");
    saver.changed(1, 0);
    saver.finish(unitOf("Kept"), 0);
    CHECK_FALSE(saver.isSaved());
    REQUIRE(saver.problems().size() == 2);
    CHECK(saver.problems()[0].what == "The classroom folder is not there.");
    CHECK_FALSE(fs::exists(classroom));
    CHECK(titleIn(aside / "reeds.json") == "Kept");
    // it opens next time with a word about that copy
    fs::rename(temp.path() / "pulled-out", classroom);
    const auto opened = openUnitFile(folder, aside);
    REQUIRE(opened.ok());
    REQUIRE(opened.value().problems.size() == 1);
    CHECK(opened.value().problems[0].what.find("put aside") != std::string::npos);
    // and is saved in its place by itself
    REQUIRE(saver.due());
    saver.step(unitOf("Kept"), *saver.due());
    CHECK(saver.isSaved());
    CHECK(titleIn(folder.file()) == "Kept");
    CHECK_FALSE(fs::exists(aside / "reeds.json"));
}

TEST_CASE("What somebody else wrote meanwhile is kept beside") {
    const Folder temp;
    const UnitFolder folder = newUnitFolder(temp.path(), "Reeds");
    AtOnce at_once;
    UnitSaver saver(UnitWriter(folder, "", {}), at_once);
    saver.changed(1, 0);
    saver.finish(unitOf("Mine"), 0);
    REQUIRE(writeWhole(folder.file(), pack::writeUnit(unitOf("Theirs"))).ok());
    saver.changed(2, 10);
    saver.finish(unitOf("Mine again"), 10);
    CHECK(saver.isSaved());
    REQUIRE(saver.problems().size() == 1);
    CHECK(titleIn(folder.file()) == "Mine again");
    CHECK(titleIn(folder.folder / "unit-other.json") == "Theirs");
}

TEST_CASE("A file of which not all could be read is copied before it is written over") {
    const Folder temp;
    const UnitFolder folder = newUnitFolder(temp.path(), "Reeds");
    fs::create_directories(folder.folder);
    const std::string found =
        R"({"format":"wrenlet unit","format_version":1,"id":"reeds","title":"Reeds",
            "words":["duck","fr0g"]})";
    REQUIRE(writeWhole(folder.file(), found).ok());
    const auto opened = openUnitFile(folder, {});
    REQUIRE(opened.ok());
    CHECK(opened.value().unit.words.size() == 1);
    AtOnce at_once;
    UnitSaver saver(UnitWriter(folder, opened.value().bytes, {}, !opened.value().problems.empty()),
                    at_once);
    saver.changed(1, 0);
    saver.finish(opened.value().unit, 0);
    CHECK(readWhole(folder.folder / "unit-as-found.json", 1 << 20).value() == found);
}

TEST_CASE("The very last change is saved when a unit is closed at once") {
    const Folder temp;
    auto made = OpenUnit::make(temp.path(), "Reeds", library().bench);
    REQUIRE(made.ok());
    made.value()->change([](UnitAtWork& work) { work.rename("Rushes"); });
    made.value()->finish(0);
    CHECK(titleIn(made.value()->folder().file()) == "Rushes");
}

TEST_CASE("A unit that is open is not opened twice") {
    const Folder temp;
    const UnitFolder folder = newUnitFolder(temp.path(), "Reeds");
    {
        const auto first = UnitInUse::take(folder, "since 14:05 on room-4");
        REQUIRE(first.ok());
        const auto second = UnitInUse::take(folder, "since 14:06 on hall");
        REQUIRE_FALSE(second.ok());
        CHECK(second.problems()[0].what == "This unit is open already, since 14:05 on room-4.");
    }
    CHECK(UnitInUse::take(folder, "since 14:07 on hall").ok());
}

TEST_CASE("Units are named after their titles, and never over one another") {
    const Folder temp;
    CHECK(newUnitFolder(temp.path(), "On the Farm!").folder.filename() == "on-the-farm");
    fs::create_directories(temp.path() / "units" / "on-the-farm");
    CHECK(newUnitFolder(temp.path(), "On the Farm").folder.filename() == "on-the-farm-2");
    CHECK(newUnitFolder(temp.path(), "\u00fc").folder.filename() == "unit");
    CHECK(unitsIn(temp.path()).empty());
    REQUIRE(writeWhole(temp.path() / "units" / "on-the-farm" / "unit.json", "{}").ok());
    CHECK(unitsIn(temp.path()).size() == 1);
}

}  // namespace wrenlet::desk
