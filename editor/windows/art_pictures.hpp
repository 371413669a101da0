// The drawings in art/ as textures of exactly the pixels asked for, drawn 1:1.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <utility>

#include "editor/windows/renderer.hpp"
#include "editor/windows/view.hpp"

namespace wrenlet::desk {

class ArtPictures final : public Pictures {
  public:
    ArtPictures(SDL_Renderer* target, std::filesystem::path art)
        : target_(target), art_(std::move(art)) {}
    ImTextureID picture(std::string_view name, int pixels) override;

  private:
    SDL_Renderer* target_;
    std::filesystem::path art_;
    std::map<std::pair<std::string, int>, TexturePtr> kept_;  // null: there is none
};

}  // namespace wrenlet::desk
