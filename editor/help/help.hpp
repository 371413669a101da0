// What Help says of each spot of the desk: what it is for, and the words used there; and the
// cautions, which are the same everywhere.
#pragma once

#include <span>

#include "editor/help/spot.hpp"

namespace wrenlet::desk {

struct HelpWord {
    const char* word;
    const char* means;
};

struct Help {
    const char* name;      // "Booth"
    const char* what_for;  // one line
    std::span<const HelpWord> words;
};

/// REQUIRES: not Spot::everywhere.
const Help& helpFor(Spot spot);

struct Caution {
    const char* head;
    const char* says;
};
std::span<const Caution> cautions();

}  // namespace wrenlet::desk
