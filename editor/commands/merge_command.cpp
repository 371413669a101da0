// merge: answers from sticks and other copies of the folder into this classroom.
#include <nlohmann/json.hpp>

#include "editor/commands/command.hpp"
#include "editor/document/bring_in.hpp"
#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse = "wrenlet-desk merge CLASSROOM FILE_OR_FOLDER... [--json]\n";

}  // namespace

int mergeCommand(std::span<const std::string> args, Console console) {
    bool json = false;
    std::vector<std::filesystem::path> named;
    for (const std::string& arg : args) {
        if (arg == "--json") {
            json = true;
        } else if (arg.substr(0, 1) == "-") {
            console.err << "Not understood: " << arg << "\nUse: " << kUse;
            return 2;
        } else {
            named.push_back(std::filesystem::u8path(arg));
        }
    }
    if (named.size() < 2) {
        console.err << "Name the classroom folder and what to bring in.\nUse: " << kUse;
        return 2;
    }
    const pack::Classroom classroom{named.front()};
    const auto list = pack::openClassList(classroom);
    for (const Problem& problem : list.problems()) console.err << sentence(problem) << "\n";
    if (!list.ok()) return 1;
    const BroughtIn brought = bringIn(std::span(named).subspan(1), classroom, list.value().deleted);
    for (const Problem& problem : brought.problems) console.err << sentence(problem) << "\n";
    if (json)
        console.out << nlohmann::ordered_json{{"answers", brought.answers},
                                              {"taken", brought.taken},
                                              {"nothing_new", brought.known}}
                           .dump(2)
                    << "\n";
    else
        console.out << wording::counted(std::int64_t(brought.answers), "new answer") << " from "
                    << wording::counted(std::int64_t(brought.taken.size()), "file") << "; "
                    << wording::counted(std::int64_t(brought.known.size()), "file")
                    << " had nothing new\n";
    return anyError(brought.problems) ? 1 : 0;
}

}  // namespace wrenlet::desk
