// Words as a teacher pastes them from anywhere: one a line, or several with commas between. Each is
// taken or told why not, by its line, and nothing that was pasted costs the rest.
#pragma once

#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/unit.hpp"

namespace wrenlet::pack {

/// The words in order, each once (in lower or upper case), `place` being the line. Commas,
/// semicolons, tabs and line ends part them. `where` names the list in problems ("line 12" is
/// added). Warnings: UTF-16, digits, emoji, other scripts, characters that are not seen, more than
/// 40 letters, several words in one place, a word twice, no word at all; a text past 1 MB or
/// kMostUnitWords words, whose rest is not read; of more than 100, the rest are counted in one.
Result<std::vector<UnitWord>> readPastedWords(std::string_view text, std::string_view where);

}  // namespace wrenlet::pack
