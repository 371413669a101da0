// SDL's events as the desk's input: mouse, fingers, keys, typed text, a folder dropped on the
// window.
#pragma once

#include <SDL.h>

#include <filesystem>
#include <optional>

namespace wrenlet::desk {

class Platform {
  public:
    struct Heard {
        bool closed = false;
        bool resized = false;
        std::optional<std::filesystem::path> dropped;
    };

    /// Hands one event to Dear ImGui's current context. `width` and `height` are the output's
    /// pixels, `pixels_per_point` what a mouse position is multiplied by.
    void take(const SDL_Event& event, int width, int height, float pixels_per_point, Heard& heard);

    /// Shows a file with the system's own program for it; false when there is none.
    static bool openOutside(const std::filesystem::path& file);

    bool isFinger() const { return is_finger_; }
    /// After each frame: a lifted finger leaves the glass.
    void endFrame();

  private:
    bool is_finger_ = false;
    bool lifting_ = false;
    std::optional<SDL_FingerID> first_finger_;  // others are ignored
};

}  // namespace wrenlet::desk
