#include "game/sdl/canvas.hpp"

#include <doctest/doctest.h>

#include <string>

#include "game/sdl/screenshot.hpp"
#include "game/sdl/window.hpp"
#include "game/stage/palette.hpp"

using namespace wrenlet::game;

namespace {

constexpr std::string_view kChecks =
    "<svg xmlns='http://www.w3.org/2000/svg' width='40' height='40' viewBox='0 0 40 40'>"
    "<rect x='0' y='0' width='40' height='40' fill='#FFFFFF'/>"
    "<rect x='10' y='10' width='7' height='20' fill='#B4472B'/></svg>";

struct Screen {
    Window window;
    Baker baker;
    Canvas canvas;

    explicit Screen(std::size_t most_bytes = Baker::kMostBytes)
        : window(std::move(Window::open({320, 200, false, true}).value())),
          baker(
              window.renderer(), "no-such-folder",
              [](std::string_view name) { return name == "checks" ? kChecks : ""; }, most_bytes),
          canvas(window.renderer(), baker) {}

    Colour pixel(int x, int y) {
        const SurfacePtr picture = readBack(window.renderer());
        const auto* p =
            static_cast<const std::uint8_t*>(picture->pixels) + y * picture->pitch + 3 * x;
        return {p[0], p[1], p[2]};
    }
};

Sprite picture(int w, int h) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::picture;
    sprite.name = "checks";
    sprite.width = w;
    sprite.height = h;
    return sprite;
}

Sprite card(int w, int h) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::card;
    sprite.width = w;
    sprite.height = h;
    sprite.colour = palette::kCard;
    return sprite;
}

Sprite fill(int w, int h, Colour colour) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::fill;
    sprite.width = w;
    sprite.height = h;
    sprite.colour = colour;
    return sprite;
}

}  // namespace

TEST_CASE("canvas: a sprite is copied one to one, its middle at the nearest whole pixel") {
    Screen screen;
    for (const Point at : {Point{100, 80}, Point{100.3f, 79.8f}}) {
        screen.canvas.draw({{picture(40, 40), at, 255}});
        CHECK(screen.pixel(79, 60) == palette::kPaper);
        CHECK(screen.pixel(80, 60) == Colour{255, 255, 255});
        CHECK(screen.pixel(89, 75) == Colour{255, 255, 255});
        CHECK(screen.pixel(90, 75) == palette::kBerry);
        CHECK(screen.pixel(96, 75) == palette::kBerry);
        CHECK(screen.pixel(97, 75) == Colour{255, 255, 255});
        CHECK(screen.pixel(119, 99) == Colour{255, 255, 255});
        CHECK(screen.pixel(120, 99) == palette::kPaper);
    }
}

TEST_CASE("canvas: what is half there is half seen, opaque sprites and fills too") {
    Screen screen;
    screen.canvas.draw({{fill(320, 200, {0, 0, 0}), {160, 100}, 255},
                        {picture(40, 40), {50, 50}, 128},
                        {card(40, 40), {120, 50}, 128},
                        {fill(40, 40, {255, 255, 255}), {200, 50}, 128},
                        {fill(40, 40, {255, 255, 255, 128}), {280, 50}, 255}});
    for (const int x : {35, 120, 200, 280}) {
        CAPTURE(x);
        CHECK(std::abs(screen.pixel(x, 50).r - 128) <= 2);
    }
    screen.canvas.draw({{picture(40, 40), {50, 50}, 255}});
    CHECK(screen.pixel(35, 50) == Colour{255, 255, 255});  // as it was
}

TEST_CASE("canvas: the same frame is not drawn twice, another size or a call for it is") {
    Screen screen;
    const Frame frame{{card(40, 40), {60, 60}, 255}};
    const ScreenSize size{320, 200, 0};
    CHECK(screen.canvas.show(frame, size));
    CHECK_FALSE(screen.canvas.show(frame, size));
    CHECK(screen.canvas.drawn() == 1);
    CHECK(screen.canvas.show(frame, {200, 320, 0}));
    screen.canvas.invalidate();
    CHECK(screen.canvas.show(frame, {200, 320, 0}));
    CHECK(screen.canvas.show({{card(40, 40), {61, 60}, 255}}, {200, 320, 0}));
}

TEST_CASE("baker: equal sprites share a texture, others have their own") {
    Screen screen;
    const SDL_Texture* one = screen.baker.get(card(40, 40)).texture.get();
    CHECK(screen.baker.get(card(40, 40)).texture.get() == one);
    CHECK(screen.baker.count() == 1);
    screen.baker.get(card(41, 40));
    Sprite bold = card(40, 40);
    bold.edge_px = 2;
    screen.baker.get(bold);
    CHECK(screen.baker.count() == 3);
}

TEST_CASE("baker: it stays within its bound, and what a frame draws stays whatever the bound") {
    Screen screen(64 * 1024);  // four cards of 64 x 64
    for (int i = 0; i < 50; ++i) {
        screen.canvas.draw({{card(64, 64 - i % 20), {100, 100}, 255}});
        REQUIRE(screen.baker.bytes() <= 64u * 1024);
    }
    Frame large;
    for (int i = 0; i < 8; ++i) large.push_back({card(60 + i, 64), {100, 100}, 255});
    screen.canvas.draw(large);
    const auto held = screen.baker.bytes();
    CHECK(held > 64u * 1024);
    screen.canvas.draw(large);
    CHECK(screen.baker.bytes() == held);
    screen.canvas.draw({{card(20, 20), {100, 100}, 255}});
    CHECK(screen.baker.bytes() <= 64u * 1024);
    screen.canvas.forget();
    CHECK(screen.baker.bytes() == 0);
}

TEST_CASE("baker: what can't be drawn is left out, and named once") {
    Screen screen;
    Sprite art;
    art.name = "no-such-art";
    art.width = art.height = 40;
    Sprite lost = picture(40, 40);
    lost.name = "lost";
    screen.canvas.draw({{art, {50, 50}, 255}, {lost, {90, 50}, 255}});
    screen.canvas.draw({{art, {50, 50}, 255}, {lost, {90, 50}, 255}});
    CHECK(screen.baker.missing() == std::vector<std::string>{"no-such-art", "lost"});
    CHECK(screen.pixel(50, 50) == palette::kPaper);
}

TEST_CASE("screenshot: a picture is saved as it was drawn, a bad folder is a problem") {
    Screen screen;
    screen.canvas.draw({{picture(40, 40), {100, 80}, 255}});
    const SurfacePtr drawn = readBack(screen.window.renderer());
    const auto problem = savePng(drawn.get(), "no/such/folder/picture.png");
    REQUIRE_FALSE(problem.ok());
    CHECK(problem.problems()[0].where == "no/such/folder/picture.png");
}
