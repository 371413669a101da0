// What the desk's pictures are made in: their sizes, an invented unit, and a room that is empty
// anew for each picture.
#pragma once

#include <array>
#include <filesystem>
#include <memory>
#include <system_error>

#include "editor/windows/bench.hpp"
#include "editor/windows/program.hpp"
#include "tests/desk/demo_class.hpp"

namespace wrenlet::desk {

struct Size {
    int width, height;
    const char* name;
};
inline constexpr std::array<Size, 3> kSizes{
    {{1280, 720, "1280x720"}, {1920, 1080, "1920x1080"}, {1024, 768, "1024x768"}}};

/// Seen at the Hand out place, and so a name and not a path of this machine.
inline constexpr const char* kRoom = "Room 4 stick";

inline constexpr const char* kFarm =
    "fox, bow, hen, pig, duck, goat, dog, sheep, cow, rabbit, mouse, rat, rainbow, frohg, box, "
    "log, pen, cat, hat, bee, tree, spider, snail, nest, sun, moon, shed, cup; The hen sat in "
    "the hay.; Is the pig wet?; The cat can see a rat.; Can the duck swim?";

/// What every picture is made in: the word lists, the child's program, an invented class in a room
/// that is empty anew for each picture.
class Room {
  public:
    Room(const DeskOptions& options, const std::filesystem::path& folder)
        : bench(openBench(options.assets, folder / "aside", demo::kNowMs, [] {})),
          game(gameProgram(options.game)) {}

    bool isOpen() const { return bench != nullptr; }
    Workbench workbench() {
        return {
            bench->known, bench->blocked, bench->workbench.pictures, {}, "", at_once, at_once, {}};
    }
    Trying trying() {
        return {game.get(),      &at_once, &at_once, &at_once, &at_once, ClipMaking{bench->voice},
                path / "passing"};
    }
    Packing packing() {
        return {&at_once, ClipMaking{bench->voice, 2, bench->clips.get()},
                [](const std::filesystem::path&) { return std::uint64_t{3'140'000'000}; }};
    }
    /// Nothing lies in it.
    void empty() const {
        std::error_code ignored;
        std::filesystem::remove_all(path, ignored);
        std::filesystem::create_directories(path, ignored);
    }
    void remove() const {
        std::error_code ignored;
        std::filesystem::remove_all(path, ignored);
    }

    const std::filesystem::path path = kRoom;
    AtOnce at_once;
    std::unique_ptr<Bench> bench;
    std::unique_ptr<ChildGame> game;
};

/// Settings and Help, over an open unit. False when one could not be drawn.
bool sheetPictures(Room& room, const std::filesystem::path& folder, DeskOptions options);
/// Tomorrow and Papers. The same; with `one` that state alone, in the first size.
bool tomorrowPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                      std::string_view one);
/// The tablets' page at Hand out. The same.
bool tabletsPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                     std::string_view one);

}  // namespace wrenlet::desk
