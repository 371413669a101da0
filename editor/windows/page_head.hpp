// The head that the pages of the Class place share: the buttons between them.
#pragma once

#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// Draws List, Map, Child, Tomorrow and Papers at the right end. Returns their left edge.
float drawPageButtons(View& view);

/// A bar for what is out of view: steps of whole rows or columns. Returns the new first one.
struct ScrollBar {
    const char* label;
    std::size_t first, shown, count;
    bool upright;
};
std::size_t drawScrollBar(Ui& ui, const ScrollBar& bar, const Area& area);

}  // namespace wrenlet::desk
