// What commands on a whole class are called with, and the class opened for them.
#pragma once

#include <optional>
#include <span>
#include <string>

#include "content/pack/pack.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/opened_class.hpp"

namespace wrenlet::desk {

struct ClassCall {
    std::filesystem::path folder;
    bool json = false;
    std::string html, csv, xapi, progress;  // files to write; empty: none
    std::string child;                      // a name or an id; empty: all
    std::filesystem::path to;               // another classroom folder; empty: none
    bool for_specialist = false;            // else for the family
};

/// Nothing, with `use` said on `err`, when the words are off.
std::optional<ClassCall> classCallOf(std::span<const std::string> args, std::string_view use,
                                     std::ostream& err);

/// The id of the one child who is meant by a name or an id, in the class, having left it or deleted;
/// nothing, said on `err`, when it is nobody or several.
std::optional<std::string> childNamed(const pack::ClassList& list, const std::string& named,
                                      std::ostream& err);

/// Says on `err` what could not be read; nothing when there is no class list.
std::optional<OpenedClass> classAtHand(const ClassCall& call, std::ostream& err);

/// The pack that the class is handed; nothing, said on `err`, when there is none that is good.
std::optional<pack::Pack> packAtHand(const OpenedClass& opened, std::ostream& err);

/// Writes `html` to the file and says so on `out`; false, said on `err`, when that cannot be done.
bool writePaper(const std::string& file, const std::string& html, Console console);

}  // namespace wrenlet::desk
