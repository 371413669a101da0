// The desk without a window: one function a command, with its words, its streams and its files
// passed in, so that anyone can check from outside what the program says.
#pragma once

#include <cstdint>
#include <filesystem>
#include <ostream>
#include <span>
#include <string>

namespace wrenlet::desk {

struct Console {
    std::ostream& out;             // what was asked for, and nothing else (JSON with --json)
    std::ostream& err;             // problems and progress
    std::filesystem::path assets;  // share/wrenlet: lexicon.bin, art/, fonts/, pictures/
    std::int64_t today = 0;        // days since 1970-01-01
};

/// 0 when done, 1 when the input has errors (each said on err), 2 when the words of the call are
/// off.
int buildCommand(std::span<const std::string> args, Console console);  // UNIT.json --out PACK.zip
int checkCommand(std::span<const std::string> args, Console console);  // PACK.zip [--json]
int progressCommand(std::span<const std::string> args, Console console);  // CLASSROOM [--json]
int groupsCommand(std::span<const std::string> args, Console console);    // CLASSROOM [--json]
int lessonCommand(std::span<const std::string> args, Console console);    // CLASSROOM [--json]
int exportCommand(std::span<const std::string> args, Console console);    // CLASSROOM --csv FILE
int mergeCommand(std::span<const std::string> args, Console console);     // CLASSROOM FROM...
int reportCommand(std::span<const std::string> args, Console console);    // CLASSROOM --child NAME
int deleteCommand(std::span<const std::string> args, Console console);    // CLASSROOM --child NAME
int moveCommand(std::span<const std::string> args, Console console);      // CLASSROOM --child --to
int serveCommand(std::span<const std::string> args, Console console);     // CLASSROOM [--port N]
int wordCommand(std::span<const std::string> args, Console console);      // WORD... [--json]
int rhymeCommand(std::span<const std::string> args, Console console);     // A B [--accent NAME]...
int itemsCommand(std::span<const std::string> args, Console console);     // UNIT.json --skill SKILL
int lintCommand(std::span<const std::string> args, Console console);      // UNIT.json [--json]

}  // namespace wrenlet::desk
