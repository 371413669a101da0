// What a page has to tell above its own: problems, and what did not go in of what came in. Drawn
// alike wherever it is told.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// A card for each problem, `most` at most, of which the last says how many more there are. Returns
/// their height with the gaps below.
float drawProblems(Ui& ui, const Area& area, const std::vector<Problem>& problems,
                   std::size_t most = static_cast<std::size_t>(-1));

/// One card for all of it, with a button that ends it.
struct NotTaken {
    const char* label;  // of the button
    const char* one;    // "One thing did not go in"
    const char* many;   // " things did not go in", after their number
    bool says_where = false;
};
/// Returns its height with the gap below; nothing when there is nothing to tell.
float drawNotTaken(View& view, const Area& area, const std::vector<Problem>& left,
                   const NotTaken& told, std::function<void()> close);

}  // namespace wrenlet::desk
