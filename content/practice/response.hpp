// One answer of one child, as it was given. A row is written before the child hears anything more,
// and is never changed: everything else that is said of a child is computed from these.
#pragma once

#include <cstdint>

#include "content/common/shared_text.hpp"
#include "content/exercise/item.hpp"

namespace wrenlet::practice {

struct Response {
    Text tablet;                // "t-4f2a"; with sequence, names this row for ever
    std::int64_t sequence = 0;  // 1, 2, 3 … on that tablet
    Text child;                 // a child's id
    std::int64_t session = 0;   // the session's sequence on that tablet
    Text pack;                  // pack::Pack::name()
    Text item;                  // exercise::Item::id
    Text skill;                 // skill id
    Text asked;                 // the item's subject
    exercise::TurnsOn turns_on;
    Text chosen;               // the choice's id
    Text right;                // the right choice's id
    TextList choices;          // ids, in the order in which they stood
    Text means;                // what a wrong choice would mean; empty when right
    int try_number = 1;        // 1 is evidence; 2 and on are practice
    int hearings = 1;          // how often the prompt was heard before it was answered
    std::int64_t took_ms = 0;  // from the end of the prompt to the answer, at least 0
    std::int64_t at_ms = 0;    // the tablet's clock, Unix milliseconds; can be wrong
    std::int64_t day = 0;      // days since 1970-01-01 in the tablet's local time

    bool isRight() const { return chosen == right; }
    /// Only a first answer tells what the child knew.
    bool isEvidence() const { return try_number == 1; }
    bool operator==(const Response&) const = default;
};

}  // namespace wrenlet::practice
