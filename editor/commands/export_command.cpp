// export: every answer and what is said of each child, for other programs.
#include "editor/commands/class_call.hpp"
#include "editor/paper/exports.hpp"

namespace wrenlet::desk {

namespace {

constexpr const char* kUse =
    "wrenlet-desk export CLASSROOM [--csv ANSWERS.csv] [--xapi FILE.json] [--progress FILE.csv]\n";

}  // namespace

int exportCommand(std::span<const std::string> args, Console console) {
    const auto call = classCallOf(args, kUse, console.err);
    if (!call) return 2;
    if (call->csv.empty() && call->xapi.empty() && call->progress.empty()) {
        console.err << "Name a file to write.\nUse: " << kUse;
        return 2;
    }
    const auto opened = classAtHand(*call, console.err);
    if (!opened) return 1;
    bool good = true;
    if (!call->csv.empty())
        good = writePaper(call->csv, paper::responsesCsv(opened->responses), console) && good;
    if (!call->xapi.empty())
        good = writePaper(call->xapi, paper::xapiStatements(opened->responses), console) && good;
    if (!call->progress.empty())
        good = writePaper(call->progress, paper::progressCsv(opened->children), console) && good;
    return good ? 0 : 1;
}

}  // namespace wrenlet::desk
