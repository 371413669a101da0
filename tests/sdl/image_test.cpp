#include "game/sdl/image.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "game/sdl/drawings.hpp"
#include "game/sdl/handles.hpp"

#include <SDL_image.h>

using namespace wrenlet::game;

namespace {

void paint(Image& image, int x, int y, int r, int g, int b, int a) {
    const int c[] = {r, g, b, a};
    for (int i = 0; i < 4; ++i) image.at(x, y)[i] = static_cast<std::uint8_t>(c[i]);
}

std::string pngOf(int w, int h, Uint32 (*colour)(const SDL_PixelFormat*, int x, int y)) {
    const SurfacePtr surface(SDL_CreateRGBSurfaceWithFormat(0, w, h, 32, SDL_PIXELFORMAT_RGBA32));
    for (int y = 0; y < h; ++y)
        for (int x = 0; x < w; ++x)
            reinterpret_cast<Uint32*>(static_cast<char*>(surface->pixels) + y * surface->pitch)[x] =
                colour(surface->format, x, y);
    std::string bytes(static_cast<std::size_t>(w) * h * 8 + 4096, '\0');
    SDL_RWops* to = SDL_RWFromMem(bytes.data(), static_cast<int>(bytes.size()));
    REQUIRE(IMG_SavePNG_RW(surface.get(), to, 0) == 0);
    bytes.resize(static_cast<std::size_t>(SDL_RWtell(to)));
    SDL_RWclose(to);
    return bytes;
}

constexpr const char* kWide =
    "<svg xmlns='http://www.w3.org/2000/svg' width='80' height='40' viewBox='0 0 80 40'>"
    "<rect x='0' y='0' width='80' height='40' fill='#2F6F7E'/></svg>";

}  // namespace

TEST_CASE("image: empty rows and columns are trimmed and the place is kept") {
    Image image = blankImage(9, 7);
    paint(image, 3, 2, 1, 2, 3, 200);
    paint(image, 5, 4, 4, 5, 6, 100);
    const Image out = trimmed(image);
    CHECK(out.w == 3);
    CHECK(out.h == 3);
    CHECK(out.left == 3);
    CHECK(out.top == 2);
    CHECK(out.size_w == 9);
    CHECK(out.at(0, 0)[3] == 200);
    CHECK(out.at(2, 2)[2] == 6);
    CHECK(trimmed(blankImage(5, 5)).w == 1);
}

TEST_CASE("image: shrinking averages areas, and empty pixels give no colour") {
    Image image = blankImage(4, 2);
    for (int y = 0; y < 2; ++y) {
        paint(image, 0, y, 200, 100, 0, 255);
        paint(image, 1, y, 100, 100, 0, 255);
        paint(image, 2, y, 240, 10, 10, 255);  // beside an empty pixel: an edge
    }
    const Image out = resized(image, 2, 1);
    CHECK(out.at(0, 0)[0] == 150);
    CHECK(out.at(0, 0)[3] == 255);
    CHECK(out.at(1, 0)[0] == 240);  // not 120: no dark fringe
    CHECK(out.at(1, 0)[3] == 128);

    // A stripe of one pixel in ten keeps its share of the whole at any size.
    Image stripes = blankImage(100, 100);
    for (int y = 0; y < 100; ++y)
        for (int x = 0; x < 100; ++x) paint(stripes, x, y, x % 10 == 0 ? 250 : 0, 0, 0, 255);
    for (const int size : {7, 33, 50, 99}) {
        const Image small = resized(stripes, size, size);
        double sum = 0;
        for (int y = 0; y < size; ++y)
            for (int x = 0; x < size; ++x) sum += small.at(x, y)[0];
        CAPTURE(size);
        CHECK(sum / size / size == doctest::Approx(25).epsilon(0.02));
    }
}

TEST_CASE("image: a picture keeps its shape when it is fitted") {
    CHECK(fitInto(80, 40, 160, 160).w == 160);
    CHECK(fitInto(80, 40, 160, 160).h == 80);
    CHECK(fitInto(40, 80, 160, 160).w == 80);
    CHECK(fitInto(1, 5000, 20, 20).w == 1);
}

TEST_CASE("drawings: an SVG picture is drawn at its exact size, in the middle") {
    const auto image = drawFitted(kWide, 160, 160);
    REQUIRE(image.has_value());
    CHECK(image->w == 160);
    CHECK(image->h == 80);
    CHECK(image->top == 40);
    CHECK(image->size_h == 160);
    CHECK(isOpaque(*image));
    CHECK(image->at(80, 40)[0] == 0x2F);
    CHECK(image->at(80, 40)[2] == 0x7E);
}

TEST_CASE("drawings: art fills the size it is asked for") {
    const auto image = drawSvgFilling(kWide, 50, 70);
    REQUIRE(image.has_value());
    CHECK(image->w == 50);
    CHECK(image->h == 70);
    CHECK(isOpaque(*image));
    CHECK(withRootSize("<svg width=\"8\" stroke-width='3' height='4'><a/></svg>", 5, 6) ==
          "<svg width=\"5\" height=\"6\" preserveAspectRatio=\"none\" viewBox=\"0 0 8 4\" "
          "stroke-width='3'><a/></svg>");
}

TEST_CASE("drawings: a PNG is averaged down in its shape") {
    const std::string png = pngOf(400, 200, [](const SDL_PixelFormat* format, int x, int y) {
        const Uint8 v = (x + y) % 2 == 0 ? 255 : 0;
        return SDL_MapRGBA(format, v, v, v, 255);
    });
    const auto image = drawFitted(png, 100, 100);
    REQUIRE(image.has_value());
    CHECK(image->w == 100);
    CHECK(image->h == 50);
    for (int x = 0; x < 100; ++x) REQUIRE(std::abs(image->at(x, 25)[0] - 128) <= 1);
}

TEST_CASE("drawings: what is no picture gives none") {
    for (const std::string bytes :
         {"", "hello", "<svg", "<svg></svg>", "\x89PNG\r\n\x1a\n broken"}) {
        CAPTURE(bytes);
        CHECK_FALSE(drawFitted(bytes, 64, 64).has_value());
    }
    CHECK_FALSE(drawFitted(kWide, 0, 64).has_value());
    CHECK_FALSE(drawSvgFilling("no drawing", 64, 64).has_value());
    const std::string png = pngOf(20, 20, [](const SDL_PixelFormat* format, int, int) {
        return SDL_MapRGBA(format, 9, 9, 9, 255);
    });
    CHECK_FALSE(drawFitted(png.substr(0, png.size() / 2), 64, 64).has_value());
}
