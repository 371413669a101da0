// wrenlet-desk: the teacher's program. Its commands need no window; without one it opens the desk.
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <string>
#include <vector>

#include "content/common/clock.hpp"
#include "editor/commands/command.hpp"
#include "editor/windows/bench.hpp"
#include "editor/windows/console.hpp"
#include "editor/windows/options.hpp"

namespace {

using namespace wrenlet::desk;

struct NamedCommand {
    std::string_view name;
    int (*run)(std::span<const std::string>, Console);
};

constexpr NamedCommand kCommands[] = {
    {"build", buildCommand},   {"check", checkCommand},   {"progress", progressCommand},
    {"word", wordCommand},     {"rhyme", rhymeCommand},   {"items", itemsCommand},
    {"lint", lintCommand},     {"groups", groupsCommand}, {"lesson", lessonCommand},
    {"report", reportCommand}, {"merge", mergeCommand},   {"export", exportCommand},
    {"delete", deleteCommand}, {"move", moveCommand},     {"serve", serveCommand},
};

constexpr std::string_view kUsage =
    "wrenlet-desk build UNIT.json --out PACK.zip [--version N]   make a pack of a unit\n"
    "wrenlet-desk check PACK.zip [--json]                        look whether a pack is good\n"
    "wrenlet-desk progress CLASSROOM [--json]                    what the children's answers say\n"
    "wrenlet-desk groups CLASSROOM [--json] [--html FILE]        who belongs together tomorrow\n"
    "wrenlet-desk lesson CLASSROOM [--json] [--html FILE]        ten minutes aloud for all\n"
    "wrenlet-desk report CLASSROOM --child NAME --html FILE\n"
    "             [--for family|specialist]                      one child on one page\n"
    "wrenlet-desk export CLASSROOM [--csv FILE] [--xapi FILE]\n"
    "             [--progress FILE]                              answers for other programs\n"
    "wrenlet-desk merge CLASSROOM FILE_OR_FOLDER... [--json]     answers from sticks and copies\n"
    "wrenlet-desk move CLASSROOM --child NAME_OR_ID --to CLASSROOM\n"
    "             [--json]                                       to another class, with all "
    "answers\n"
    "wrenlet-desk delete CLASSROOM --child NAME_OR_ID [--json]   a child, for good, everywhere "
    "here\n"
    "wrenlet-desk serve CLASSROOM [--port N] [--cert FILE --key FILE]\n"
    "             [--page FOLDER] [--json]                       hand the game to tablets on the "
    "network\n"
    "wrenlet-desk word WORD... [--json]                          how words are said\n"
    "wrenlet-desk rhyme A B [--accent NAME]... [--json]          whether two words rhyme\n"
    "wrenlet-desk items UNIT.json --skill SKILL [--json]         what its words can ask\n"
    "wrenlet-desk lint UNIT.json [--skill SKILL]... [--json]     what to know of its words\n"
    "\n"
    "items and lint also take a plain list of words, WORDS.txt. As JSON, word prints an object\n"
    "for one word and a list for several.\n";

/// share/wrenlet beside the folder of this program, or where WRENLET_ASSETS says.
std::filesystem::path assetsFolder() {
    if (const char* named = std::getenv("WRENLET_ASSETS")) return std::filesystem::u8path(named);
    return (programFolder() / ".." / "share" / "wrenlet").lexically_normal();
}

}  // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    const std::string first = words.empty() ? "" : words.front();
    const Console console{std::cout, std::cerr, assetsFolder(),
                          wrenlet::SystemClock().unixMillis() / 86'400'000};
    for (const NamedCommand& command : kCommands)
        if (first == command.name)
            return command.run(std::span<const std::string>(words).subspan(1), console);
    if (first == "--help" || first == "help") {
        std::cout << kWindowUsage << kUsage;
        return 0;
    }
    auto options = readOptions(words);
    if (!options.ok()) {
        for (const auto& problem : options.problems())
            std::cerr << wrenlet::sentence(problem) << "\n";
        return 2;
    }
    leaveOwnConsole();
    options.value().assets = console.assets;
    options.value().game = programFolder() / WRENLET_GAME;
    return options.value().picture.empty() ? runDesk(options.value(), std::cerr)
                                           : pictureDesk(options.value(), std::cerr);
}
