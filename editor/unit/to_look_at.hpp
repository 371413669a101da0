// Which warnings of a word ask the teacher to decide, and what she can do about each. What item
// makers heed by themselves (a vowel before /ɹ/, an accent) is only good to know: a list where
// every other word is marked is a list that nobody reads.
#pragma once

#include <string>
#include <vector>

#include "editor/unit/unit_look.hpp"

namespace wrenlet::desk {

/// The word's own warnings and those of words together (`together`, where it is the last named).
/// Fills to_look_at and good_to_know of `look`. `word` is as the unit has it.
void addWarnings(WordLook& look, const pack::UnitWord& word, const exercise::Vocabulary& vocabulary,
                 const std::vector<exercise::Lint>& together, const exercise::LintRules& rules,
                 const KnownWords& known);

}  // namespace wrenlet::desk
