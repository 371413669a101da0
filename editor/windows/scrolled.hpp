// A page that may be taller than its room: drawn into a part of the window that scrolls by wheel,
// finger, the arrows, and to whatever the keyboard holds.
#pragma once

#include <functional>

#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// `draw` is given where the page's top left stands now and how wide it may be, and gives back its
/// height, all in u.
void drawScrolled(View& view, const char* name, const Area& area,
                  const std::function<float(const Area&)>& draw);

}  // namespace wrenlet::desk
