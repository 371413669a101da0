#include "editor/windows/art_pictures.hpp"

#include <SDL_image.h>

namespace wrenlet::desk {

namespace {

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};

}  // namespace

ImTextureID ArtPictures::picture(std::string_view name, int pixels) {
    const auto [at, is_new] = kept_.try_emplace({std::string(name), pixels});
    if (is_new && name.find('/') == std::string_view::npos && !name.empty()) {
        const std::filesystem::path file = art_ / (std::string(name) + ".svg");
        if (SDL_RWops* bytes = SDL_RWFromFile(file.string().c_str(), "rb")) {
            const std::unique_ptr<SDL_Surface, SurfaceClose> drawn(
                IMG_LoadSizedSVG_RW(bytes, pixels, pixels));
            SDL_RWclose(bytes);
            if (drawn) at->second.reset(SDL_CreateTextureFromSurface(target_, drawn.get()));
        }
    }
    return reinterpret_cast<ImTextureID>(at->second.get());
}

}  // namespace wrenlet::desk
