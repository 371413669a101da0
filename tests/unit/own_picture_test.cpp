#include "editor/unit/own_picture.hpp"

#include <doctest/doctest.h>
#include <stb/stb_image.h>
#include <stb/stb_image_write.h>

#include "content/common/random.hpp"
#include "content/pack/media_check.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;

namespace {

void append(void* to, void* data, int size) {
    static_cast<std::string*>(to)->append(static_cast<const char*>(data),
                                          static_cast<std::size_t>(size));
}

/// Red at the top left, green at the top right, blue at the bottom left, black elsewhere.
std::vector<unsigned char> corners(int width, int height) {
    std::vector<unsigned char> pixels(static_cast<std::size_t>(width * height * 3), 0);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const bool left = x < width / 2, top = y < height / 2;
            unsigned char* pixel = &pixels[static_cast<std::size_t>((y * width + x) * 3)];
            if (left && top) pixel[0] = 255;
            if (!left && top) pixel[1] = 255;
            if (left && !top) pixel[2] = 255;
        }
    return pixels;
}

std::string jpeg(int width, int height) {
    std::string bytes;
    stbi_write_jpg_to_func(append, &bytes, width, height, 3, corners(width, height).data(), 95);
    return bytes;
}

std::string png(int width, int height) {
    std::string bytes;
    stbi_write_png_to_func(append, &bytes, width, height, 3, corners(width, height).data(), 0);
    return bytes;
}

/// The JPEG with an Exif segment right after its start that says how the camera was held, and by
/// whom: laid out after CIPA DC-008 (Exif 2.32), big-endian.
std::string held(const std::string& jpeg, char way) {
    const std::string artist = "A. Nonymous";
    std::string exif("Exif\0\0MM\0\x2A\0\0\0\x08\0\x02", 16);
    exif += std::string("\x01\x12\0\x03\0\0\0\x01\0", 9) + way + std::string("\0\0", 2);
    exif += std::string("\x01\x3B\0\x02\0\0\0\x0C\0\0\0\x26", 12) + std::string(4, '\0') + artist +
            std::string(1, '\0');
    const std::size_t size = exif.size() + 2;
    return jpeg.substr(0, 2) + "\xFF\xE1" + static_cast<char>(size >> 8) +
           static_cast<char>(size & 0xFF) + exif + jpeg.substr(2);
}

struct Seen {
    int width = 0, height = 0;
    std::string corners;  // top left, top right, bottom left, bottom right: r, g, b or k
};
Seen seen(const std::string& png) {
    Seen seen;
    int channels = 0;
    unsigned char* pixels = stbi_load_from_memory(
        reinterpret_cast<const unsigned char*>(png.data()), static_cast<int>(png.size()),
        &seen.width, &seen.height, &channels, 3);
    REQUIRE(pixels != nullptr);
    for (const int y : {seen.height / 8, seen.height - 1 - seen.height / 8})
        for (const int x : {seen.width / 8, seen.width - 1 - seen.width / 8}) {
            const unsigned char* p = pixels + (y * seen.width + x) * 3;
            seen.corners += p[0] > 128 ? 'r' : p[1] > 128 ? 'g' : p[2] > 128 ? 'b' : 'k';
        }
    stbi_image_free(pixels);
    return seen;
}

std::string big(unsigned number) {
    return {static_cast<char>(number >> 24), static_cast<char>(number >> 16),
            static_cast<char>(number >> 8), static_cast<char>(number)};
}

}  // namespace

TEST_CASE("Own pictures: a photograph is made small, its shape kept") {
    for (const std::string& bytes : {jpeg(1200, 800), png(1200, 800)}) {
        const auto tidied = tidiedPicture(bytes, "duck.jpg", {});
        REQUIRE(tidied.ok());
        CHECK(pack::whyNoPicture(tidied.value()) == "");
        const Seen small = seen(tidied.value());
        CHECK(small.width == 400);
        CHECK(small.height == 267);
        CHECK(small.corners == "rgbk");
    }
    CHECK(seen(tidiedPicture(png(60, 40), "small.png", {}).value()).width == 60);
}

TEST_CASE("Own pictures: a photograph stands upright, however the camera was held") {
    // What the eight values mean, as the standard's table of "Orientation" gives it.
    const char* const upright[] = {"",     "rgbk", "grkb", "kbgr", "bkrg",
                                   "rbgk", "brkg", "kgbr", "gkrb"};
    for (char way = 1; way <= 8; ++way) {
        CAPTURE(int(way));
        const auto tidied = tidiedPicture(held(jpeg(600, 400), way), "duck.jpg", {});
        REQUIRE(tidied.ok());
        const Seen turned = seen(tidied.value());
        CHECK(turned.width == (way < 5 ? 400 : 267));
        CHECK(turned.corners == upright[int(way)]);
    }
}

TEST_CASE("Own pictures: nothing goes on but what is seen") {
    const std::string named = held(jpeg(60, 40), 1);
    REQUIRE(named.find("Nonymous") != std::string::npos);
    const auto tidied = tidiedPicture(named, "duck.jpg", {});
    REQUIRE(tidied.ok());
    CHECK(tidied.value().find("Nonymous") == std::string::npos);
    for (const char* chunk : {"tEXt", "iTXt", "zTXt", "eXIf", "tIME"})
        CHECK(tidied.value().find(chunk) == std::string::npos);
}

TEST_CASE("Own pictures: one of a hundred megapixels is refused by its head") {
    std::string bytes = png(60, 40);
    bytes.replace(16, 8, big(10'000) + big(10'000));
    const auto tidied = tidiedPicture(bytes, "moon.png", {});
    REQUIRE_FALSE(tidied.ok());
    CHECK(sentence(tidied.problems().front()).find("10000 by 10000 pixels") != std::string::npos);
    CHECK_FALSE(tidiedPicture(std::string(65u << 20, 'x'), "huge.png", {}).ok());
}

TEST_CASE("Own pictures: a drawing is drawn once, and one that would not end is not begun") {
    int drawn = 0;
    const DrawSvg draw = [&](std::string_view, int side) {
        ++drawn;
        return Rgba{side, side, std::vector<unsigned char>(std::size_t(side * side * 4), 255)};
    };
    const std::string head = "<svg viewBox=\"0 0 9 9\"><path d=\"M0 0L1e9 0\" ";
    CHECK(tidiedPicture(head + "/></svg>", "duck.svg", draw).ok());
    CHECK(drawn == 1);
    const auto bomb = tidiedPicture(head + "stroke-dasharray=\".0001\"/></svg>", "d.svg", draw);
    REQUIRE_FALSE(bomb.ok());
    CHECK(bomb.problems().front().way_out != "");
    CHECK_FALSE(
        tidiedPicture("<!DOCTYPE svg [<!ENTITY a \"aa\"><!ENTITY b \"&a;&a;\">]><svg></svg>",
                      "lol.svg", draw)
            .ok());
    CHECK(drawn == 1);
}

TEST_CASE("Own pictures: damaged files give a problem or a picture, never harm") {
    Random random(7);
    std::size_t refused = 0;
    for (const std::string& whole : {held(jpeg(64, 48), 6), png(64, 48)})
        for (int i = 0; i < 400; ++i) {
            std::string bytes = whole;
            if (i % 2 == 0) bytes.resize(random.next() % bytes.size());
            for (int k = 0; k < i % 7 && !bytes.empty(); ++k)
                bytes[random.next() % bytes.size()] = static_cast<char>(random.next());
            const auto tidied = tidiedPicture(bytes, "x.jpg", {});
            refused += !tidied.ok();
            if (tidied.ok())
                CHECK(pack::whyNoPicture(tidied.value()) == "");
            else
                CHECK(tidied.problems().front().where == "x.jpg");
        }
    CHECK(refused > 100);
    CHECK_FALSE(tidiedPicture("", "empty.png", {}).ok());
    CHECK_FALSE(tidiedPicture("GIF89a", "cat.gif", {}).ok());
}
