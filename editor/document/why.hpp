// "Why does it say that?": the very answers behind one line of a child's page, and what was read of
// them. Every first answer to that sound in that task is here, also those that were not counted.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"
#include "editor/look/said.hpp"

namespace wrenlet::desk {

struct WhyAnswer {
    std::int64_t day = 0;
    std::string asked, chosen;  // words, sounds or numbers, as they are written
    bool is_right = false;
    bool is_counted = true;  // false: given without listening
    bool is_heard = false;   // aloud; `chosen` is her mark
    std::string note;        // what else is to know of it; empty: nothing
};

struct Why {
    practice::Cell cell;
    std::string heading;  // "Last sound t: missed"
    std::string reasons;  // one sentence after another: what was counted, what is read of it
    std::vector<WhyAnswer> answers;  // newest first
};

/// REQUIRES: child < opened.children.size(). Without a line of that cell `answers` is empty.
Why whyOf(const OpenedClass& opened, std::size_t child, const practice::Cell& cell);

}  // namespace wrenlet::desk
