#include "game/sdl/display.hpp"

#include <SDL_ttf.h>

#include <system_error>
#include <utility>

namespace wrenlet::game {

Result<std::unique_ptr<Display>> Display::open(const WindowOptions& options,
                                               const std::filesystem::path& assets) {
    std::error_code error;
    for (const char* part : {"art", "fonts"})
        if (!std::filesystem::is_directory(assets / part, error))
            return Problem{(assets / part).string(),
                           "The game's own drawings and letters are not here.",
                           "Install Wrenlet anew, or name their folder in WRENLET_ASSETS."};
    Result<Window> window = Window::open(options);
    if (!window.ok()) return window.problems();
    if (TTF_WasInit() == 0 && TTF_Init() != 0)
        return Problem{"", "Letters cannot be drawn here.", "Check SDL_ttf."};
    return std::unique_ptr<Display>(new Display(std::move(window.value()), assets));
}

Display::Display(Window window, const std::filesystem::path& assets)
    : window_(std::move(window)),
      baker_(window_.renderer(), assets, [](std::string_view) { return std::string_view(); }),
      canvas_(window_.renderer(), baker_) {}

void Display::showFirst(const Frame& frame, Shelf* shelf) {
    baker_.useShelf(shelf);
    canvas_.show(frame, screen());
    baker_.useShelf(nullptr);
}

}  // namespace wrenlet::game
