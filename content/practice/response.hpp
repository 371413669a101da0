// One answer of one child, as it was given. A row is written before the child hears anything more,
// and is never changed: everything else that is said of a child is computed from these.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "content/exercise/item.hpp"

namespace wrenlet::practice {

struct Response {
    std::string tablet;         // "t-4f2a"; with sequence, names this row for ever
    std::int64_t sequence = 0;  // 1, 2, 3 … on that tablet
    std::string child;          // a child's id
    std::int64_t session = 0;   // the session's sequence on that tablet
    std::string pack;           // pack::Pack::name()
    std::string item;           // exercise::Item::id
    std::string skill;          // skill id
    std::string asked;          // the item's subject
    exercise::TurnsOn turns_on;
    std::string chosen;                // the choice's id
    std::string right;                 // the right choice's id
    std::vector<std::string> choices;  // ids, in the order in which they stood
    std::string means;                 // what a wrong choice would mean; empty when right
    int try_number = 1;                // 1 is evidence; 2 and on are practice
    int hearings = 1;                  // how often the prompt was heard before it was answered
    std::int64_t took_ms = 0;          // from the end of the prompt to the answer, at least 0
    std::int64_t at_ms = 0;            // the tablet's clock, Unix milliseconds; can be wrong
    std::int64_t day = 0;              // days since 1970-01-01 in the tablet's local time

    bool isRight() const { return chosen == right; }
    /// Only a first answer tells what the child knew.
    bool isEvidence() const { return try_number == 1; }
    bool operator==(const Response&) const = default;
};

}  // namespace wrenlet::practice
