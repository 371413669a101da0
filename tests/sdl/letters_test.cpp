#include "game/sdl/letters.hpp"

#include <doctest/doctest.h>

#include <string>

#include "game/sdl/assets.hpp"

using namespace wrenlet::game;

namespace {

Sprite text(const std::string& words, int height, int width = 0, bool bold = false) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::text;
    sprite.name = words;
    sprite.height = height;
    sprite.width = width;
    sprite.bold = bold;
    sprite.colour = {0x22, 0x31, 0x3A};
    return sprite;
}

Letters letters() {
    return Letters(assetsFolder() / "fonts");
}

double ink(const Image& image) {
    double sum = 0;
    for (std::size_t i = 3; i < image.rgba.size(); i += 4) sum += image.rgba[i] / 255.0;
    return sum;
}

}  // namespace

TEST_CASE("letters: f is never joined to its neighbour") {
    CHECK(unjoined("fish") == "f\u200cish");
    CHECK(unjoined("puffin") == "puf\u200cf\u200cin");
    CHECK(unjoined("leaf") == "leaf");
    CHECK(unjoined("after") == "after");
    Letters drawn = letters();
    const auto joined_width = [&](const char* word) {
        const auto image = drawn.draw(text(word, 120));
        REQUIRE(image.has_value());
        return image->w;
    };
    // Two letters that stand apart are as wide as the two alone, give or take their side bearings.
    CHECK(std::abs(joined_width("fi") - joined_width("f") - joined_width("i")) <= 6);
}

TEST_CASE("letters: a line is no higher than asked and hardly lower") {
    Letters drawn = letters();
    for (const int height : {18, 24, 40, 72, 130, 260}) {
        CAPTURE(height);
        const auto image = drawn.draw(text("Agjpq", height));
        REQUIRE(image.has_value());
        CHECK(image->h <= height);
        CHECK(image->h >= height * 9 / 10 - 2);
    }
}

TEST_CASE("letters: a width makes the line fit") {
    Letters drawn = letters();
    const auto wide = drawn.draw(text("strawberry", 60));
    const auto narrow = drawn.draw(text("strawberry", 60, 120));
    REQUIRE(wide.has_value());
    REQUIRE(narrow.has_value());
    CHECK(wide->w > 120);
    CHECK(narrow->w <= 120);
    CHECK(narrow->w > 100);
}

TEST_CASE("letters: colour is kept to the edge, bold is heavier, every sound can be written") {
    Letters drawn = letters();
    const auto image = drawn.draw(text("wren", 72));
    REQUIRE(image.has_value());
    bool some_edge = false;
    for (std::size_t i = 0; i < image->rgba.size(); i += 4) {
        if (image->rgba[i + 3] == 0) continue;
        some_edge = some_edge || image->rgba[i + 3] < 255;
        REQUIRE(image->rgba[i] == 0x22);
        REQUIRE(image->rgba[i + 2] == 0x3A);
    }
    CHECK(some_edge);
    CHECK(ink(*drawn.draw(text("wren", 72, 0, true))) > 1.15 * ink(*image));
    CHECK(drawn.draw(text("ʃ θ ð ŋ tʃ dʒ ɹ æ ɪ ʊ", 40)).has_value());
    CHECK_FALSE(drawn.draw(text("", 40)).has_value());
    Letters none("no-such-folder");
    CHECK_FALSE(none.draw(text("wren", 72)).has_value());
}
