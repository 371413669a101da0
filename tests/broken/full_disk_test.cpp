// A disk with no room left, as the system itself tells of it: each case runs in a process of its
// own whose files may grow to so many bytes and no further (POSIX setrlimit, RLIMIT_FSIZE), so a
// write breaks off in its middle.
#include <doctest/doctest.h>

#ifndef _WIN32

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <functional>
#include <map>
#include <sstream>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/handout/hand_out_place.hpp"
#include "editor/settings/settings_place.hpp"
#include "tests/desk/library.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

namespace fs = std::filesystem;
using practice::samples::Folder;

/// What was found in that process, by name.
using Found = std::map<std::string, std::string>;
using MakeRoom = std::function<void()>;

Found withRoomFor(rlim_t bytes, const std::function<Found(const MakeRoom&)>& run) {
    int ends[2];
    REQUIRE(pipe(ends) == 0);
    const pid_t child = fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);  // the write then gives an error
        rlimit before{};
        getrlimit(RLIMIT_FSIZE, &before);
        rlimit small = before;
        small.rlim_cur = bytes;
        setrlimit(RLIMIT_FSIZE, &small);
        std::string told;
        for (const auto& [name, value] : run([&] { setrlimit(RLIMIT_FSIZE, &before); }))
            told += name + "\t" + value + "\n";
        const bool all = write(ends[1], told.data(), told.size()) == ssize_t(told.size());
        _exit(all ? 0 : 1);
    }
    close(ends[1]);
    std::string told;
    char block[4096];
    for (ssize_t got; (got = read(ends[0], block, sizeof block)) > 0;)
        told.append(block, static_cast<std::size_t>(got));
    close(ends[0]);
    int status = -1;
    waitpid(child, &status, 0);
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
    Found found;
    std::istringstream lines(told);
    for (std::string name, value; std::getline(lines, name, '\t') && std::getline(lines, value);)
        found[name] = value;
    return found;
}

std::string bytesOf(const fs::path& file) {
    const auto bytes = readWhole(file, 64u << 20);
    return bytes.ok() ? bytes.value() : "";
}

std::string firstOf(const std::vector<Problem>& problems) {
    return problems.empty() ? "" : problems.front().what + "|" + problems.front().way_out;
}

constexpr const char* kNoRoom =
    "There is not enough room for this file; the file from before still stands.|"
    "Make some room, or choose another place, and try again.";

/// A unit of a few words about first sounds, saved.
std::unique_ptr<OpenUnit> unitIn(const fs::path& classroom) {
    auto made = OpenUnit::make(classroom, "On the farm", library().bench);
    REQUIRE(made.ok());
    OpenUnit& unit = *made.value();
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (row.id != "phoneme.first")
            unit.change([&](UnitAtWork& work) { work.turnSkill(std::string(row.id), true); });
    unit.change([](UnitAtWork& work) { work.add("cat cap dog duck", "words", library().known); });
    unit.finish(0);
    REQUIRE(unit.isSaved());
    return std::move(made.value());
}

}  // namespace

TEST_CASE("Full disk: a unit keeps its file whole and her edits, and is saved once there is room") {
    const Folder folder;
    const auto unit = unitIn(folder.path());
    const fs::path file = unit->folder().file();
    const std::string before = bytesOf(file);
    REQUIRE(before.size() > 200);
    const Found found = withRoomFor(before.size() + 40, [&](const MakeRoom& makeRoom) {
        Found told;
        unit->change([](UnitAtWork& work) {
            work.add("cow pig hen goat sheep horse rabbit mouse", "words", library().known);
        });
        for (const std::int64_t now : {1000, 2500}) unit->step(now);
        told["saved"] = unit->isSaved() ? "yes" : "no";
        told["said"] = firstOf(unit->problems());
        told["whole"] = bytesOf(file) == before ? "yes" : "no";
        told["in hand"] = std::to_string(unit->unit().words.size());
        told["half"] = std::to_string(listFiles(file.parent_path(), ".new").size());
        makeRoom();
        unit->step(60'000);
        told["saved then"] = unit->isSaved() ? "yes" : "no";
        told["said then"] = firstOf(unit->problems());
        return told;
    });
    CHECK(found.at("saved") == "no");
    CHECK(found.at("said").find("not enough room") != std::string::npos);
    CHECK(found.at("whole") == "yes");
    CHECK(found.at("in hand") == "12");
    CHECK(found.at("half") == "0");
    CHECK(found.at("saved then") == "yes");
    CHECK(found.at("said then") == "");
    const auto read = pack::readUnit(bytesOf(file), "unit.json");
    REQUIRE(read.ok());
    CHECK(read.value().words.size() == 12);
}

TEST_CASE("Full disk: a pack that does not fit is not handed out, and the last one stays chosen") {
    const Folder folder;
    const auto unit = unitIn(folder.path());
    const pack::Classroom classroom{folder.path()};
    pack::ClassList list;
    list.title = "Hill";
    REQUIRE(writeWhole(classroom.classFile(), pack::writeClassList(list)).ok());
    HandOutPlace place(*unit, classroom, {library().at_once, {library().voice, 1}, {}});
    const auto make = [&](const char* word) {
        unit->change([&](UnitAtWork& work) { work.add(word, "words", library().known); });
        unit->finish(0);
        place.build();
        place.step(0);
        REQUIRE(place.built() != nullptr);
        REQUIRE(place.built()->isGood());
    };
    make("cow");
    place.handOut();
    REQUIRE(place.handedOut() == "on-the-farm-1.zip");
    const std::string first = bytesOf(classroom.packFile("on-the-farm-1.zip"));
    make("pig");
    REQUIRE(place.built()->bytes.size() > 40'000);
    const Found found = withRoomFor(20'000, [&](const MakeRoom& makeRoom) {
        Found told;
        place.handOut();
        told["said"] = firstOf(place.problems());
        told["out"] = pack::openClassList(classroom).value().pack;
        told["packs"] = std::to_string(
            std::distance(fs::directory_iterator(classroom.packs()), fs::directory_iterator()));
        makeRoom();
        place.handOut();
        told["said then"] = firstOf(place.problems());
        return told;
    });
    CHECK(found.at("said") == kNoRoom);
    CHECK(found.at("out") == "on-the-farm-1.zip");
    CHECK(found.at("packs") == "1");
    CHECK(found.at("said then") == "");
    CHECK(pack::openClassList(classroom).value().pack == "on-the-farm-2.zip");
    CHECK(bytesOf(classroom.packFile("on-the-farm-1.zip")) == first);
    CHECK(pack::readPackFile(classroom.packFile("on-the-farm-2.zip")).ok());
}

TEST_CASE("Full disk: a pack is made although no clip can be laid on the shelf") {
    const Folder folder;
    const auto unit = unitIn(folder.path());
    const ClipShelf shelf(folder.path() / "clips", "this test");
    const BuildCall call{unit->unit(),
                         UnitPlaces::beside(unit->folder().file(), library().bench.pictures),
                         pack::Classroom{folder.path()}};
    const Found found = withRoomFor(500, [&](const MakeRoom&) {
        BuildProgress progress;
        const auto built = buildNext(call, library().known.lexicon(), library().blocked,
                                     {library().voice, 1, &shelf}, progress);
        return Found{{"good", built && built->isGood() ? "yes" : "no"},
                     {"clips", built ? std::to_string(built->clips) : ""}};
    });
    CHECK(found.at("good") == "yes");
    CHECK(std::stoi(found.at("clips")) > 10);
    CHECK(fs::is_empty(folder.path() / "clips"));
}

TEST_CASE(
    "Full disk: a stick that tells no figure and fills up takes nothing and keeps what it had") {
    const Folder folder, stick;
    const pack::Classroom room{folder.path()};
    fs::create_directories(room.packs());
    REQUIRE(writeWhole(room.packFile("farm-1.zip"), std::string(300'000, 'x')).ok());
    REQUIRE(writeWhole(stick / "holiday.txt", "hers").ok());
    const Found found = withRoomFor(100'000, [&](const MakeRoom& makeRoom) {
        const auto copy = [&] {
            return copyToStick(room, "farm-1.zip", stick.path(),
                               [](const fs::path&) { return std::optional<std::uint64_t>(); });
        };
        Found told;
        told["said"] = firstOf(copy().problems());
        told["there"] = std::to_string(
            std::distance(fs::directory_iterator(stick.path()), fs::directory_iterator()));
        makeRoom();
        const auto then = copy();
        told["then"] = then.ok() ? then.value() : firstOf(then.problems());
        return told;
    });
    CHECK(found.at("said") == kNoRoom);
    CHECK(found.at("there") == "1");
    CHECK(found.at("then") == "farm-1.zip is there now. A colleague can bring it in.");
    CHECK(bytesOf(stick / "farm-1.zip").size() == 300'000);
    CHECK(bytesOf(stick / "holiday.txt") == "hers");
}

TEST_CASE("Full disk: settings hold for this time, and the file from before is whole") {
    const Folder folder;
    const fs::path file = folder / "settings.json";
    REQUIRE(keepDeskSettings(file, {115, true, true, "", ""}).ok());
    const Found found = withRoomFor(10, [&](const MakeRoom&) {
        SettingsPlace place({file, nullptr, {}});
        place.set({150, true, true, "", ""});
        return Found{{"now", std::to_string(place.now().text_percent)},
                     {"said", firstOf(place.problems())}};
    });
    CHECK(found.at("now") == "150");
    CHECK(found.at("said").find("not enough room") != std::string::npos);
    CHECK(openDeskSettings(file).value().text_percent == 115);
}

}  // namespace wrenlet::desk

#endif
