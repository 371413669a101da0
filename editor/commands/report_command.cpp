// report: a page of paper about one child.
#include <algorithm>

#include "editor/commands/class_call.hpp"
#include "editor/paper/report_pages.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse =
    "wrenlet-desk report CLASSROOM --child NAME [--for family|specialist] --html FILE\n";

}  // namespace

int reportCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kUse, console.err);
    if (!call) return 2;
    if (call->child.empty() || call->html.empty()) {
        console.err << "Name the child and the file to write.\nUse: " << kUse;
        return 2;
    }
    const auto opened = classAtHand(*call, console.err);
    if (!opened) return 1;
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < opened->children.size(); ++i) {
        const pack::Child& child = opened->children[i].child;
        if (child.id == call->child || child.name == call->child) found.push_back(i);
    }
    if (found.size() != 1) {
        console.err << (found.empty() ? "No child of this class has that name.\n"
                                      : "Several children have that name; use one of these ids:");
        for (const std::size_t child : found)
            console.err << " " << opened->children[child].child.id;
        if (!found.empty()) console.err << "\n";
        return 1;
    }
    const std::int64_t day = lastDayOf(*opened);
    const std::string html = call->for_specialist
                                 ? paper::specialistPage(*opened, found.front(), day)
                                 : paper::familyPage(*opened, found.front(), day);
    return writePaper(call->html, html, console) ? 0 : 1;
}

}  // namespace wrenlet::desk
