// wrenlet-pictures DIR: a picture of every screen and state of the game, at several sizes and both
// ways round, made by scripted children.
#include <unistd.h>

#include <algorithm>
#include <iostream>
#include <optional>
#include <string>

#include "content/common/files.hpp"
#include "game/sdl/screenshot.hpp"
#include "tests/fixtures/visit.hpp"
#include "tests/pictures/contact_sheet.hpp"
#include "tests/pictures/states.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using fixtures::Room;
using fixtures::Visit;
using pictures::ContactSheet;
using pictures::kStates;
using pictures::showStates;

namespace {

constexpr const char* kUsage =
    "wrenlet-pictures DIR [PART]    PART: sessions, adult, skills or readme; all of them\n"
    "                               without it\n";

std::filesystem::path roomFolder() {
    return std::filesystem::temp_directory_path() /
           ("wrenlet-pictures-" + std::to_string(getpid()));
}

struct Size {
    int width, height;

    std::string prefix() const {
        return std::to_string(width) + "x" + std::to_string(height) + "-";
    }
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
    const Room room(roomFolder());
    Tape tape;
    tape.right_share = 0.55;
    tape.adult_share = 0.05;
    tape.sessions = 2;
    const auto result = played(room, size, tape, pictures);
    if (!result) return false;
    for (const std::string& file : result->files) std::cout << file << "\n";
    return result->finished && result->problems.empty();
}

std::string nameOf(std::string_view id, std::string_view state) {
    return std::string(id) + "-" + std::string(state) + ".png";
}

/// Each state of each skill, both ways round, at three sizes: a picture of each, and all of them on
/// one page.
bool drawSkills(const std::filesystem::path& pictures) {
    constexpr int kRowHeight = 150;
    constexpr Size kSizes[] = {{1280, 800}, {800, 1280},  {1024, 600},
                               {600, 1024}, {2048, 1536}, {1536, 2048}};
    std::vector<ContactSheet::Column> columns;
    for (const Size& size : kSizes)
        for (const std::string_view state : kStates)
            columns.push_back({std::string(state),
                               std::to_string(size.width) + " x " + std::to_string(size.height),
                               size.width * kRowHeight / size.height});
    ContactSheet sheet(std::filesystem::path(WRENLET_TEST_SHARE) / "fonts", columns, kRowHeight);
    bool all = true;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        sheet.row(std::string(row.name), std::string(row.id));
        std::size_t column = 0;
        for (const Size& size : kSizes) {
            const Room room(roomFolder());
            const auto see = [&](std::size_t state, const SurfacePtr& picture) {
                sheet.put(column + state, *picture);
                const auto file = pictures / (size.prefix() + nameOf(row.id, kStates[state]));
                all = savePng(picture.get(), file).ok() && all;
                std::cout << file.string() << "\n";
            };
            const ScreenSize screen{size.width, size.height, 0};
            const bool shown = showStates(room, screen, row.skill, see);
            if (!shown) std::cerr << size.prefix() << row.id << ": a state was not reached\n";
            all = shown && all;
            column += kStates.size();
        }
    }
    const auto page = pictures / "contact-sheet.png";
    std::cout << page.string() << "\n";
    return sheet.save(page).ok() && all;
}

/// The README's pictures of the game: one of each mechanic.
bool drawForReadme(const std::filesystem::path& pictures) {
    using exercise::Task;
    using exercise::Unit;
    struct Shown {
        exercise::Skill skill;
        std::string_view state, name;
    };
    constexpr Shown kShown[] = {{{Unit::onset_rime, Task::rhyme_sort}, "lifted", "sort"},
                                {{Unit::phoneme, Task::blend}, "lifted", "join"},
                                {{Unit::phoneme, Task::segment}, "right", "split"},
                                {{Unit::phoneme, Task::add}, "lifted", "change"},
                                {{Unit::sentence, Task::count}, "right", "count"},
                                {{Unit::onset_rime, Task::rhyme_pick}, "explained", "pick"}};
    std::filesystem::create_directories(pictures / "readme");
    bool all = true;
    for (const Shown& shown : kShown) {
        const Room room(roomFolder());
        const auto file = pictures / "readme" / (std::string(shown.name) + ".png");
        const auto see = [&](std::size_t state, const SurfacePtr& picture) {
            if (kStates[state] == shown.state) all = savePng(picture.get(), file).ok() && all;
        };
        all = showStates(room, {1280, 800, 0}, shown.skill, see) && all;
        std::cout << file.string() << "\n";
    }
    return all;
}

/// The adult's page when something is wrong: the classroom's pack is spoiled, and the last good one
/// is played.
bool drawTrouble(const std::filesystem::path& pictures, const Size& size) {
    const Room room(roomFolder());
    if (!openClassroom(room.classroom, room.tablet, 1).ok()) return false;
    for (const auto& pack : std::filesystem::directory_iterator(room.classroom.packs()))
        if (!writeWhole(pack.path(), "this is no pack").ok()) return false;
    const auto visit = Visit::begin(room, {size.width, size.height, 0}, {});
    if (!visit) return false;
    visit->toAdult();
    return visit->shoot(pictures / (size.prefix() + "adult-with-problems.png"));
}

/// The two pictures of a child's key: asked, one chosen, both right; the starter class has none.
bool drawKey(const std::filesystem::path& pictures, const Size& size) {
    const Room room(roomFolder());
    auto list = pack::openClassList(room.classroom);
    if (!list.ok()) return false;
    for (pack::Child& child : list.value().children) child.key = {"sock", "apple"};
    if (!writeWhole(room.classroom.classFile(), pack::writeClassList(list.value())).ok())
        return false;
    const auto visit = Visit::begin(room, {size.width, size.height, 0}, {});
    if (!visit) return false;
    bool all = true;
    visit->touch("badge:c-03");
    for (const char* picture : {"", "picture:sock", "picture:apple"}) {
        if (*picture != '\0') visit->touch(picture);
        std::string name = visit->app().place();
        std::replace(name.begin(), name.end(), ' ', '-');
        all = visit->shoot(pictures / (size.prefix() + name + ".png")) && all;
    }
    return all;
}

/// Captions for an adult: the example, the question and a correction of each mechanic.
bool drawCaptions(const std::filesystem::path& pictures, const Size& size) {
    using exercise::Task;
    using exercise::Unit;
    TabletSettings captioned;
    captioned.captions = true;
    bool all = true;
    for (const exercise::Skill skill : {exercise::Skill{Unit::onset_rime, Task::rhyme_sort},
                                        {Unit::phoneme, Task::blend},
                                        {Unit::phoneme, Task::segment},
                                        {Unit::syllable, Task::count},
                                        {Unit::onset_rime, Task::rhyme_pick},
                                        {Unit::compound, Task::remove}}) {
        const Room room(roomFolder());
        const auto visit = Visit::begin(room, {size.width, size.height, 0}, captioned, skill);
        if (!visit) return false;
        const auto shoot = [&](const std::string& state) {
            const std::string name =
                "captions-" + std::string(exercise::rowOf(skill).id) + "-" + state + ".png";
            return visit->shoot(pictures / (size.prefix() + name));
        };
        visit->touch("badge:c-03");
        if (visit->waitFor("example", 20'000)) {
            visit->wait(3'500);
            all = shoot("example") && all;
        }
        visit->waitFor("asked");
        visit->wait(1'500);
        all = shoot("asked") && all;
        visit->answerWrongly();
        visit->wait(2'500);
        all = shoot("explain") && all;
    }
    return all;
}

/// A round of some mechanics for a left hand.
bool drawLeftHand(const std::filesystem::path& pictures, const Size& size) {
    using exercise::Task;
    using exercise::Unit;
    TabletSettings left;
    left.left_hand = true;
    bool all = true;
    for (const exercise::Skill skill : {exercise::Skill{Unit::onset_rime, Task::rhyme_sort},
                                        {Unit::phoneme, Task::segment},
                                        {Unit::syllable, Task::count},
                                        {Unit::onset_rime, Task::rhyme_pick}}) {
        const Room room(roomFolder());
        const auto visit = Visit::begin(room, {size.width, size.height, 0}, left, skill);
        if (!visit) return false;
        visit->touch("badge:c-03");
        visit->waitFor("asked");
        const std::string name = "left-hand-" + std::string(exercise::rowOf(skill).id) + ".png";
        all = visit->shoot(pictures / (size.prefix() + name)) && all;
    }
    return all;
}

/// What can be set, as it is at first and set otherwise; how the tablet stands; the pause; and a
/// round for a left hand.
bool drawAdult(const std::filesystem::path& pictures, const Size& size) {
    const Room room(roomFolder());
    const auto visit = Visit::begin(room, {size.width, size.height, 0}, {});
    if (!visit) return false;
    const auto shoot = [&](const std::string& name) {
        return visit->shoot(pictures / (size.prefix() + name + ".png"));
    };
    visit->touch("leave", 1'800);
    bool all = shoot("question");
    visit->touch(*visit->app().rightTouch());
    all = shoot("adult") && all;
    visit->touch("facts");
    all = shoot("adult-facts") && all;
    visit->touch("settings");
    for (const char* thing :
         {"volume", "volume", "motion", "hands", "side", "minutes", "scan", "captions"})
        visit->touch(thing);
    all = shoot("adult-set-otherwise") && all;
    visit->touch("pause");
    all = shoot("paused") && all;
    visit->toAdult();
    visit->touch("back");
    all = shoot("badges-left-hand") && all;
    return drawLeftHand(pictures, size) && all;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2 && argc != 3) {
        std::cerr << kUsage;
        return 2;
    }
    const std::string only = argc == 3 ? argv[2] : "";
    std::filesystem::create_directories(argv[1]);
    const auto wants = [&only](std::string_view part) { return only.empty() || only == part; };
    bool all = true;
    for (const Size& size : {Size{1280, 800}, {1024, 600}, {800, 1280}, {2732, 2048}}) {
        if (wants("sessions")) all = drawSessions(argv[1], size) && all;
        if (!wants("adult")) continue;
        all = drawTrouble(argv[1], size) && all;
        all = drawAdult(argv[1], size) && all;
        all = drawKey(argv[1], size) && all;
        all = drawCaptions(argv[1], size) && all;
    }
    if (wants("skills")) all = drawSkills(argv[1]) && all;
    if (wants("readme")) all = drawForReadme(argv[1]) && all;
    return all ? 0 : 1;
}
