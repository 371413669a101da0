// Where the program's own drawings, letters and voice lie.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

namespace wrenlet::game {

/// The folder that WRENLET_ASSETS names; else share/wrenlet beside the program's bin.
std::filesystem::path assetsFolder();

/// A number that another build of the program, another SDL_image or SDL_ttf, or other letters in
/// `assets` would not have: what was drawn under another stamp may be drawn otherwise today.
/// Nothing when the program's own file can't be found.
std::optional<std::uint64_t> programStamp(const std::filesystem::path& assets);

}  // namespace wrenlet::game
