// The left end of the foot line wherever a document is worked on: what was done last with its Undo,
// and whether it is saved.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>

#include "editor/windows/view.hpp"

namespace wrenlet::desk {

struct LastEdit {
    std::string done;  // empty: nothing to take back
    bool can_redo = false;
    bool can_change = true;
    bool is_saved = true;
    std::optional<std::int64_t> saved_at;
    std::function<void(bool again)> take_back;
};

/// Draws up to `right`. Returns where it ends.
float drawLastEdit(View& view, const Area& foot, float right, const LastEdit& edit);

LastEdit lastEditOf(OpenUnit& unit);
LastEdit lastEditOf(OpenClassList& list);
LastEdit lastEditOf(TomorrowPlace& place);

}  // namespace wrenlet::desk
