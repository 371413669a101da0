#include "editor/windows/svg.hpp"

#include <SDL_image.h>

#include <memory>

namespace wrenlet::desk {

namespace {

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
using SurfacePtr = std::unique_ptr<SDL_Surface, SurfaceClose>;

}  // namespace

std::optional<Rgba> drawnSvg(std::string_view svg, int side) {
    SDL_RWops* bytes = SDL_RWFromConstMem(svg.data(), static_cast<int>(svg.size()));
    if (bytes == nullptr) return {};
    const SurfacePtr drawn(IMG_LoadSizedSVG_RW(bytes, side, side));
    SDL_RWclose(bytes);
    if (!drawn) return {};
    const SurfacePtr plain(SDL_ConvertSurfaceFormat(drawn.get(), SDL_PIXELFORMAT_RGBA32, 0));
    if (!plain) return {};
    Rgba picture{plain->w, plain->h, {}};
    const auto* row = static_cast<const unsigned char*>(plain->pixels);
    for (int y = 0; y < plain->h; ++y, row += plain->pitch)
        picture.bytes.insert(picture.bytes.end(), row, row + 4 * plain->w);
    return picture;
}

}  // namespace wrenlet::desk
