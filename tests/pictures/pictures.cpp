// wrenlet-pictures DIR: a picture of every screen and state of the game, at several sizes and both
// ways round, made by scripted children.
#include <iostream>
#include <optional>
#include <string>

#include "content/common/files.hpp"
#include "game/sdl/script_run.hpp"

using namespace wrenlet;
using namespace wrenlet::game;

namespace {

struct Size {
    int width, height;

    std::string prefix() const {
        return std::to_string(width) + "x" + std::to_string(height) + "-";
    }
};

/// The starter classroom, a tablet beside it, and a folder for pictures that are not all kept.
struct Room {
    std::filesystem::path folder = std::filesystem::temp_directory_path() / "wrenlet-pictures";
    pack::Classroom classroom{folder / "classroom"};
    TabletFolder tablet{folder / "tablet"};
    std::filesystem::path pictures = folder / "pictures";

    Room() {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(pictures);
        std::filesystem::copy(WRENLET_TEST_STARTER, classroom.folder,
                              std::filesystem::copy_options::recursive);
    }
    ~Room() { std::filesystem::remove_all(folder); }
    Room(const Room&) = delete;
    Room& operator=(const Room&) = delete;
};

/// A picture of each place that the child comes to; nothing when the room cannot be opened.
/// With a skill, its items alone are asked.
std::optional<ScriptResult> played(const Room& room, const Size& size, Tape tape,
                                   const std::filesystem::path& pictures,
                                   std::optional<exercise::Skill> skill = {}) {
    auto opened = openClassroom(room.classroom, room.tablet, 1);
    if (!opened.ok()) return std::nullopt;
    if (skill)
        std::erase_if(opened.value().pack.items,
                      [&](const exercise::Item& item) { return item.skill != *skill; });
    tape.width = size.width;
    tape.height = size.height;
    TableOptions options;
    options.window = {size.width, size.height, false, true};
    options.assets = WRENLET_TEST_SHARE;
    options.sound = SoundDevice::Use::decode_only;
    options.app.seed = 3;
    ScriptClock clock;
    auto table = Table::open(opened.value(), clock, options);
    if (!table.ok()) return std::nullopt;
    ScriptRun run;
    run.pictures = pictures;
    run.picture_prefix =
        size.prefix() + (skill ? std::string(exercise::rowOf(*skill).id) + "-" : "");
    run.each_place_once = true;
    return runScript(*table.value(), clock, tape, run);
}

bool drawSessions(const std::filesystem::path& pictures, const Size& size) {
    const Room room;
    Tape tape;
    tape.right_share = 0.55;
    tape.adult_share = 0.05;
    tape.sessions = 2;
    const auto result = played(room, size, tape, pictures);
    if (!result) return false;
    for (const std::string& file : result->files) std::cout << file << "\n";
    return result->finished && result->problems.empty();
}

/// Every state of a skill's round: a child who knows half of it plays it for a while.
bool drawSkill(const std::filesystem::path& pictures, const Size& size, exercise::Skill skill) {
    const Room room;
    Tape tape;
    tape.right_share = 0.55;
    tape.most_minutes = 4;
    const auto result = played(room, size, tape, pictures, skill);
    if (!result) return false;
    for (const std::string& file : result->files) std::cout << file << "\n";
    return result->problems.empty();
}

/// The adult's page when something is wrong: the classroom's pack is spoiled, and the last good one
/// is played.
bool drawTrouble(const std::filesystem::path& pictures, const Size& size) {
    const Room room;
    if (!openClassroom(room.classroom, room.tablet, 1).ok()) return false;
    for (const auto& pack : std::filesystem::directory_iterator(room.classroom.packs()))
        if (!writeWhole(pack.path(), "this is no pack").ok()) return false;
    Tape tape;
    tape.adult_share = 1;
    tape.most_minutes = 1;
    if (!played(room, size, tape, room.pictures)) return false;
    const auto page = room.pictures / (size.prefix() + "adult.png");
    const auto kept = pictures / (size.prefix() + "adult-with-problems.png");
    std::error_code error;
    std::filesystem::copy_file(page, kept, std::filesystem::copy_options::overwrite_existing,
                               error);
    if (!error) std::cout << kept.string() << "\n";
    return !error;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "wrenlet-pictures DIR\n";
        return 2;
    }
    std::filesystem::create_directories(argv[1]);
    bool all = true;
    for (const Size& size : {Size{1280, 800}, {1024, 600}, {800, 1280}, {2732, 2048}}) {
        all = drawSessions(argv[1], size) && all;
        all = drawTrouble(argv[1], size) && all;
    }
    for (const Size& size : {Size{1280, 800}, {1024, 600}, {800, 1280}})
        for (const exercise::SkillRow& row : exercise::skillTable())
            if (row.is_played) all = drawSkill(argv[1], size, row.skill) && all;
    return all ? 0 : 1;
}
