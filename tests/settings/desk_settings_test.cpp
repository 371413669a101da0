#include "editor/settings/desk_settings.hpp"

#include <doctest/doctest.h>

#include <filesystem>

#include "content/common/files.hpp"
#include "editor/settings/settings_place.hpp"
#include "tests/practice/samples.hpp"

using namespace wrenlet;
using namespace wrenlet::desk;
using practice::samples::Folder;

namespace {

DeskSettings unlike() {
    return {130, false, false, "Desk microphone", "Headphones \u00e9"};
}

std::string file(const std::string& fields) {
    return R"({"format": "wrenlet desk", "format_version": 1)" + fields + "}";
}

struct TwoDevices final : SoundDevices {
    std::vector<std::string> names(SoundWay way) override {
        return way == SoundWay::in ? in : std::vector<std::string>{"Speakers"};
    }
    void use(SoundWay way, const std::string& name) override {
        (way == SoundWay::in ? used_in : used_out) = name;
    }
    std::vector<std::string> in{"Built in", "Desk microphone"};
    std::string used_in = "?", used_out = "?";
};

}  // namespace

TEST_CASE("Desk settings read back as they were kept, and no other file is left") {
    const Folder folder;
    const auto path = folder / "own" / "settings.json";
    for (const DeskSettings& settings : {unlike(), DeskSettings{}}) {
        REQUIRE(keepDeskSettings(path, settings).ok());
        const auto kept = openDeskSettings(path);
        CHECK(kept.problems().empty());
        CHECK(kept.value() == settings);
    }
    CHECK(std::distance(std::filesystem::directory_iterator(path.parent_path()), {}) == 1);
}

TEST_CASE("Desk settings: where none were kept the desk is set as usual, with nothing to tell") {
    const auto kept = openDeskSettings(Folder() / "settings.json");
    CHECK(kept.problems().empty());
    CHECK(kept.value() == DeskSettings{});
}

TEST_CASE("Desk settings: broken ones give the usual ones and say what and what to do") {
    const Folder folder;
    const auto path = folder / "settings.json";
    const std::string broken[] = {
        "",
        "no JSON",
        writeDeskSettings(unlike()).substr(0, 40),
        R"({"format": "wrenlet tablet", "format_version": 1})",
        file(R"(, "text_percent": 120)"),
        file(R"(, "text_percent": 5000)"),
        file(R"(, "text_percent": "large")"),
        file(R"(, "motion_off": 3)"),
        file(R"(, "microphone": [])"),
        file(R"(, "loudspeaker": ")" + std::string(500, 'x') + "\""),
        std::string(100'000, ' '),
    };
    for (const std::string& bytes : broken) {
        CAPTURE(bytes.substr(0, 80));
        REQUIRE(writeWhole(path, bytes).ok());
        const auto kept = openDeskSettings(path);
        CHECK(kept.value() == DeskSettings{});
        REQUIRE(kept.problems().size() >= 2);
        CHECK(kept.problems().front().what.find("set as usual") != std::string::npos);
        CHECK(kept.problems().front().way_out == "Set it anew under Settings.");
        for (const Problem& problem : kept.problems())
            CHECK(problem.weight == Problem::Weight::warning);
    }
}

TEST_CASE("Desk settings: a device's name in broken UTF-8 is kept as text and read back") {
    const Folder folder;
    DeskSettings settings;
    settings.microphone = "Mic \xff\xfe";
    REQUIRE(keepDeskSettings(folder / "settings.json", settings).ok());
    CHECK(openDeskSettings(folder / "settings.json").problems().empty());
}

TEST_CASE("Desk settings: text goes through its five sizes and stays at the ends") {
    int percent = 90;
    for (const int next : {100, 115, 130, 150, 150})
        CHECK((percent = nextTextPercent(percent, 1)) == next);
    for (const int next : {130, 115, 100, 90, 90})
        CHECK((percent = nextTextPercent(percent, -1)) == next);
}

TEST_CASE("Desk settings: the kept devices are used from the start, and a chosen one at once") {
    const Folder folder;
    const auto path = folder / "settings.json";
    REQUIRE(keepDeskSettings(path, unlike()).ok());
    TwoDevices devices;
    SettingsPlace place({path, &devices, {}});
    CHECK(devices.used_in == "Desk microphone");
    CHECK(devices.used_out == "Headphones \u00e9");
    place.lookAgain();
    CHECK(place.names(SoundWay::in).size() == 2);
    // what was pulled out is still listed, and known not to be here
    REQUIRE(place.names(SoundWay::out).size() == 2);
    CHECK(!place.isHere(SoundWay::out, "Headphones \u00e9"));
    place.choose(SoundWay::in, "");
    CHECK(devices.used_in.empty());
    CHECK(openDeskSettings(path).value().microphone.empty());
    devices.in.assign(40, "One of many");
    place.lookAgain();
    CHECK(place.names(SoundWay::in).size() == 12);
}

TEST_CASE("Desk settings that cannot be kept hold for this time, and that is said") {
    const Folder folder;
    REQUIRE(writeWhole(folder / "in the way", "a file").ok());
    SettingsPlace place({folder / "in the way" / "settings.json", nullptr, {}});
    DeskSettings settings;
    settings.motion = false;
    place.set(settings);
    CHECK(!place.now().motion);
    REQUIRE(!place.problems().empty());
    CHECK(place.problems().front().what.find("for this time alone") != std::string::npos);
}
