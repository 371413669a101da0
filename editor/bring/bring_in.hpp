// Taking what was chosen of another teacher's pack into a unit: the recordings and pictures are put
// beside the unit first, and then all of it is one thing that undo takes back.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "editor/bring/brought_lines.hpp"
#include "editor/unit/history.hpp"

namespace wrenlet::desk {

/// Files of recordings and pictures are named after what is in them, so that none is kept twice and
/// nothing is ever written over. `whose` is the voice of recordings that do not say it themselves.
/// `picture_set` are the desk's pictures: one that is there as well is not kept anew. Errors: a
/// recording that cannot be read, a folder that is gone, a full disk; then nothing of the unit is
/// changed, and what was put beside it is taken away again.
Result<Action> bringIn(const Brought& brought, const std::vector<BroughtLine>& lines,
                       const std::string& whose, const pack::Unit& unit,
                       const std::filesystem::path& unit_folder,
                       const std::filesystem::path& picture_set);

}  // namespace wrenlet::desk
