// A child moves to another class and keeps her history: her answers and her marks are copied into
// the other classroom folder, her place on its list is made, and here she has left.
#pragma once

#include <cstddef>
#include <string>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

struct ChildMoved {
    std::size_t answers = 0, marks = 0;  // copied
    std::string badge;                   // there: hers, or a free one where hers is taken
};

/// Nothing is taken out of `from`: she is among those who have left, with all answers. Repeated, it
/// copies what is new. Errors: either class list cannot be read or written, nobody of that id here,
/// somebody else of that id there or one deleted for good, no badge free there.
Result<ChildMoved> moveChild(const pack::Classroom& from, const std::string& id,
                             const pack::Classroom& to);

}  // namespace wrenlet::desk
