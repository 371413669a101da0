// What of another teacher's pack is not in a unit, or is other there: one line for each thing that
// can be taken by itself.
#pragma once

#include <string>
#include <vector>

#include "editor/bring/brought.hpp"

namespace wrenlet::desk {

struct BroughtLine {
    enum class Kind : std::uint8_t { word, sentence, sounds, picture, recording };
    Kind kind = Kind::word;
    std::string id;        // of the word, sentence or clip
    std::string label;     // "duck"
    std::string says;      // what of it: "new, with picture", "said /…/ there, /…/ here"
    bool is_new = true;    // nothing of it is here; otherwise it takes the place of what is
    bool is_taken = true;  // chosen; at first what is new
    bool operator==(const BroughtLine&) const = default;
};

/// Words, then sentences, then recordings, in the order in which they stand there. What is alike is
/// left out. `here` is how the unit's words are said. Recordings are compared by what they say and
/// not by their bytes: the same text recorded there and here is told as another recording.
std::vector<BroughtLine> broughtLines(const Brought& brought, const pack::Unit& unit,
                                      const exercise::Vocabulary& here);

}  // namespace wrenlet::desk
