// The window, in real pixels: high resolution where the display has it, never scaled by SDL.
#pragma once

#include <string>

#include "content/common/result.hpp"
#include "game/sdl/handles.hpp"
#include "game/stage/frame.hpp"

namespace wrenlet::game {

struct WindowOptions {
    int w = 1280, h = 800;  // of a window; a full screen has its own size
    bool full_screen = false;
    bool off_screen = false;  // no display at all; drawn by the software renderer
};

class Window {
  public:
    /// Starts SDL's video. Errors: no display, no renderer; off screen: not the software renderer.
    static Result<Window> open(const WindowOptions& options);

    SDL_Window* window() const { return window_.get(); }
    SDL_Renderer* renderer() const { return renderer_.get(); }
    /// Of what is drawn, in px, with the size of a pixel where the display tells it credibly.
    ScreenSize screen() const;
    void toggleFullScreen();

  private:
    WindowPtr window_;
    RendererPtr renderer_;
};

/// Millimetres of a pixel at `dpi`, or 0 when that is no figure a real display has.
float millimetresPerPixel(float dpi);

}  // namespace wrenlet::game
