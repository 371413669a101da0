// Words in Andika, drawn without hinting so that a letter has the same shape at every place, with
// letters that a beginner must see apart kept apart.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "game/sdl/handles.hpp"
#include "game/sdl/image.hpp"
#include "game/stage/frame.hpp"

namespace wrenlet::game {

/// `text` with a zero-width non-joiner (U+200C) wherever Andika would join f to its neighbour.
std::string unjoined(std::string_view text);

class Letters {
  public:
    /// `fonts` holds Andika-Regular.ttf and Andika-Bold.ttf, opened when first needed.
    explicit Letters(std::filesystem::path fonts) : folder_(std::move(fonts)) {}

    /// REQUIRES: kind text. Lines are no higher than the sprite's height and, if it has a width,
    /// no wider than that. Nothing when the font is not there or the text is empty.
    std::optional<Image> draw(const Sprite& sprite);

  private:
    struct Face {
        FontPtr font;
        int size = 0;
        bool tried = false;
    };
    TTF_Font* face(bool bold);
    void setSize(bool bold, int size);

    std::filesystem::path folder_;
    Face faces_[2];
};

}  // namespace wrenlet::game
