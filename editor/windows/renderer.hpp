// Puts a frame of Dear ImGui onto an SDL renderer, and keeps the textures it needs.
#pragma once

#include <SDL.h>
#include <imgui.h>

#include <memory>

namespace wrenlet::desk {

struct TextureClose {
    void operator()(SDL_Texture* texture) const { SDL_DestroyTexture(texture); }
};
using TexturePtr = std::unique_ptr<SDL_Texture, TextureClose>;

class Renderer {
  public:
    explicit Renderer(SDL_Renderer* target) : target_(target) {}

    /// Uploads the current context's atlas; again after each rebuild. False when there is no room.
    bool takeAtlas();
    void draw(const ImDrawData& frame);

  private:
    SDL_Renderer* target_;
    TexturePtr atlas_;
};

}  // namespace wrenlet::desk
