// wrenlet-desk-pictures DIR [words|booth|try|list|sheets|class|tomorrow|tablets|readme]: every page
// and state of the desk, from the invented class.
#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>

#include "tests/booth/prepared_microphone.hpp"
#include "tests/desk/picture_room.hpp"

namespace {

using namespace wrenlet;
using namespace wrenlet::desk;

struct Shown {
    const char* name;
    OpenedClass (*opened)();
    Page page;
    const char* child;
    const char* skill;
};

OpenedClass noFolder() {
    return {};
}

constexpr std::array<Shown, 12> kShown{{
    {"map", demo::demoClass, Page::map, "", ""},
    {"map-with-problems", demo::withProblems, Page::map, "", ""},
    {"map-after-one-day", demo::afterOneDay, Page::map, "", ""},
    {"child", demo::demoClass, Page::child, "Maya", ""},
    {"child-counting", demo::demoClass, Page::child, "Gus", "sentence.count"},
    {"child-rhyming", demo::demoClass, Page::child, "Sol", "onset-rime.rhyme-sort"},
    {"child-neediest", demo::demoClass, Page::child, "", ""},
    {"child-not-played", demo::demoClass, Page::child, "Uma", ""},
    {"nobody-played", demo::nobodyPlayed, Page::map, "", ""},
    {"no-children", demo::noChildren, Page::map, "", ""},
    {"broken-list", demo::unreadableList, Page::map, "", ""},
    {"no-classroom", noFolder, Page::map, "", ""},
}};

/// True when one state alone is drawn, in the first size, and this is another.
bool isPassedOver(std::string_view one, std::string_view state, const Size& size) {
    return !one.empty() && (one != state || size.width != kSizes.front().width);
}

/// The Words page in its states, of an invented unit that is thrown away after.
bool wordsPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                   std::string_view one) {
    const Workbench workbench = room.workbench();
    struct State {
        const char* name;
        const char* typed;
        const char* in_hand;
        const char* box;
        const char* sought = nullptr;  // among the pictures
    };
    constexpr std::array<State, 6> kStates{{
        {"words", kFarm, "fox", ""},
        {"words-to-decide", kFarm, "bow", ""},
        {"words-unknown", kFarm, "frohg", "barn, horse"},
        {"words-not-taken", "pig, h3n, c\u00f4w, goat", "pig", ""},
        {"words-picture", kFarm, "hen", "", "c"},
        {"words-empty", "", "", ""},
    }};
    for (const State& state : kStates) {
        for (const Size& size : kSizes) {
            if (isPassedOver(one, state.name, size)) continue;
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (std::string(state.name) + "-" + size.name + ".png");
            OpenedClass opened = demo::demoClass();
            opened.classroom.folder = room.path;
            const auto prepare = [&](DeskWindow& window) {
                window.makeUnit("On the farm");
                window.words().typed = state.typed;
                window.words().add(*window.unit());
                window.words().typed = state.box;
                window.words().in_hand = {state.in_hand, false};
                if (state.sought == nullptr) return true;
                window.words().choosePicture(*window.unit());
                window.words().choosing->sought = state.sought;
                window.words().choosing->shown = 20;  // as after some frames
                return true;
            };
            if (pictureWith(opened, options, demo::kNowMs, &workbench, prepare, std::cerr,
                            {nullptr, nullptr, &room.at_once, nullptr}, {}, room.trying()) != 0)
                return false;
            std::cout << options.picture.string() << "\n";
            room.remove();
        }
    }
    return true;
}

pack::ClassList shieldedClass() {
    pack::ClassList list = demo::classList();
    list.children[1].key = {"sock", "apple"};
    list.children[3].key = {"tree", "wheel"};
    list.children[3].shields = {"b/v", "i/\u026a", "\u03b8/t"};
    list.children[5].badge = list.children[2].badge;
    return list;
}

/// A unit is open, and with `opened` another one is being brought in.
bool bringPrepared(DeskWindow& window, const std::filesystem::path& room,
                   const Workbench& workbench, bool opened) {
    auto theirs = OpenUnit::make(room, "Their farm", workbench);
    if (!theirs.ok()) return false;
    theirs.value()->change([&](UnitAtWork& work) {
        work.add("pig; hen; cow; cat; goat; barn; The hen sat in the hay.", "words",
                 workbench.known);
        work.chooseSounds("cat", {{speech::Phoneme::k},
                                  {speech::Phoneme::aa, speech::Stress::primary},
                                  {speech::Phoneme::t}});
        work.choosePicture("goat", "sheep");
    });
    theirs.value()->finish(0);
    window.makeUnit("On the farm");
    window.words().typed = "cat, dog, goat, pig";
    window.words().add(*window.unit());
    window.bring().begin(room, *window.unit());
    if (opened) window.bring().openFile(theirs.value()->folder().folder, *window.unit());
    return true;
}

/// The class list in its states, and another's unit brought in.
bool listPictures(Room& room, const std::filesystem::path& folder, DeskOptions options) {
    const Workbench workbench = room.workbench();
    const std::array<Size, 4> sizes{{kSizes[0], kSizes[1], kSizes[2], {3840, 2160, "3840x2160"}}};
    for (const std::string name :
         {"class-list", "class-list-empty", "class-list-pasted", "class-list-roster", "bring-in",
          "bring-in-choose", "class-list-left", "child-why", "child-aloud", "map-narrowed"}) {
        for (const Size& size : sizes) {
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.scale = size.width == 3840 ? std::optional<float>(2.f) : std::nullopt;
            options.picture = folder / (name + "-" + size.name + ".png");
            OpenedClass opened =
                name == "class-list-empty" ? demo::noChildren() : demo::demoClass();
            if (name != "class-list-empty") opened = withList(opened, shieldedClass());
            opened.classroom.folder = room.path;
            const auto prepare = [&](DeskWindow& window) {
                if (name.compare(0, 8, "bring-in") == 0)
                    return bringPrepared(window, room.path, workbench, name == "bring-in");
                window.go(Place::klass);
                if (name == "child-why" || name == "child-aloud") {
                    Desk& desk = window.desk();
                    desk.openChild(desk.map().rows.front().child);
                    const SoundGroup& group = desk.story().groups.front();
                    desk.askWhy(group.rows.front().cell);
                    if (name == "child-why") return true;
                    desk.closeWhy();
                    EarPlace& ear = window.ear();
                    ear.open(desk.opened(), desk.child(), desk.skill(), EarWords::fresh, workbench,
                             1);
                    ear.mark(practice::HeardAs::right, {room.path}, demo::kLastDay);
                    ear.mark(practice::HeardAs::almost, {room.path}, demo::kLastDay);
                    ear.mark(practice::HeardAs::wrong, {room.path}, demo::kLastDay);
                    return true;
                }
                if (name == "map-narrowed") {
                    MapFilter filter;
                    filter.days = 5;
                    window.desk().filterBy(filter);
                    return true;
                }
                window.desk().showList();
                OpenClassList& list = *window.classList();
                ClassListPlace& place = window.classPlace();
                if (name == "class-list-empty") return true;
                place.take(list.list().children[3].id, list);
                place.shield_told = "b/v";
                if (name == "class-list-pasted") {
                    place.typed = "Ottilie | Brook; R4mon | Vale; Wim | Field; Ola | Marsh";
                    place.add(list);
                }
                if (name == "class-list-roster") {
                    place.roster_from = "export.zip";
                    place.roster = Roster{
                        {},
                        {{"1st grade, Hill", {{"A"}, {"B"}}}, {"Kindergarten, Marsh", {{"C"}}}}};
                }
                if (name == "class-list-left") {
                    list.change().leave(list.list().children[0].id);
                    list.change().leave(list.list().children[3].id);
                    place.move(100, list);
                    place.pane_open = true;
                    place.delete_typed = list.work().leftChild(place.in_hand)->name;
                }
                return true;
            };
            if (pictureWith(opened, options, demo::kNowMs, &workbench, prepare, std::cerr) != 0)
                return false;
            std::cout << options.picture.string() << "\n";
            room.remove();
        }
    }
    return true;
}

/// The next pack is made; with `second`, after one was handed out and a word was added.
void packInHand(DeskWindow& window, bool second) {
    window.unit()->change(
        [&](UnitAtWork& work) { work.respell("frohg", "frog", window.unit()->bench().known); });
    window.step();
    window.go(Place::hand_out);
    window.handOut()->build();
    window.step();
    if (!second) return;
    window.handOut()->handOut();
    window.words().typed = "ham";
    window.words().add(*window.unit());
    window.step();
    window.handOut()->build();
    window.step();
}

/// The Booth page: before it begins, while it listens, and with something found.
bool boothPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                   std::string_view one) {
    const Workbench workbench = room.workbench();
    const auto run = [](DeskWindow& window, double seconds) {
        for (int i = 0; i < int(seconds * 50); ++i) window.step();
    };
    const auto say = [&](DeskWindow& window, PreparedMicrophone& microphone, const Pcm& sound) {
        microphone.say(sound);
        run(window, sound.seconds() + 1.2);
    };
    constexpr std::array<const char*, 8> kStates{
        "booth",    "booth-listening", "booth-uh",        "booth-sentence",
        "hand-out", "hand-out-second", "hand-out-copied", "hand-out-gone"};
    for (const char* state : kStates) {
        for (const Size& size : kSizes) {
            if (isPassedOver(one, state, size)) continue;
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (std::string(state) + "-" + size.name + ".png");
            OpenedClass opened = demo::demoClass();
            opened.classroom.folder = room.path;
            PreparedMicrophone microphone;
            const BoothSound sound{&microphone, nullptr, &room.at_once, nullptr};
            const std::string name = state;
            const auto prepare = [&](DeskWindow& window) {
                window.makeUnit("On the farm");
                window.words().typed = kFarm;
                window.words().add(*window.unit());
                run(window, 0.1);
                window.go(Place::booth);
                Booth& booth = *window.booth();
                if (name == "booth") return true;
                if (name.compare(0, 8, "hand-out") == 0) {
                    packInHand(window, name != "hand-out");
                    StickPlace& stick = window.handOut()->stick();
                    std::filesystem::create_directories(room.path / "stick");
                    stick.typed = (room.path / "stick").string();
                    if (name == "hand-out-copied") stick.copy({room.path}, "on-the-farm-1.zip");
                    if (name == "hand-out-gone") {
                        room.remove();
                        window.go(Place::hand_out);
                        stick.copy({room.path}, "on-the-farm-1.zip");
                    }
                    return true;
                }
                booth.goOn();
                run(window, 1);
                for (int i = 0; i < 6; ++i)
                    say(window, microphone, room.bench->voice.say(booth.current()->need));
                const std::string wanted = name == "booth-sentence" ? "sentence:s-1" : "sound:b";
                for (std::size_t i = 0; i < booth.queue().size(); ++i)
                    if (name != "booth-listening" && booth.queue()[i].need.id == wanted)
                        booth.choose(i);
                if (name == "booth-uh") {
                    const speech::Pronunciation buh{{speech::Phoneme::b},
                                                    {speech::Phoneme::ah, speech::Stress::primary}};
                    say(window, microphone,
                        room.bench->voice.say(
                            {"part:bu", "/bu/", buh, pack::VoiceNeed::Kind::part}));
                }
                microphone.say(room.bench->voice.say(booth.current()->need));
                run(window, 0.3);
                return true;
            };
            std::ofstream(room.path / "class.json") << pack::writeClassList(opened.list);
            if (pictureWith(opened, options, demo::kNowMs, &workbench, prepare, std::cerr, sound,
                            room.packing(), room.trying()) != 0)
                return false;
            std::cout << options.picture.string() << "\n";
            room.remove();
        }
    }
    return true;
}

/// The Try out page: a question of a few skills, one left out, and words that would give more.
bool tryPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                 std::string_view one) {
    const Workbench workbench = room.workbench();
    struct State {
        const char* name;
        const char* typed;
        const char* skill;
        int question;
        bool upright, left_out, finding;
    };
    constexpr std::array<State, 9> kStates{{
        {"try-out", kFarm, "onset-rime.rhyme-sort", 3, false, false, false},
        {"try-out-pick", kFarm, "phoneme.first", 11, false, false, false},
        {"try-out-left-out", kFarm, "phoneme.blend", 2, false, true, false},
        {"try-out-upright", kFarm, "sentence.count", 1, true, false, false},
        {"try-out-letter", kFarm, "letter.sound", 2, false, false, false},
        {"try-out-find-more", kFarm, "compound.substitute", 0, false, false, true},
        {"try-out-enough", kFarm, "phoneme.first", 0, false, false, true},
        {"try-out-nothing", "pig, hen, cow", "onset-rime.rhyme-pick", 0, false, false, false},
        {"try-out-empty", "", "", 0, false, false, false},
    }};
    constexpr std::array<Size, 4> kTrySizes{{{1280, 720, "1280x720"},
                                             {1920, 1080, "1920x1080"},
                                             {1024, 768, "1024x768"},
                                             {3840, 2160, "3840x2160"}}};
    for (const State& state : kStates) {
        for (const Size& size : kTrySizes) {
            if (isPassedOver(one, state.name, size)) continue;
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.scale = size.width == 3840 ? std::optional(2.f) : std::nullopt;
            options.picture = folder / (std::string(state.name) + "-" + size.name + ".png");
            OpenedClass opened = demo::demoClass();
            opened.classroom.folder = room.path;
            const auto prepare = [&](DeskWindow& window) {
                window.makeUnit("On the farm");
                window.words().typed = state.typed;
                window.words().add(*window.unit());
                window.step();
                window.go(Place::try_out);
                TryPlace& place = *window.tryOut();
                const auto& skills = window.unit()->look().skills;
                for (std::size_t i = 0; i < skills.size(); ++i)
                    if (exercise::rowOf(skills[i].skill).id == state.skill) place.chooseSkill(i);
                place.move(state.question);
                place.setUpright(state.upright);
                if (state.left_out) place.leaveOut();
                if (state.finding) window.findMore();
                return true;
            };
            if (pictureWith(opened, options, demo::kNowMs, &workbench, prepare, std::cerr,
                            {nullptr, nullptr, &room.at_once, nullptr}, {}, room.trying()) != 0)
                return false;
            std::cout << options.picture.string() << "\n";
            room.remove();
        }
    }
    return true;
}

bool classPictures(const std::filesystem::path& folder, DeskOptions options) {
    for (const Shown& shown : kShown) {
        const OpenedClass opened = shown.opened();
        for (const Size& size : kSizes) {
            options.page = shown.page;
            options.child = shown.child;
            options.skill = shown.skill;
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (std::string(shown.name) + "-" + size.name + ".png");
            if (pictureOf(opened, options, demo::kNowMs, std::cerr) != 0) return false;
            std::cout << options.picture.string() << "\n";
        }
    }
    return true;
}

/// The six of the README, by the names they have there.
bool readmePictures(Room& room, const std::filesystem::path& folder, const DeskOptions& options) {
    const std::filesystem::path beside = folder / "drawn";
    std::error_code error;
    std::filesystem::create_directories(beside, error);
    if (!wordsPictures(room, beside, options, "words") ||
        !boothPictures(room, beside, options, "booth-uh") ||
        !tryPictures(room, beside, options, "try-out") ||
        !boothPictures(room, beside, options, "hand-out") ||
        !tomorrowPictures(room, beside, options, "tomorrow") ||
        !tabletsPictures(room, beside, options, "tablets"))
        return false;
    constexpr std::array<std::array<const char*, 2>, 6> kNames{{
        {"words", "desk-words"},
        {"booth-uh", "desk-booth"},
        {"try-out", "desk-try-out"},
        {"hand-out", "desk-hand-out"},
        {"tomorrow", "desk-tomorrow"},
        {"tablets", "desk-tablets"},
    }};
    for (const auto& [drawn, name] : kNames) {
        const auto picture = folder / (std::string(name) + ".png");
        std::filesystem::rename(beside / (std::string(drawn) + "-1280x720.png"), picture, error);
        if (error) return false;
        std::cout << picture.string() << "\n";
    }
    std::filesystem::remove_all(beside, error);
    return true;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2 && argc != 3) {
        std::cerr << "wrenlet-desk-pictures DIR "
                     "[words|booth|try|list|sheets|class|tomorrow|tablets|readme]\n";
        return 2;
    }
    namespace fs = std::filesystem;
    DeskOptions options;
    const fs::path bin = fs::absolute(argv[0]).parent_path();
    options.game = bin / "wrenlet";
    options.assets = bin.parent_path() / "share" / "wrenlet";
    if (const char* named = std::getenv("WRENLET_ASSETS")) options.assets = fs::absolute(named);
    const std::string only = argc == 3 ? argv[2] : "";
    const fs::path all = fs::absolute(argv[1]);
    const fs::path folder = only == "readme" ? all : all / "desk";
    std::error_code error;
    fs::create_directories(folder, error);
    fs::current_path(folder, error);  // the classroom's folder has a name there, and no path
    if (error) {
        std::cerr << "Nothing can be written to " << folder.string() << ".\n";
        return 1;
    }
    Room room(options, folder);
    if (!room.isOpen()) {
        std::cerr << "The word lists are not where they should be.\n";
        return 1;
    }
    if (only == "readme") return readmePictures(room, folder, options) ? 0 : 1;
    const auto wanted = [&](const char* name) { return only.empty() || only == name; };
    const bool drawn = (!wanted("words") || wordsPictures(room, folder, options, {})) &&
                       (!wanted("booth") || boothPictures(room, folder, options, {})) &&
                       (!wanted("try") || tryPictures(room, folder, options, {})) &&
                       (!wanted("list") || listPictures(room, folder, options)) &&
                       (!wanted("sheets") || sheetPictures(room, folder, options)) &&
                       (!wanted("class") || classPictures(folder, options)) &&
                       (!wanted("tomorrow") || tomorrowPictures(room, folder, options, {})) &&
                       (!wanted("tablets") || tabletsPictures(room, folder, options, {}));
    fs::remove_all(folder / "aside", error);
    return drawn ? 0 : 1;
}
