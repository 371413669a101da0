#include "editor/windows/art_pictures.hpp"

#include <SDL_image.h>

#include <algorithm>
#include <system_error>

namespace wrenlet::desk {

namespace {

constexpr std::string_view kWord = "word:";

struct SurfaceClose {
    void operator()(SDL_Surface* surface) const { SDL_FreeSurface(surface); }
};
using SurfacePtr = std::unique_ptr<SDL_Surface, SurfaceClose>;

bool isThere(const std::filesystem::path& file) {
    std::error_code error;
    return std::filesystem::is_regular_file(file, error);
}

SurfacePtr vectorDrawing(const std::filesystem::path& file, int pixels) {
    SDL_RWops* bytes = SDL_RWFromFile(file.string().c_str(), "rb");
    if (bytes == nullptr) return nullptr;
    SurfacePtr drawn(IMG_LoadSizedSVG_RW(bytes, pixels, pixels));
    SDL_RWclose(bytes);
    return drawn;
}

/// Made to fit the square, centred, its shape kept.
SurfacePtr photograph(const std::filesystem::path& file, int pixels) {
    const SurfacePtr read(IMG_Load(file.string().c_str()));
    if (!read || read->w < 1 || read->h < 1) return nullptr;
    const SurfacePtr plain(SDL_ConvertSurfaceFormat(read.get(), SDL_PIXELFORMAT_RGBA32, 0));
    SurfacePtr square(
        SDL_CreateRGBSurfaceWithFormat(0, pixels, pixels, 32, SDL_PIXELFORMAT_RGBA32));
    if (!plain || !square) return nullptr;
    const int longest = std::max(plain->w, plain->h);
    const int width = std::max(1, plain->w * pixels / longest);
    const int height = std::max(1, plain->h * pixels / longest);
    SDL_Rect place{(pixels - width) / 2, (pixels - height) / 2, width, height};
    SDL_SetSurfaceBlendMode(plain.get(), SDL_BLENDMODE_NONE);
    SDL_BlitScaled(plain.get(), nullptr, square.get(), &place);
    return square;
}

}  // namespace

TexturePtr ArtPictures::draw(std::string_view name, int pixels) const {
    SurfacePtr surface;
    const bool is_word = name.substr(0, kWord.size()) == kWord;
    const std::string file(is_word ? name.substr(kWord.size()) : name);
    if (file.empty() || file.find('/') != std::string::npos) return nullptr;
    if (!is_word) {
        surface = vectorDrawing(art_ / (file + ".svg"), pixels);
    } else if (const auto own = own_ / (file + ".png"); !own_.empty() && isThere(own)) {
        surface = photograph(own, pixels);
    } else if (const auto own_svg = own_ / (file + ".svg"); !own_.empty() && isThere(own_svg)) {
        surface = vectorDrawing(own_svg, pixels);
    } else {
        surface = vectorDrawing(set_ / (file + ".svg"), pixels);
    }
    return TexturePtr(surface ? SDL_CreateTextureFromSurface(target_, surface.get()) : nullptr);
}

ImTextureID ArtPictures::picture(std::string_view name, int pixels) {
    const auto [at, is_new] = kept_.try_emplace({std::string(name), pixels});
    if (is_new) at->second = draw(name, pixels);
    return reinterpret_cast<ImTextureID>(at->second.get());
}

ImTextureID ArtPictures::drawn(const std::filesystem::path& png) {
    if (newest_.first != png) {
        const SurfacePtr read(IMG_Load(png.string().c_str()));
        const SurfacePtr plain(
            read ? SDL_ConvertSurfaceFormat(read.get(), SDL_PIXELFORMAT_ARGB8888, 0) : nullptr);
        newest_ = {
            png, TexturePtr(plain ? SDL_CreateTextureFromSurface(target_, plain.get()) : nullptr)};
        // a whole screen, through which nothing shines
        if (newest_.second) SDL_SetTextureBlendMode(newest_.second.get(), SDL_BLENDMODE_NONE);
    }
    return reinterpret_cast<ImTextureID>(newest_.second.get());
}

void ArtPictures::ownPictures(const std::filesystem::path& folder) {
    if (own_ == folder) return;
    own_ = folder;
    for (auto it = kept_.begin(); it != kept_.end();)
        it = it->first.first.compare(0, kWord.size(), kWord) == 0 ? kept_.erase(it) : ++it;
}

}  // namespace wrenlet::desk
