// The whole desk in one frame of Dear ImGui: rail, foot line and the page between them. Knows
// neither SDL nor the disk; a scripted test drives it as a window does.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <vector>

#include "editor/document/desk.hpp"
#include "editor/windows/type_atlas.hpp"
#include "editor/windows/ui.hpp"
#include "editor/windows/view.hpp"

namespace wrenlet::desk {

/// What the window asks of the world outside.
struct Surroundings {
    std::function<OpenedClass(const std::filesystem::path&)> open;  // read a classroom folder
    std::function<std::int64_t()> now_ms;                           // Unix milliseconds
    Pictures* pictures = nullptr;                                   // none: no badges are drawn
};

class DeskWindow {
  public:
    DeskWindow(OpenedClass opened, Surroundings surroundings);

    /// Draws one frame of so many pixels into the current context, between NewFrame and Render.
    void frame(float pixel_width, float pixel_height, float scale, const TypeAtlas& atlas);

    /// Another classroom folder: one that was dropped on the window.
    void openFolder(const std::filesystem::path& folder);

    Desk& desk() { return desk_; }
    Stage& stage() { return stage_; }
    const Stage& stage() const { return stage_; }
    float textSize() const { return text_size_; }

  private:
    void keys(View& view);

    Desk desk_;
    Surroundings surroundings_;
    Stage stage_;
    MapScroll scroll_;
    SoundsScroll sounds_;
    float text_size_ = 1;
};

}  // namespace wrenlet::desk
