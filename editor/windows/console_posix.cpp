#include "editor/windows/console.hpp"

namespace wrenlet::desk {

void leaveOwnConsole() {}

}  // namespace wrenlet::desk
