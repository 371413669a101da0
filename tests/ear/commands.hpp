// Running another program and reading what it says: only where tests measure against one.
#pragma once

#include <string>

namespace wrenlet::ear {

/// What `command` (a line for the shell) wrote to its standard output; nothing when it failed.
std::string outputOf(const std::string& command);

/// True iff `program` is on PATH.
bool hasProgram(const std::string& program);

}  // namespace wrenlet::ear
