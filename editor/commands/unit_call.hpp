// What `items` and `lint` have in common: the words of their call, and opening the unit they name.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "content/exercise/skill.hpp"
#include "content/speech/block_list.hpp"
#include "editor/commands/command.hpp"
#include "editor/document/opened_unit.hpp"

namespace wrenlet::desk {

struct UnitCall {
    std::string unit;
    std::vector<exercise::Skill> skills;
    bool json = false;
};

/// Nothing, with the reason on `err`, when the words of the call are off; an unknown skill lists
/// the known ones. `use` is the line that says how to call.
std::optional<UnitCall> unitCallOf(std::span<const std::string> args, const std::string& use,
                                   std::ostream& err);

/// What the call needs to be answered.
struct UnitAtHand {
    KnownWords known;
    speech::BlockList blocked;
    OpenedUnit opened;
};

/// Every problem is said on the console's err. Nothing when the unit cannot be opened at all.
std::optional<UnitAtHand> unitAtHand(const UnitCall& call, Console console);

}  // namespace wrenlet::desk
