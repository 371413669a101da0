#include "game/sdl/assets.hpp"

#include <SDL.h>

#include <cstdlib>

namespace wrenlet::game {

std::filesystem::path assetsFolder() {
    if (const char* named = std::getenv("WRENLET_ASSETS"); named != nullptr && *named != '\0')
        return named;
    char* base = SDL_GetBasePath();
    const std::filesystem::path bin = base != nullptr ? base : ".";
    SDL_free(base);
    return (bin / ".." / "share" / "wrenlet").lexically_normal();
}

}  // namespace wrenlet::game
