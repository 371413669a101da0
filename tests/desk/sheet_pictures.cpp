#include <iostream>
#include <string>

#include "tests/desk/picture_room.hpp"

namespace wrenlet::desk {

namespace {

/// Two of each, one with a name that has to be cut.
struct InventedDevices final : SoundDevices {
    std::vector<std::string> names(SoundWay way) override {
        if (way == SoundWay::in)
            return {"Built-in microphone", "Table microphone with a long name, USB, channel 1"};
        return {"Built-in loudspeaker"};
    }
    void use(SoundWay, const std::string&) override {}
};

}  // namespace

bool sheetPictures(Room& room, const std::filesystem::path& folder, DeskOptions options) {
    const Workbench workbench = room.workbench();
    struct State {
        const char* name;
        Sheet sheet;
        Place place;
        int text_percent = 100;
        bool letters = true;
    };
    constexpr std::array<State, 8> kStates{{
        {"settings", Sheet::settings, Place::words},
        {"settings-large", Sheet::settings, Place::words, 150},
        {"settings-broken", Sheet::settings, Place::words, 0},
        {"help-words", Sheet::help, Place::words},
        {"help-booth", Sheet::help, Place::booth, 100, false},
        {"help-try-out", Sheet::help, Place::try_out},
        {"help-hand-out", Sheet::help, Place::hand_out},
        {"help-map", Sheet::help, Place::klass, 150},
    }};
    InventedDevices devices;
    for (const State& state : kStates) {
        for (const Size& size : kSizes) {
            room.empty();
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (std::string(state.name) + "-" + size.name + ".png");
            OpenedClass opened = demo::demoClass();
            opened.classroom.folder = room.path;
            const std::filesystem::path own = room.path / "own";
            DeskSettings settings;
            settings.text_percent = state.text_percent;  // none: it cannot be read
            settings.letters = state.letters;
            settings.microphone = "Headset of Room 2";
            if (!keepDeskSettings(own / "settings.json", settings).ok()) return false;
            const auto prepare = [&](DeskWindow& window) {
                window.makeUnit("On the farm");
                window.words().typed = kFarm;
                window.words().add(*window.unit());
                window.step();
                window.go(state.place);
                window.show(state.sheet);
                return true;
            };
            if (pictureWith(opened, options, demo::kNowMs, &workbench, prepare, std::cerr,
                            {nullptr, nullptr, &room.at_once, nullptr}, room.packing(),
                            room.trying(), {own / "settings.json", &devices, own}) != 0)
                return false;
            std::cout << options.picture.string() << "\n";
            room.remove();
        }
    }
    return true;
}

}  // namespace wrenlet::desk
