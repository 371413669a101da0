// Whether a key of the table was pressed where she is, and what a button says of it.
#pragma once

#include <string>

#include "editor/help/keys.hpp"
#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// True in the frame in which the key for it went down, and again while it repeats. A key alone is
/// the field's while one has the cursor; Enter and Space are the held stop's while its ring shows;
/// letters alone are none when they are switched off.
bool hit(const View& view, Does does);

/// The key as a button shows it; empty when it has none, or is switched off.
std::string capOf(const View& view, Does does);

}  // namespace wrenlet::desk
