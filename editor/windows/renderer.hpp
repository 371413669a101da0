// Puts a frame of Dear ImGui onto an SDL renderer, and keeps the textures it needs.
#pragma once

#include <SDL.h>
#include <imgui.h>

#include <memory>
#include <vector>

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
    void triangles(const ImDrawList& list, const ImDrawCmd& command, int from, int count);
    void inBoxes(const ImDrawList& list, const ImDrawCmd& command);

    SDL_Renderer* target_;
    TexturePtr atlas_;
    std::vector<ImDrawIdx> indices_;  // of one call
};

}  // namespace wrenlet::desk
