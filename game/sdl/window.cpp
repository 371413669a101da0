#include "game/sdl/window.hpp"

namespace wrenlet::game {

namespace {

Problem noScreen(std::string what) {
    return {"the screen", std::move(what) + " (" + SDL_GetError() + ").",
            "Start it where there is a display, or with --off-screen."};
}

}  // namespace

float millimetresPerPixel(float dpi) {
    // Tablets and screens lie between 80 and 600; 96 and 72 exactly are what systems say that
    // do not know.
    if (!(dpi >= 80 && dpi <= 600) || dpi == 96) return 0;
    return 25.4f / dpi;
}

Result<Window> Window::open(const WindowOptions& options) {
    SDL_SetHint(SDL_HINT_TOUCH_MOUSE_EVENTS, "0");
    SDL_SetHint(SDL_HINT_MOUSE_TOUCH_EVENTS, "0");
    SDL_SetHint(SDL_HINT_VIDEO_ALLOW_SCREENSAVER, "0");
    if (options.off_screen) {
        SDL_SetHintWithPriority(SDL_HINT_VIDEODRIVER, "dummy", SDL_HINT_OVERRIDE);
        SDL_SetHintWithPriority(SDL_HINT_RENDER_DRIVER, "software", SDL_HINT_OVERRIDE);
        SDL_SetHint(SDL_HINT_FRAMEBUFFER_ACCELERATION, "0");
    }
    if (SDL_InitSubSystem(SDL_INIT_VIDEO) != 0) return noScreen("No screen could be opened");

    Uint32 flags = SDL_WINDOW_ALLOW_HIGHDPI | SDL_WINDOW_RESIZABLE;
    if (options.full_screen) flags |= SDL_WINDOW_FULLSCREEN_DESKTOP;
    Window out;
    out.window_.reset(SDL_CreateWindow("Wrenlet", SDL_WINDOWPOS_CENTERED, SDL_WINDOWPOS_CENTERED,
                                       options.w, options.h, flags));
    if (!out.window_) return noScreen("No window could be opened");
    out.renderer_.reset(
        SDL_CreateRenderer(out.window_.get(), -1, options.off_screen ? SDL_RENDERER_SOFTWARE : 0));
    if (!out.renderer_) return noScreen("Nothing can be drawn here");

    SDL_RendererInfo info{};
    SDL_GetRendererInfo(out.renderer_.get(), &info);
    if (options.off_screen && std::string(info.name) != "software")
        return noScreen("Off screen needs the software renderer, not " + std::string(info.name));
    return out;
}

ScreenSize Window::screen() const {
    ScreenSize size;
    SDL_GetRendererOutputSize(renderer_.get(), &size.w, &size.h);
    float dpi = 0;
    const int display = SDL_GetWindowDisplayIndex(window_.get());
    if (display >= 0 && SDL_GetDisplayDPI(display, &dpi, nullptr, nullptr) == 0) {
        int points = 0;
        SDL_GetWindowSize(window_.get(), &points, nullptr);
        const float scale =
            points > 0 ? static_cast<float>(size.w) / static_cast<float>(points) : 1;
        // A browser, too, gives 96 for each of its points, whatever the display is.
        if (dpi != 96 * scale) size.mm_per_px = millimetresPerPixel(dpi) / scale;
    }
    return size;
}

void Window::toggleFullScreen() {
    const bool full = (SDL_GetWindowFlags(window_.get()) & SDL_WINDOW_FULLSCREEN_DESKTOP) != 0;
    SDL_SetWindowFullscreen(window_.get(), full ? 0 : SDL_WINDOW_FULLSCREEN_DESKTOP);
}

}  // namespace wrenlet::game
