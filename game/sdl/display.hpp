// What is seen: the window, the sprites baked for it, and the canvas that puts them on it. It is
// opened before there is anything to play, so that a child sees the badges while the pack is read.
#pragma once

#include <filesystem>
#include <memory>

#include "content/common/result.hpp"
#include "game/sdl/baker.hpp"
#include "game/sdl/canvas.hpp"
#include "game/sdl/shelf.hpp"
#include "game/sdl/window.hpp"

namespace wrenlet::game {

class Display {
  public:
    /// `assets` is share/wrenlet. Errors: no assets, no window.
    static Result<std::unique_ptr<Display>> open(const WindowOptions& options,
                                                 const std::filesystem::path& assets);

    /// Shows the first frame, from the shelf as far as it has it; null: all is drawn.
    void showFirst(const Frame& frame, Shelf* shelf);

    Window& window() { return window_; }
    Baker& baker() { return baker_; }
    Canvas& canvas() { return canvas_; }
    SDL_Renderer* renderer() { return window_.renderer(); }
    ScreenSize screen() const { return window_.screen(); }

  private:
    Display(Window window, const std::filesystem::path& assets);

    Window window_;
    Baker baker_;
    Canvas canvas_;
};

}  // namespace wrenlet::game
