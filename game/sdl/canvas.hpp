// Puts a frame on the screen: sprites copied one to one at whole pixels, and only when the frame or
// the size is another than before.
#pragma once

#include <SDL.h>

#include "game/sdl/baker.hpp"
#include "game/stage/frame.hpp"

namespace wrenlet::game {

class Canvas {
  public:
    /// Both must outlive it.
    Canvas(SDL_Renderer* renderer, Baker& baker) : renderer_(renderer), baker_(baker) {}

    /// Draws and shows `frame`; false when it was on the screen already and nothing was done.
    bool show(const Frame& frame, ScreenSize screen);
    /// Draws without showing, whatever was drawn before.
    void draw(const Frame& frame);
    /// The next frame is drawn even if it is the same (the window was uncovered).
    void invalidate() { shown_ = false; }
    /// Textures are gone: all are baked anew.
    void forget();

    /// How often a frame was drawn.
    std::uint64_t drawn() const { return drawn_; }

  private:
    SDL_Renderer* renderer_;
    Baker& baker_;
    Frame last_;
    ScreenSize last_screen_;
    bool shown_ = false;
    std::uint64_t drawn_ = 0;
};

}  // namespace wrenlet::game
