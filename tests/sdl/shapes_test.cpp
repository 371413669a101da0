#include "game/sdl/shapes.hpp"

#include <doctest/doctest.h>

#include <cmath>

using namespace wrenlet::game;

namespace {

Sprite card(int w, int h, int radius) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::card;
    sprite.width = w;
    sprite.height = h;
    sprite.radius = radius;
    sprite.colour = {255, 255, 255};
    return sprite;
}

double area(const Image& image) {
    double sum = 0;
    for (std::size_t i = 3; i < image.rgba.size(); i += 4) sum += image.rgba[i] / 255.0;
    return sum;
}

}  // namespace

TEST_CASE("shapes: a card covers the area that geometry gives") {
    for (const int w : {31, 112, 160, 400}) {
        for (const int radius : {0, 5, 15}) {
            CAPTURE(w);
            CAPTURE(radius);
            const double pi = 3.14159265358979;
            const double wanted = w * (w + 20.0) - (4 - pi) * radius * radius;
            CHECK(area(drawCard(card(w, w + 20, radius))) ==
                  doctest::Approx(wanted).epsilon(0.002));
        }
    }
    const double circle = 3.14159265358979 * 50 * 50;
    CHECK(area(drawCard(card(100, 100, 500))) == doctest::Approx(circle).epsilon(0.003));
}

TEST_CASE("shapes: a card's edge pixels keep its colour, and it is the same mirrored") {
    const Image image = drawCard(card(61, 47, 20));
    for (int y = 0; y < image.h; ++y) {
        for (int x = 0; x < image.w; ++x) {
            const auto* p = image.at(x, y);
            if (p[3] > 0) REQUIRE((p[0] == 255 && p[1] == 255 && p[2] == 255));
            REQUIRE(p[3] == image.at(image.w - 1 - x, y)[3]);
            REQUIRE(p[3] == image.at(x, image.h - 1 - y)[3]);
        }
    }
}

TEST_CASE("shapes: the edge lies inside the card's size") {
    Sprite sprite = card(100, 80, 24);
    sprite.edge_px = 3;
    sprite.edge_colour = {0x2F, 0x6F, 0x7E};
    const Image image = drawCard(sprite);
    CHECK(image.w == 100);
    CHECK(image.left == 0);
    CHECK(image.at(1, 40)[0] == 0x2F);
    CHECK(image.at(2, 40)[0] == 0x2F);
    CHECK(image.at(3, 40)[0] == 255);
    CHECK(image.at(50, 79)[1] == 0x6F);
    CHECK(area(image) == doctest::Approx(area(drawCard(card(100, 80, 24)))).epsilon(0.001));
}

TEST_CASE("shapes: the shadow falls below and around, softly, and leaves the card whole") {
    Sprite sprite = card(100, 80, 24);
    sprite.shadow_px = 20;
    const Image image = drawCard(sprite);
    CHECK(image.size_w == 100);
    CHECK(image.size_h == 80);
    const int left = -image.left, top = -image.top;
    CHECK(image.at(left + 50, top + 40)[0] == 255);
    CHECK(image.at(left + 50, top + 40)[3] == 255);
    const int below = image.at(left + 50, top + 80 + 4)[3];
    const int above = image.at(left + 50, top - 5)[3];
    CHECK(below > above);
    CHECK(below > 20);
    CHECK(below < 90);
    int before = 255;
    for (int y = top + 82; y < image.h; ++y) {
        const int now = image.at(left + 50, y)[3];
        REQUIRE(now <= before);
        if (y > top + 82) REQUIRE(before - now <= 16);
        before = now;
    }
    CHECK(before <= 2);
    for (int x = 0; x < image.w; ++x) CHECK(image.at(x, 0)[3] <= 2);
}

TEST_CASE("shapes: a ring fills clockwise from the top by its part") {
    Sprite sprite;
    sprite.kind = Sprite::Kind::ring;
    sprite.width = sprite.height = 120;
    sprite.edge_px = 8;
    sprite.colour = {0x2F, 0x6F, 0x7E};
    sprite.edge_colour = {0, 0, 0, 0};
    sprite.part = 24;
    const double whole = area(drawRing(sprite));
    CHECK(whole == doctest::Approx(2 * 3.14159265 * 56 * 8).epsilon(0.005));
    sprite.part = 0;
    CHECK(area(drawRing(sprite)) == 0);
    for (const int part : {6, 12, 18}) {
        sprite.part = part;
        const double caps = 3.14159265 * 4 * 4;  // its two ends are round
        CHECK(area(drawRing(sprite)) == doctest::Approx(whole * part / 24 + caps).epsilon(0.01));
    }
    sprite.part = 6;
    const Image quarter = drawRing(sprite);
    const int reach = 40;  // 45 degrees, radius 56
    CHECK(quarter.at(60 + reach, 60 - reach)[3] == 255);
    CHECK(quarter.at(60 - reach, 60 - reach)[3] == 0);
    CHECK(quarter.at(60 + reach, 60 + reach)[3] == 0);
    sprite.edge_colour = {0xD9, 0xC7, 0xA0};
    CHECK(drawRing(sprite).at(60 - reach, 60 - reach)[0] == 0xD9);
}
