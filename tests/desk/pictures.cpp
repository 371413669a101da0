// wrenlet-desk-pictures DIR: every page and state of the desk, from the invented class.
#include <array>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>

#include "editor/windows/program.hpp"
#include "tests/desk/demo_class.hpp"

namespace {

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

struct Size {
    int width, height;
    const char* name;
};
constexpr std::array<Size, 3> kSizes{
    {{1280, 720, "1280x720"}, {1920, 1080, "1920x1080"}, {1024, 768, "1024x768"}}};

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "wrenlet-desk-pictures DIR\n";
        return 2;
    }
    namespace fs = std::filesystem;
    DeskOptions options;
    if (const char* named = std::getenv("WRENLET_ASSETS")) {
        options.assets = named;
    } else {
        options.assets = fs::absolute(argv[0]).parent_path().parent_path() / "share" / "wrenlet";
    }
    const fs::path folder = fs::path(argv[1]) / "desk";
    std::error_code ignored;
    fs::create_directories(folder, ignored);
    for (const Shown& shown : kShown) {
        const OpenedClass opened = shown.opened();
        for (const Size& size : kSizes) {
            options.page = shown.page;
            options.child = shown.child;
            options.skill = shown.skill;
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (std::string(shown.name) + "-" + size.name + ".png");
            if (pictureOf(opened, options, demo::kNowMs, std::cerr) != 0) return 1;
            std::cout << options.picture.string() << "\n";
        }
    }
    return 0;
}
