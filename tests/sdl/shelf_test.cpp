#include "game/sdl/shelf.hpp"

#include <doctest/doctest.h>

#include <string>

#include "game/app.hpp"
#include "game/sdl/display.hpp"
#include "game/sdl/screenshot.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using practice::samples::fileBytes;
using practice::samples::Folder;
using practice::samples::writeBytes;

namespace {

constexpr std::uint64_t kStamp = 7;

const std::vector<std::uint32_t> kDots = {0xFF112233, 0x80445566, 0x00000000,
                                          0xFF778899, 0xFFAABBCC, 0xFF000001};

Pixels dots() {
    return {3, 2, 1, 4, 9, 8, false, kDots.data()};
}

void fill(const std::filesystem::path& path) {
    Shelf shelf(path, kStamp);
    shelf.put(11, dots());
    shelf.put(12, dots());
    REQUIRE(shelf.write().ok());
}

pack::ClassList twoChildren() {
    pack::ClassList list;
    list.title = "Room 4";
    list.children = {{"c-01", "Ola", "badge-01", {}}, {"c-02", "Ife", "badge-02", {}}};
    return list;
}

/// The pixels of the first frame on the screen.
std::string firstFramePixels(Shelf* shelf) {
    WindowOptions window;
    window.off_screen = true;
    const auto display = Display::open(window, WRENLET_TEST_SHARE);
    REQUIRE(display.ok());
    Display& seen = *display.value();
    seen.showFirst(firstFrame(twoChildren(), seen.screen()), shelf);
    const SurfacePtr picture = readBack(seen.renderer());
    std::string bytes;
    for (int y = 0; y < picture->h; ++y)
        bytes.append(static_cast<const char*>(picture->pixels) + y * picture->pitch,
                     3 * static_cast<std::size_t>(picture->w));
    return bytes;
}

}  // namespace

TEST_CASE("Shelf: what was put is found at the next start, pixel by pixel") {
    const Folder folder;
    fill(folder / "shelf");
    Shelf shelf(folder / "shelf", kStamp);
    const Pixels* found = shelf.find(12);
    REQUIRE(found != nullptr);
    CHECK(found->w == 3);
    CHECK(found->h == 2);
    CHECK(found->left == 1);
    CHECK(found->top == 4);
    CHECK(found->size_w == 9);
    CHECK(found->size_h == 8);
    CHECK_FALSE(found->opaque);
    CHECK(std::vector<std::uint32_t>(found->argb, found->argb + 6) == kDots);
    CHECK(shelf.find(13) == nullptr);
}

TEST_CASE("Shelf: it is stale when something is new or no longer wanted, and holds no more then") {
    const Folder folder;
    fill(folder / "shelf");
    Shelf all(folder / "shelf", kStamp);
    all.find(11);
    CHECK(all.isStale());
    all.find(12);
    CHECK_FALSE(all.isStale());
    all.put(13, dots());
    CHECK(all.isStale());

    Shelf one(folder / "shelf", kStamp);
    one.find(11);
    REQUIRE(one.write().ok());
    Shelf left(folder / "shelf", kStamp);
    CHECK(left.find(11) != nullptr);
    CHECK(left.find(12) == nullptr);
}

TEST_CASE("Shelf: another program's, a cut one and one with any byte changed are not used") {
    const Folder folder;
    fill(folder / "shelf");
    CHECK(Shelf(folder / "shelf", kStamp + 1).find(11) == nullptr);
    const std::string good = fileBytes(folder / "shelf");
    for (std::size_t at = 0; at < good.size(); ++at) {
        std::string bad = good;
        bad[at] = static_cast<char>(bad[at] ^ 0x10);
        writeBytes(folder / "shelf", bad);
        CHECK_MESSAGE(Shelf(folder / "shelf", kStamp).find(11) == nullptr, "byte ", at);
    }
    for (const std::size_t size : {std::size_t{0}, std::size_t{31}, good.size() - 1}) {
        writeBytes(folder / "shelf", good.substr(0, size));
        CHECK(Shelf(folder / "shelf", kStamp).find(11) == nullptr);
    }
}

TEST_CASE("Shelf: the first frame from the shelf is the first frame drawn anew") {
    const Folder folder;
    const std::string drawn = firstFramePixels(nullptr);
    {
        Shelf shelf(folder / "shelf", kStamp);
        CHECK(firstFramePixels(&shelf) == drawn);
        CHECK(shelf.isStale());
        REQUIRE(shelf.write().ok());
    }
    Shelf shelf(folder / "shelf", kStamp);
    CHECK(firstFramePixels(&shelf) == drawn);
    CHECK_FALSE(shelf.isStale());
}
