// A file that is locked while it is open, as each system has it; HeldFile is what others use.
#pragma once

#include <filesystem>
#include <optional>
#include <string_view>

namespace wrenlet::desk {

/// Makes the file if it is not there. None: it is locked elsewhere, or cannot be made. Programs
/// started from here do not keep it.
std::optional<int> openLocked(const std::filesystem::path& path);
void closeLocked(int handle);
/// All that the file says from now on.
void writeLocked(int handle, std::string_view text);

}  // namespace wrenlet::desk
