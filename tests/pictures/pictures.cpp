// wrenlet-pictures DIR: a picture of every screen and state of the game, at several sizes and both
// ways round, made by scripted children.
#include <iostream>

#include "game/sdl/script_run.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

namespace {

bool drawAt(const std::filesystem::path& pictures, int width, int height) {
    const auto folder = std::filesystem::temp_directory_path() / "wrenlet-pictures";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    std::filesystem::copy(WRENLET_TEST_STARTER, folder / "classroom",
                          std::filesystem::copy_options::recursive);
    auto opened = openClassroom({folder / "classroom"}, {folder / "tablet"}, 1);
    if (!opened.ok()) return false;
    Tape tape;
    tape.width = width;
    tape.height = height;
    tape.right_share = 0.55;
    tape.adult_share = 0.05;
    tape.sessions = 2;
    TableOptions options;
    options.window = {width, height, false, true};
    options.assets = WRENLET_TEST_SHARE;
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = 3;
    ScriptClock clock;
    auto table = Table::open(opened.value(), clock, options);
    if (!table.ok()) return false;
    ScriptRun run;
    run.pictures = pictures;
    run.picture_prefix = std::to_string(width) + "x" + std::to_string(height) + "-";
    run.each_place_once = true;
    const ScriptResult result = runScript(*table.value(), clock, tape, run);
    for (const std::string& file : result.files) std::cout << file << "\n";
    std::filesystem::remove_all(folder);
    return result.finished && result.problems.empty();
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "wrenlet-pictures DIR\n";
        return 2;
    }
    std::filesystem::create_directories(argv[1]);
    bool all = true;
    for (const auto& [width, height] :
         {std::pair{1280, 800}, {1024, 600}, {800, 1280}, {2732, 2048}})
        all = drawAt(argv[1], width, height) && all;
    return all ? 0 : 1;
}
