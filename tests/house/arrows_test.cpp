#include "tests/house/arrows.hpp"

#include <doctest/doctest.h>

#include "tests/house/sources.hpp"

using namespace wrenlet::house;

namespace {

bool isWrong(const std::string& path, const std::string& include) {
    return !wrongIncludes(path, "#include " + include + "\n").empty();
}

}  // namespace

TEST_CASE("No include of the house runs against the arrows") {
    const auto sources = sourcesUnder({"content", "game", "editor", "assets", "tests"});
    REQUIRE(sources.size() > 10);
    int includes = 0;
    for (const Source& source : sources) {
        includes += static_cast<int>(includesOf(source.text).size());
        for (const std::string& wrong : wrongIncludes(source.path, source.text)) FAIL_CHECK(wrong);
    }
    CHECK(includes > 50);
}

TEST_CASE("An include against the arrows is caught") {
    CHECK(isWrong("content/pack/pack.cpp", "\"game/app.hpp\""));
    CHECK(isWrong("content/practice/store.cpp", "\"editor/document.hpp\""));
    CHECK(isWrong("game/scenes/sort.cpp", "\"editor/document.hpp\""));
    CHECK(isWrong("editor/document.cpp", "\"game/rounds/sort.hpp\""));
    CHECK(isWrong("editor/document.cpp", "<game/rounds/sort.hpp>"));
    CHECK(isWrong("game/main.cpp", "\"tests/house/arrows.hpp\""));
    CHECK(isWrong("content/new_room/thing.cpp", "\"content/common/result.hpp\""));
}

TEST_CASE("Inside content the arrows hold too") {
    const std::vector<std::string> rooms = {"common", "speech",   "exercise",
                                            "pack",   "practice", "link"};
    for (std::size_t from = 0; from < rooms.size(); ++from) {
        for (std::size_t to = 0; to < rooms.size(); ++to) {
            CAPTURE(rooms[from]);
            CAPTURE(rooms[to]);
            CHECK(isWrong("content/" + rooms[from] + "/a.cpp",
                          "\"content/" + rooms[to] + "/b.hpp\"") == (to > from));
        }
    }
}

TEST_CASE("SDL and Dear ImGui are known to the outer files alone") {
    for (const char* sdl : {"<SDL.h>", "<SDL_mixer.h>", "<SDL2/SDL.h>", "<SDL2/SDL_image.h>"}) {
        CAPTURE(sdl);
        CHECK(isWrong("content/common/clock.cpp", sdl));
        CHECK(isWrong("game/scenes/sort.cpp", sdl));
        CHECK(isWrong("editor/document.cpp", sdl));
        CHECK_FALSE(isWrong("game/sdl/screen.cpp", sdl));
        CHECK_FALSE(isWrong("game/main.cpp", sdl));
        CHECK_FALSE(isWrong("editor/windows/platform.cpp", sdl));
    }
    for (const char* imgui : {"<imgui.h>", "<imgui/imgui.h>", "<imgui_internal.h>"}) {
        CAPTURE(imgui);
        CHECK(isWrong("content/common/clock.cpp", imgui));
        CHECK(isWrong("game/sdl/screen.cpp", imgui));
        CHECK(isWrong("editor/voice/checks.cpp", imgui));
        CHECK_FALSE(isWrong("editor/windows/class_map.cpp", imgui));
        CHECK_FALSE(isWrong("editor/main.cpp", imgui));
    }
}

TEST_CASE("What would not run the same everywhere stays out") {
    CHECK(isWrong("content/practice/scheduler.cpp", "<random>"));
    CHECK(isWrong("game/rounds/sort.cpp", "<ranges>"));
    CHECK_FALSE(isWrong("editor/windows/class_map.cpp", "<ranges>"));
    CHECK_FALSE(isWrong("content/practice/scheduler.cpp", "\"content/common/random.hpp\""));
}

TEST_CASE("An include is named from the root") {
    CHECK(isWrong("game/scenes/sort.cpp", "\"sort.hpp\""));
    CHECK(isWrong("game/scenes/sort.cpp", "\"../rounds/sort.hpp\""));
    CHECK(isWrong("game/scenes/sort.cpp", "\"game/../editor/document.hpp\""));
}

TEST_CASE("However an include is written it is seen, and one in a comment is not") {
    CHECK(isWrong("content/pack/pack.cpp", "<vector>\n  #  include\t\"game/app.hpp\"  // why"));
    CHECK(
        wrongIncludes("content/pack/pack.cpp", "int a = 4 / 2;\n\n#include \"game/app.hpp\"") ==
        std::vector<std::string>{"content/pack/pack.cpp:3: game/app.hpp runs against the arrows"});
    CHECK_FALSE(isWrong("content/pack/pack.cpp", "<map>\n// #include \"game/app.hpp\"\n"));
    CHECK_FALSE(isWrong("content/pack/pack.cpp", "<map>\n/* a\n#include \"game/app.hpp\"\n*/"));
    CHECK(isWrong("content/pack/pack.cpp", "<map>\n/* a */\n#include \"game/app.hpp\""));
}
