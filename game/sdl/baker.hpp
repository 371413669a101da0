// Bakes each sprite once at its size in pixels and keeps the texture, so that drawing a frame is
// copying one to one. Equal sprites share a texture; those that were not drawn for longest go first
// when there are too many.
#pragma once

#include <SDL.h>

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "game/sdl/handles.hpp"
#include "game/sdl/image.hpp"
#include "game/sdl/letters.hpp"
#include "game/sdl/shelf.hpp"
#include "game/stage/frame.hpp"

namespace wrenlet::game {

/// A sprite, ready to be copied.
struct Baked {
    TexturePtr texture;     // null when there is nothing to see
    int w = 0, h = 0;       // px of the texture
    int left = 0, top = 0;  // of the texture, from the top left corner of the sprite's size
    int size_w = 0, size_h = 0;
};

/// The bytes of the pack's picture of that name, or nothing.
using PictureSource = std::function<std::string_view(std::string_view name)>;

struct SpriteHash {
    std::size_t operator()(const Sprite& sprite) const;
};

class Baker {
  public:
    static constexpr std::size_t kMostBytes = 64u << 20;

    /// `assets` is share/wrenlet. The renderer must outlive the baker.
    Baker(SDL_Renderer* renderer, std::filesystem::path assets, PictureSource pictures,
          std::size_t most_bytes = kMostBytes);

    /// Where the pack's pictures come from, from now on.
    void setPictures(PictureSource pictures) { pictures_ = std::move(pictures); }

    /// Marks the start of a frame: what it needs stays even past the limit.
    void beginFrame() { ++frame_; }
    /// REQUIRES: not a plain fill. The reference holds until the next frame begins.
    const Baked& get(const Sprite& sprite);
    /// Lets every texture go (the renderer lost them).
    void forget();
    /// From now on sprites are taken from `shelf` where it has them, and put on it where not; null
    /// to leave it alone again.
    void useShelf(Shelf* shelf) { shelf_ = shelf; }

    /// The picture of a sprite, not yet a texture; nothing when it can't be made.
    std::optional<Image> draw(const Sprite& sprite);

    std::size_t bytes() const { return bytes_; }
    std::size_t count() const { return kept_.size(); }
    /// Names of art and pictures that were wanted and could not be drawn.
    const std::vector<std::string>& missing() const { return missing_; }

  private:
    struct Kept {
        Baked baked;
        std::uint64_t used = 0;  // the last frame that drew it
        std::size_t bytes = 0;
    };

    const std::string& art(const std::string& name);
    std::uint64_t shelfKey(const Sprite& sprite);
    std::optional<Baked> bake(const Sprite& sprite);
    Baked upload(const Pixels& pixels);
    void makeRoom();

    SDL_Renderer* renderer_;
    std::filesystem::path assets_;
    PictureSource pictures_;
    std::size_t most_bytes_;
    Letters letters_;
    std::map<std::string, std::string> art_;  // SVG by name
    std::unordered_map<Sprite, Kept, SpriteHash> kept_;
    std::size_t bytes_ = 0;
    std::uint64_t frame_ = 1;
    std::vector<std::string> missing_;
    Shelf* shelf_ = nullptr;
};

}  // namespace wrenlet::game
