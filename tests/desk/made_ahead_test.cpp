// A pack is made before it is asked for, with clips that were made before.
#include <doctest/doctest.h>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/handout/hand_out_place.hpp"
#include "tests/desk/library.hpp"
#include "tests/practice/samples.hpp"

namespace wrenlet::desk {
namespace {

struct Room {
    practice::samples::Folder folder;
    ClipShelf shelf{folder.path() / "clips", "this test"};
    std::unique_ptr<OpenUnit> unit;
    std::unique_ptr<HandOutPlace> place;

    Room() {
        auto made = OpenUnit::make(folder.path(), "On the farm", library().bench);
        REQUIRE(made.ok());
        unit = std::move(made.value());
        for (const exercise::SkillRow& row : exercise::skillTable())
            if (row.id != "phoneme.first")
                unit->change([&](UnitAtWork& work) { work.turnSkill(std::string(row.id), true); });
        place = std::make_unique<HandOutPlace>(
            *unit, pack::Classroom{folder.path()},
            HandOutPlace::Parts{library().at_once, {library().voice, 2, &shelf}, {}});
    }
    void add(const std::string& words) {
        unit->change([&](UnitAtWork& work) { work.add(words, "words", library().known); });
    }
    void step(std::int64_t now_ms) {
        unit->step(now_ms);
        place->step(now_ms);
    }
};

}  // namespace

TEST_CASE("Made ahead: a unit left alone for two seconds has its pack before it is asked for") {
    Room room;
    room.add("cat cap dog duck");
    room.step(1000);
    CHECK(room.place->due() == 3000);
    room.step(2000);
    CHECK(room.place->built() == nullptr);
    room.add("cow");
    room.step(2900);
    CHECK(room.place->due() == 4900);
    room.step(3100);
    CHECK_FALSE(room.place->isBuilding());
    room.step(4900);
    room.step(4901);
    REQUIRE(room.place->built() != nullptr);
    CHECK(room.place->built()->isGood());
    CHECK(room.place->built()->words == 5);
    CHECK_FALSE(room.place->due());
}

TEST_CASE("Made ahead: the next pack takes the clips of the one before, byte for byte") {
    Room room;
    room.add("cat cap dog duck");
    room.place->build();
    room.step(0);
    REQUIRE(room.place->built() != nullptr);
    const auto first = pack::readPack(room.place->built()->bytes, "first");
    room.add("cow");
    room.place->build();
    room.step(1);
    REQUIRE(room.place->built() != nullptr);
    const auto second = pack::readPack(room.place->built()->bytes, "second");
    REQUIRE(first.ok());
    REQUIRE(second.ok());
    for (const pack::Clip& clip : first.value().clips) {
        const pack::Clip* same = second.value().clip(clip.id);
        REQUIRE(same != nullptr);
        CHECK(same->bytes == clip.bytes);
        CHECK(same->demo_voice);
    }
    CHECK(second.value().clips.size() > first.value().clips.size());
}

TEST_CASE("A unit gives the same pack to the byte, on one processor as on three") {
    Room room;
    room.add("cat cap dog duck rainbow");
    const Workbench& bench = room.unit->bench();
    const BuildCall call{room.unit->unit(),
                         UnitPlaces::beside(room.unit->folder().file(), bench.pictures),
                         pack::Classroom{room.unit->folder().folder}};
    std::string packs[2];
    for (const unsigned threads : {1u, 3u}) {
        BuildProgress progress;
        const auto built = buildNext(call, bench.known.lexicon(), bench.blocked,
                                     ClipMaking{library().voice, threads}, progress);
        REQUIRE(built);
        REQUIRE(built->isGood());
        packs[threads == 1] = built->bytes;
    }
    CHECK(packs[0] == packs[1]);
}

TEST_CASE("The clips that come with the program are what the voice says today") {
    Room room;
    room.add("cat cap dog duck rainbow cupcake; The dog ran.");
    for (const exercise::SkillRow& row : exercise::skillTable())
        room.unit->change([&](UnitAtWork& work) { work.turnSkill(std::string(row.id), false); });
    const Workbench& bench = room.unit->bench();
    const BuildCall call{room.unit->unit(),
                         UnitPlaces::beside(room.unit->folder().file(), bench.pictures),
                         pack::Classroom{room.unit->folder().folder}};
    const ClipShelf shipped =
        ClipShelf::ofTheBuild(std::filesystem::path(WRENLET_TEST_SHARE) / "clips");
    ClipShelf both(room.folder.path() / "both", "this test",
                   std::filesystem::path(WRENLET_TEST_SHARE) / "clips");
    std::vector<std::string> packs;
    for (const ClipShelf* shelf :
         {static_cast<const ClipShelf*>(nullptr), &shipped, static_cast<const ClipShelf*>(&both)}) {
        BuildProgress progress;
        const auto built = buildNext(call, bench.known.lexicon(), bench.blocked,
                                     ClipMaking{library().voice, 2, shelf}, progress);
        REQUIRE(built);
        REQUIRE(built->isGood());
        packs.push_back(built->bytes);
    }
    CHECK(packs[0] == packs[1]);
    CHECK(packs[0] == packs[2]);
    // Most of it was read: what was kept beside is the few that are not of the list.
    const auto kept = listFiles(room.folder.path() / "both", ".clip").size();
    const auto all = pack::readPack(packs[0], "all").value().clips.size();
    CHECK(kept * 5 < all);
}

}  // namespace wrenlet::desk
