#include "game/sdl/try_out.hpp"

#include <SDL_image.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "game/sdl/handles.hpp"
#include "game/start/tried.hpp"
#include "tests/practice/samples.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::Folder;

namespace {

std::filesystem::path starterPack() {
    return std::filesystem::path(WRENLET_TEST_STARTER) / "packs" / "by-the-pond-1.zip";
}

TryOut tried(const std::filesystem::path& pack, const std::string& item) {
    TryOut call;
    call.pack = pack;
    call.item = item;
    call.assets = WRENLET_TEST_SHARE;
    call.random = 77;
    call.width = 496;
    call.height = 310;
    return call;
}

}  // namespace

TEST_CASE("Tried: a question of every skill is drawn as the child first sees it") {
    const Folder folder;
    const auto pack = pack::readPackFile(starterPack());
    REQUIRE(pack.ok());
    std::set<exercise::Skill> seen;
    std::set<std::string> pictures;
    for (const exercise::Item& item : pack.value().items) {
        if (!seen.insert(item.skill).second) continue;
        CAPTURE(item.id);
        const auto png = folder / "still.png";
        const auto still = drawStill(tried(starterPack(), item.id), png);
        REQUIRE(still.ok());
        const std::string& place = still.value().place;
        CHECK(place.substr(place.size() - 7) == ": asked");
        REQUIRE_FALSE(still.value().said.empty());
        for (const Spoken& spoken : still.value().said) CHECK(pack.value().clip(spoken.clip));
        const SurfacePtr drawn(IMG_Load(png.string().c_str()));
        REQUIRE(drawn);
        CHECK(drawn->w == 496);
        CHECK(drawn->h == 310);
        pictures.insert(practice::samples::fileBytes(png));
    }
    CHECK(seen.size() == 33);
    CHECK(pictures.size() > seen.size() / 2);  // some are told apart by what is heard alone
}

TEST_CASE("Tried: a picture needs no clips, playing does, and either needs its question") {
    const Folder folder;
    auto pack = pack::readPackFile(starterPack());
    REQUIRE(pack.ok());
    const std::string item = pack.value().items.front().id;
    pack.value().clips.clear();
    const auto dumb = folder / "dumb.zip";
    practice::samples::writeBytes(dumb, pack::writePack(pack.value()).value());
    CHECK(drawStill(tried(dumb, item), folder / "still.png").ok());
    CHECK_FALSE(playTried(tried(dumb, item)).ok());
    CHECK_FALSE(drawStill(tried(starterPack(), "no such"), folder / "still.png").ok());
    CHECK_FALSE(drawStill(tried(folder / "gone.zip", item), folder / "still.png").ok());
    CHECK_FALSE(drawStill(tried(dumb, item), folder / "no folder" / "still.png").ok());
}

TEST_CASE("Tried: a question is over when it is answered right, and leaves nothing behind") {
    std::filesystem::path was;
    {
        const PassingFolder folder(78);
        was = folder.path();
        auto opened = openTried(starterPack(), "", TriedFor::playing, folder);
        REQUIRE(opened.ok());
        REQUIRE(opened.value().pack.items.size() == 1);
        CHECK(opened.value().snapshot.empty());
        CHECK(opened.value().settings_file.empty());
        CHECK(std::filesystem::exists(was));
    }
    CHECK_FALSE(std::filesystem::exists(was));

    const Folder folder;
    AppOptions options;
    options.tries_out = true;
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3, fixtures::smallPack(), options);
    CHECK(player.app().place().find(": ") != std::string::npos);  // a round, and no badges
    REQUIRE(player.waitForTouch());
    player.playRightUntil(player.app().place().substr(0, player.app().place().find(':')) +
                          ": right");
    CHECK_FALSE(player.app().wantsToClose());
    player.wait(10'000);
    CHECK(player.app().wantsToClose());
}

TEST_CASE("Tried: the way out held open closes it, and asks no adult's question") {
    const Folder folder;
    AppOptions options;
    options.tries_out = true;
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3, fixtures::smallPack(), options);
    REQUIRE(player.waitForTouch());
    const Point at = player.app().boxOf("leave")->centre();
    player.contact({Contact::Kind::down, 1, at, 0});
    player.wait(2'000);
    player.contact({Contact::Kind::up, 1, at, 0});
    player.wait(100);
    CHECK(player.app().wantsToClose());
}
