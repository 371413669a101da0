// Where the program's own drawings, letters and voice lie.
#pragma once

#include <filesystem>

namespace wrenlet::game {

/// The folder that WRENLET_ASSETS names; else share/wrenlet beside the program's bin.
std::filesystem::path assetsFolder();

}  // namespace wrenlet::game
