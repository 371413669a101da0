// What has been drawn, read back: for pictures of the tests and of the README, and for their hash.
#pragma once

#include <SDL.h>

#include <filesystem>

#include "content/common/result.hpp"
#include "game/sdl/handles.hpp"

namespace wrenlet::game {

/// The renderer's picture, as it is before it is shown; null when it can't be read.
SurfacePtr readBack(SDL_Renderer* renderer);

/// Errors: not writable.
Result<Done> savePng(SDL_Surface* picture, const std::filesystem::path& path);

}  // namespace wrenlet::game
