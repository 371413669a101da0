// Captions in the real letters: whatever the starter unit says is written whole.
#include <doctest/doctest.h>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "game/scenes/captions.hpp"
#include "game/sdl/assets.hpp"
#include "game/sdl/letters.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

TEST_CASE("captions: all that the starter unit says is written whole, in letters of 20 px") {
    const auto files = listFiles(std::filesystem::path(WRENLET_TEST_STARTER) / "packs", ".zip");
    REQUIRE(files.size() == 1);
    const auto bytes = readWhole(files.front(), pack::kMostPackBytes);
    REQUIRE(bytes.ok());
    const auto pack = pack::readPack(bytes.value(), "starter");
    REQUIRE(pack.ok());
    REQUIRE(pack.value().clips.size() > 100);
    Letters letters(assetsFolder() / "fonts");
    for (const ScreenSize screen : {ScreenSize{1280, 800, 0}, {1024, 600, 0}, {800, 1280, 0}}) {
        CAPTURE(screen.w);
        const Layout layout(screen, {false, true});
        const Box room = layout.captions();
        CHECK(room.x >= 0);
        CHECK(room.y + room.h <= layout.height());
        for (const pack::Clip& clip : pack.value().clips) {
            Painter painter(layout);
            drawCaption(painter, layout, {clip.text, clip.text.size()});
            std::string read;
            for (const Blit& blit : painter.take()) {
                if (blit.sprite.kind != Sprite::Kind::text) {
                    CHECK(static_cast<float>(blit.sprite.height) <= room.h + 1);
                    continue;
                }
                read += blit.sprite.name;
                CHECK(blit.sprite.height >= kLeastLine);
                Sprite whole = blit.sprite;
                whole.width = 0;
                const auto image = letters.draw(whole);
                REQUIRE(image.has_value());
                CAPTURE(blit.sprite.name);
                CHECK(image->w <= blit.sprite.width);
            }
            std::string wanted = clip.text;
            std::erase(read, ' ');
            std::erase(wanted, ' ');
            CHECK(read == wanted);
        }
    }
}
