// The console that Windows opens for a program that is started by a double click.
#pragma once

namespace wrenlet::desk {

/// Closes it when nobody else is in it; one that the program was called from stays.
void leaveOwnConsole();

}  // namespace wrenlet::desk
