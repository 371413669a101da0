// What the teacher did to a unit, as edits/history keeps it.
#pragma once

#include "editor/edits/history.hpp"
#include "editor/unit/edit.hpp"

namespace wrenlet::desk {

using Action = ActionOf<Edit>;
using History = HistoryOf<pack::Unit, Edit>;

}  // namespace wrenlet::desk
