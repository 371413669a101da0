#include <doctest/doctest.h>

#include <functional>

#include "content/pack/picture_key.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using game::Key;
using practice::samples::Folder;

namespace {

const std::vector<std::string> kKey = {"sock", "apple"};

Player withKey(const Folder& folder, game::ScreenSize screen = {}, game::AppOptions options = {}) {
    return Player(folder / "store.db", 2, 7, screen, 3, fixtures::smallPack(), options, kKey);
}

void choose(Player& player, const char* first, const char* second) {
    player.tap(std::string("picture:") + first);
    player.tap(std::string("picture:") + second);
    player.wait(1'500);
}

bool hears(Player& player, std::string_view phrase) {
    return !player.voice().said.empty() && !player.voice().said.back().empty() &&
           player.voice().said.back().front().clip == "phrase:" + std::string(phrase);
}

}  // namespace

TEST_CASE("Key: a child with a key touches her two pictures in order, and then plays") {
    const Folder folder;
    Player player = withKey(folder);
    player.tap("badge:c-01");
    CHECK(player.app().place() == "key");
    player.tap("picture:sock");
    CHECK(player.app().place() == "key chosen");
    player.tap("picture:apple");
    CHECK(player.app().place() == "key right");
    player.wait(1'500);
    CHECK(player.app().place() == "welcome");
    player.playRightUntil("ending");
    for (const auto& row : player.store().all()) CHECK(row.child == "c-01");
}

TEST_CASE("Key: a child without one plays at once") {
    const Folder folder;
    Player player = withKey(folder);
    player.tap("badge:c-02");
    CHECK(player.app().place() == "welcome");
}

TEST_CASE("Key: wrong pictures, or the right ones turned round, come back, and thrice is enough") {
    const Folder folder;
    Player player = withKey(folder);
    player.tap("badge:c-01");
    const char* const wrong[][2] = {{"apple", "sock"}, {"sock", "ball"}, {"tree", "wheel"}};
    for (int miss = 0; miss < 3; ++miss) {
        CHECK(player.app().place() == "key");
        choose(player, wrong[miss][0], wrong[miss][1]);
    }
    CHECK(player.app().place() == "badges");
    CHECK(player.store().all().empty());
    // It was her turn and still is; she begins anew.
    CHECK(player.app().rightTouch() == "badge:c-01");
    player.tap("badge:c-01");
    choose(player, "ball", "cake");
    CHECK(player.app().place() == "key");
    choose(player, "sock", "apple");
    CHECK(player.app().place() == "welcome");
}

TEST_CASE("Key: what was chosen can be given back before the second is touched") {
    const Folder folder;
    Player player = withKey(folder);
    player.tap("badge:c-01");
    player.tap("picture:tree");
    CHECK_FALSE(player.app().boxOf("picture:tree").has_value());
    CHECK(player.app().rightTouch() == "slot:0");
    player.tap("slot:0");
    CHECK(player.app().boxOf("picture:tree").has_value());
    choose(player, "sock", "apple");
    CHECK(player.app().place() == "welcome");
}

TEST_CASE("Key: it is asked for, and asked for again after a miss, with what the pack can say") {
    const Folder folder;
    Player player = withKey(folder);
    player.tap("badge:c-01");
    player.wait(100);
    CHECK(hears(player, "key.ask"));
    choose(player, "tree", "ball");
    CHECK(hears(player, "key.again"));
    player.tap("replay");
    CHECK(hears(player, "key.again"));
}

TEST_CASE("Key: it is touched by the keyboard alone, and by one switch alone") {
    for (const game::Millis pace : {0, 1'500}) {
        CAPTURE(pace);
        const Folder folder;
        game::AppOptions options;
        options.tablet.scan_pace = pace;
        Player player = withKey(folder, {}, options);
        for (int i = 0; i < 4'000 && player.app().place() != "welcome"; ++i) {
            const auto right = player.app().rightTouch();
            if (!right || (pace > 0 && player.app().marked() != right)) {
                player.wait(48);
                continue;
            }
            for (int moves = 0; moves < 40 && player.app().marked() != right; ++moves) {
                player.app().key(Key::next, true, player.now());
                player.wait(16);
                player.app().key(Key::next, false, player.now());
            }
            REQUIRE(player.app().marked() == right);
            player.app().key(Key::touch, true, player.now());
            player.wait(48);
            player.app().key(Key::touch, false, player.now());
            player.wait(16);
        }
        CHECK(player.app().place() == "welcome");
    }
}

TEST_CASE("Key: its pictures are large and apart at every size, 20 mm where that is known") {
    for (const game::ScreenSize screen : {game::ScreenSize{1280, 800, 0},
                                          {1024, 600, 0},
                                          {800, 1280, 0},
                                          {1280, 800, 0.135f},
                                          {800, 1280, 0.135f}}) {
        for (const bool left : {false, true}) {
            CAPTURE(screen.w);
            CAPTURE(screen.mm_per_px);
            const Folder folder;
            game::AppOptions options;
            options.tablet.left_hand = left;
            Player player = withKey(folder, screen, options);
            player.tap("badge:c-01");
            player.tap("picture:ball");
            std::vector<game::Box> boxes;
            for (const std::string& name : player.app().touchables())
                boxes.push_back(*player.app().boxOf(name));
            CHECK(boxes.size() == pack::kKeyPictures.size() + 3);
            const float scale = screen.h == 600 ? 0.75f : 1;
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                CHECK(boxes[i].w >= 88 * scale);
                CHECK(boxes[i].h >= 88 * scale);
                if (screen.mm_per_px > 0) CHECK(boxes[i].w * screen.mm_per_px >= 19.9f);
                CHECK(boxes[i].x >= 0);
                CHECK(boxes[i].y + boxes[i].h <= static_cast<float>(screen.h) + 0.5f);
                CHECK(boxes[i].x + boxes[i].w <= static_cast<float>(screen.w) + 0.5f);
                for (std::size_t j = 0; j < i; ++j) {
                    const game::Box grown = boxes[i].grown(10 * scale), other = boxes[j];
                    const bool apart = grown.x + grown.w <= other.x ||
                                       other.x + other.w <= grown.x ||
                                       grown.y + grown.h <= other.y || other.y + other.h <= grown.y;
                    CHECK(apart);
                }
            }
        }
    }
}
