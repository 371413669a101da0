#include "game/sdl/screenshot.hpp"

#include <SDL_image.h>

namespace wrenlet::game {

SurfacePtr readBack(SDL_Renderer* renderer) {
    int w = 0, h = 0;
    if (SDL_GetRendererOutputSize(renderer, &w, &h) != 0) return nullptr;
    SurfacePtr picture(SDL_CreateRGBSurfaceWithFormat(0, w, h, 24, SDL_PIXELFORMAT_RGB24));
    if (!picture || SDL_RenderReadPixels(renderer, nullptr, SDL_PIXELFORMAT_RGB24, picture->pixels,
                                         picture->pitch) != 0)
        return nullptr;
    return picture;
}

Result<Done> savePng(SDL_Surface* picture, const std::filesystem::path& path) {
    if (picture == nullptr || IMG_SavePNG(picture, path.string().c_str()) != 0)
        return Problem{path.string(),
                       std::string("The picture can't be written (") + SDL_GetError() + ").",
                       "Name a folder that you can write to."};
    return Done{};
}

}  // namespace wrenlet::game
