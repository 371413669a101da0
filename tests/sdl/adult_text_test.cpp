// The adult's pages as they are really written: letters of 20 px or more, nothing cut, shrunk or
// over anything else.
#include <SDL_ttf.h>
#include <doctest/doctest.h>

#include <algorithm>

#include "game/scenes/layout.hpp"
#include "game/sdl/assets.hpp"
#include "game/sdl/letters.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::Folder;

namespace {

constexpr ScreenSize kScreens[] = {
    {1280, 800, 0}, {1024, 600, 0}, {800, 1280, 0}, {2732, 2048, 0}, {1280, 800, 0.135f}};

bool overlap(const Box& a, const Box& b) {
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

bool inside(const Box& a, const Box& b) {
    return a.x >= b.x && a.y >= b.y && a.x + a.w <= b.x + b.w && a.y + a.h <= b.y + b.h;
}

/// Where the ink of a line lies when it is as wide as it comes.
Box inkOf(Letters& letters, const Blit& blit) {
    Sprite whole = blit.sprite;
    whole.width = 0;
    const auto image = letters.draw(whole);
    REQUIRE(image.has_value());
    const auto w = static_cast<float>(image->w), h = static_cast<float>(image->h);
    const float left = blit.sprite.from_left
                           ? blit.centre.x - static_cast<float>(blit.sprite.width) / 2
                           : blit.centre.x - w / 2;
    return {left, blit.centre.y - h / 2, w, h};
}

void checkPage(Letters& letters, const App& app, const Frame& frame, ScreenSize screen) {
    std::vector<Box> controls, lines;
    for (const std::string& name : app.touchables()) controls.push_back(*app.boxOf(name));
    for (const Blit& blit : frame) {
        if (blit.sprite.kind != Sprite::Kind::text) continue;
        CAPTURE(blit.sprite.name);
        CHECK(blit.sprite.height >= kLeastLine);
        const Box ink = inkOf(letters, blit);
        CHECK(inside(ink, {0, 0, static_cast<float>(screen.w), static_cast<float>(screen.h)}));
        if (blit.sprite.width > 0) CHECK(ink.w <= static_cast<float>(blit.sprite.width));
        for (const Box& control : controls) CHECK((inside(ink, control) || !overlap(ink, control)));
        // Lines may touch: a line's box holds the room above and below its letters.
        for (const Box& other : lines) CHECK_FALSE(overlap(ink.grown(-2), other.grown(-2)));
        lines.push_back(ink);
    }
    CHECK(lines.size() > 5);
}

}  // namespace

TEST_CASE("adult's pages: a line of 33 px is written in letters of 20 px") {
    REQUIRE(TTF_Init() == 0);
    for (const char* face : {"Andika-Regular.ttf", "Andika-Bold.ttf"}) {
        TTF_Font* font = TTF_OpenFont((assetsFolder() / "fonts" / face).string().c_str(), 20);
        REQUIRE(font != nullptr);
        CHECK(TTF_FontHeight(font) <= kLeastLine);
        TTF_CloseFont(font);
    }
}

TEST_CASE("adult's pages: all is written whole and apart at every size, however it is set") {
    Letters letters(assetsFolder() / "fonts");
    for (const ScreenSize screen : kScreens) {
        CAPTURE(screen.w);
        CAPTURE(screen.h);
        const Folder folder;
        fixtures::Player player(folder / "store.db", 1, 7, screen);
        player.voice().trouble_text =
            "No sound can be heard: the tablet gives no sound device. Check that the speaker or "
            "headphones are connected and that no other program holds them, then start Wrenlet "
            "again.";
        player.toAdultPage();
        checkPage(letters, player.app(), player.app().frame(player.now()), screen);
        player.tap("settings");
        for (int i = 0; i < 10; ++i) {
            checkPage(letters, player.app(), player.app().frame(player.now()), screen);
            for (const char* thing :
                 {"volume", "motion", "hands", "side", "minutes", "scan", "captions"})
                player.tap(thing);
        }
        player.tap("back");
        CHECK(player.app().place() == "badges");
    }
}

TEST_CASE("adult's pages: the question is written whole") {
    Letters letters(assetsFolder() / "fonts");
    for (const ScreenSize screen : kScreens) {
        CAPTURE(screen.w);
        const Folder folder;
        fixtures::Player player(folder / "store.db", 1, 7, screen);
        player.contact({Contact::Kind::down, 1, player.app().boxOf("leave")->centre(), 0});
        player.wait(1'700);
        player.contact(
            {Contact::Kind::up, 1, player.app().boxOf("number:0").value_or(Box{}).centre(), 0});
        REQUIRE(player.app().place() == "question");
        checkPage(letters, player.app(), player.app().frame(player.now()), screen);
    }
}
