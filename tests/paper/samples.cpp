// The papers of the demo class, for looking at and for the check in a browser:
// wrenlet-paper-samples DIR.
#include <filesystem>
#include <iostream>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"
#include "editor/paper/report_pages.hpp"
#include "editor/paper/tomorrow_pages.hpp"
#include "tests/desk/demo_class.hpp"

int main(int argc, char** argv) {
    using namespace wrenlet;
    using namespace wrenlet::desk;
    if (argc != 2) {
        std::cerr << "Name the folder: wrenlet-paper-samples DIR\n";
        return 2;
    }
    const std::filesystem::path folder(argv[1]);
    std::filesystem::create_directories(folder);
    const auto pack = pack::readPackFile(WRENLET_TEST_STARTER "/packs/by-the-pond-1.zip");
    if (!pack.ok()) return 1;
    const OpenedClass opened = demo::demoClass();
    const paper::Names names = paper::namesOf(opened.children);
    const auto write = [&](const std::string& name, const std::string& html) {
        const auto written = writeWhole(folder / (name + ".html"), html);
        for (const Problem& problem : written.problems()) std::cerr << sentence(problem) << "\n";
        if (written.ok()) std::cout << (folder / (name + ".html")).string() << "\n";
        return written.ok();
    };
    const practice::Grouping grouping = practice::groupsOf(opened.children);
    std::vector<LessonTask> plans;
    for (const practice::SmallGroup& group : grouping.groups)
        plans.push_back(tableTaskFor(group, pack.value(), opened.children, 4));
    bool good = write("lesson", paper::lessonPage(lessonFor(pack.value(), opened.children), names));
    good = write("groups", paper::groupsPage(grouping, plans, names)) && good;
    for (std::size_t i = 0; i < opened.children.size(); ++i) {
        const std::string id = opened.children[i].child.id;
        good = write("family-" + id, paper::familyPage(opened, i, demo::kLastDay)) && good;
        good = write("specialist-" + id, paper::specialistPage(opened, i, demo::kLastDay)) && good;
    }
    return good ? 0 : 1;
}
