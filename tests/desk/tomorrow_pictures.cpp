// Tomorrow and Papers in their states.
#include <iostream>
#include <iterator>
#include <string>

#include "tests/desk/picture_room.hpp"

namespace wrenlet::desk {

namespace {

/// Thirty children, some with names as long as a list allows, and answers of all but the last.
OpenedClass thirtyChildren() {
    pack::ClassList list = demo::classList();
    std::vector<practice::Response> answers = demo::responses(7);
    const std::vector<practice::Response> first = answers;
    constexpr const char* kMore[] = {
        "Bartholomew-Augustin", "Maya",    "Anneliese Theodora", "Bo",
        "Wilhelmina",           "Ottilie", "Jean-Baptiste",      "Konstantin"};
    for (std::size_t i = 0; i < std::size(kMore); ++i) {
        const std::string id = "c-more-" + std::to_string(i), like = list.children[i].id;
        list.children.push_back({id, kMore[i], "badge-" + std::to_string(23 + i), {}});
        for (practice::Response response : first)
            if (response.child == like) {
                response.child = id;
                response.tablet = "t-9";
                response.sequence += std::int64_t(i) * 100'000;
                answers.push_back(std::move(response));
            }
    }
    return classOf(std::move(list), std::move(answers), {}, demo::kNowMs - 2 * 60'000);
}

}  // namespace

bool tomorrowPictures(Room& room, const std::filesystem::path& folder, DeskOptions options,
                      std::string_view one) {
    const Workbench workbench = room.workbench();
    const std::filesystem::path starter =
        options.assets.parent_path().parent_path() / "starter-classroom" / "packs";
    for (const std::string name :
         {"tomorrow", "tomorrow-lesson", "tomorrow-choosing", "tomorrow-moving", "tomorrow-thirty",
          "tomorrow-not-planned", "tomorrow-nobody-played", "papers", "papers-written",
          "papers-thirty"}) {
        for (const Size& size : kSizes) {
            if (!one.empty() && (one != name || size.width != kSizes.front().width)) continue;
            std::error_code error;
            room.empty();
            std::filesystem::create_directories(room.path / "packs", error);
            const bool many = name == "tomorrow-thirty" || name == "papers-thirty";
            OpenedClass opened = many                               ? thirtyChildren()
                                 : name == "tomorrow-nobody-played" ? demo::nobodyPlayed()
                                                                    : demo::demoClass();
            opened.classroom.folder = room.path;
            std::filesystem::copy_file(starter / "by-the-pond-1.zip",
                                       room.path / "packs" / opened.list.pack, error);
            if (error) {
                std::cerr << "The starter classroom is not where it should be.\n";
                return false;
            }
            options.width = size.width;
            options.height = size.height;
            options.picture = folder / (name + "-" + size.name + ".png");
            const auto prepare = [&](DeskWindow& window) {
                window.go(Place::klass);
                const OpenedClass& shown = window.desk().opened();
                if (name.compare(0, 6, "papers") == 0) {
                    window.desk().showPapers();
                    window.desk().takeChild(many ? 22 : 0);
                    if (name == "papers-written") {
                        window.papers()->write(Paper::answers, shown, 0);
                        window.papers()->write(Paper::family, shown, 0);
                    }
                    return true;
                }
                window.desk().showTomorrow();
                TomorrowPlace& place = *window.tomorrow();
                if (name == "tomorrow-not-planned" || name == "tomorrow-nobody-played") return true;
                place.planAnew(shown);
                window.step();
                if (name == "tomorrow-lesson") {
                    place.take("");
                    place.takeRow(2);
                    place.print(shown);
                }
                if (name == "tomorrow-choosing") {
                    place.takeRow(place.rows().size() - 1);
                    place.openRow(shown);
                }
                place.finish(demo::kNowMs);
                if (name == "tomorrow-moving")
                    place.takeChild(place.plan().tables.front().children.front());
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

}  // namespace wrenlet::desk
