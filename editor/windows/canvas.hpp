// Where the desk is drawn: a renderer with Dear ImGui's context, type and art on it, for a window
// on the screen as for a picture in memory.
#pragma once

#include <SDL.h>

#include <filesystem>
#include <memory>
#include <string>

#include "content/common/result.hpp"
#include "editor/windows/art_pictures.hpp"
#include "editor/windows/desk_window.hpp"
#include "editor/windows/renderer.hpp"
#include "editor/windows/type_atlas.hpp"

namespace wrenlet::desk {

/// Dear ImGui's context for as long as this lives. What is copied and pasted goes through SDL where
/// it has a screen, else it is kept here. Pasted line ends become semicolons and tabs upright
/// strokes: fields are of one line, and words and columns stay apart.
class ImGuiHome {
  public:
    ImGuiHome();
    ~ImGuiHome();
    ImGuiHome(const ImGuiHome&) = delete;
    ImGuiHome& operator=(const ImGuiHome&) = delete;

  private:
    const char* pasted();
    void copied(const char* text);

    ImGuiContext* context_;
    std::string copied_, pasted_;
};

class Canvas {
  public:
    /// `assets` is share/wrenlet. The renderer must outlive the canvas.
    Canvas(SDL_Renderer* target, const std::filesystem::path& assets);

    Pictures& pictures() { return pictures_; }
    /// Draws one frame onto the target and does not present it. Errors: the typeface is missing.
    Result<Done> draw(DeskWindow& window, int width, int height, float scale, float seconds);

  private:
    SDL_Renderer* target_;
    std::filesystem::path fonts_;
    ImGuiHome home_;
    Renderer renderer_;
    ArtPictures pictures_;
    TypeAtlas atlas_;
    float built_for_ = 0;  // scale of the atlas
};

}  // namespace wrenlet::desk
