#include <windows.h>

#include "editor/windows/console.hpp"

namespace wrenlet::desk {

void leaveOwnConsole() {
    DWORD processes[2];
    if (GetConsoleProcessList(processes, 2) == 1) FreeConsole();
}

}  // namespace wrenlet::desk
