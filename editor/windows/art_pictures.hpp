// The drawings in art/ and the pictures of words as textures of exactly the pixels asked for, drawn
// 1:1.
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
    /// `set` is the picture set of words.
    ArtPictures(SDL_Renderer* target, std::filesystem::path art, std::filesystem::path set)
        : target_(target), art_(std::move(art)), set_(std::move(set)) {}
    ImTextureID picture(std::string_view name, int pixels) override;
    ImTextureID drawn(const std::filesystem::path& png) override;
    void ownPictures(const std::filesystem::path& folder) override;

  private:
    TexturePtr draw(std::string_view name, int pixels) const;

    SDL_Renderer* target_;
    std::filesystem::path art_, set_, own_;
    std::map<std::pair<std::string, int>, TexturePtr> kept_;  // null: there is none
    std::pair<std::filesystem::path, TexturePtr> newest_;     // that another program drew
};

}  // namespace wrenlet::desk
