#include "game/sdl/letters.hpp"

#include <algorithm>
#include <cstring>

namespace wrenlet::game {

std::string unjoined(std::string_view text) {
    static constexpr std::string_view kNonJoiner = "\u200c";
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        out += text[i];
        const char next = i + 1 < text.size() ? text[i + 1] : '\0';
        if (text[i] == 'f' && (next == 'f' || next == 'i' || next == 'l' || next == 'j'))
            out += kNonJoiner;
    }
    return out;
}

TTF_Font* Letters::face(bool bold) {
    Face& face = faces_[bold ? 1 : 0];
    if (!face.tried) {
        face.tried = true;
        if (TTF_WasInit() == 0 && TTF_Init() != 0) return nullptr;
        const auto path = folder_ / (bold ? "Andika-Bold.ttf" : "Andika-Regular.ttf");
        face.font.reset(TTF_OpenFont(path.string().c_str(), 100));
        face.size = 100;
        if (face.font) TTF_SetFontHinting(face.font.get(), TTF_HINTING_NONE);
    }
    return face.font.get();
}

void Letters::setSize(bool bold, int size) {
    Face& face = faces_[bold ? 1 : 0];
    if (face.size == size) return;
    face.size = size;
    TTF_SetFontSize(face.font.get(), size);
}

std::optional<Image> Letters::draw(const Sprite& sprite) {
    TTF_Font* font = face(sprite.bold);
    if (font == nullptr || sprite.name.empty() || sprite.height < 1) return std::nullopt;

    const std::string text = unjoined(sprite.name);
    int size = std::max(sprite.height * 2 / 3, 1);  // Andika's line is about 1.6 times its size
    setSize(sprite.bold, size);
    size = std::max(size * sprite.height / std::max(TTF_FontHeight(font), 1), 1);
    setSize(sprite.bold, size);
    while (size > 1 && TTF_FontHeight(font) > sprite.height) setSize(sprite.bold, --size);
    int w = 0, h = 0;
    while (sprite.width > 0 && size > 1 && TTF_SizeUTF8(font, text.c_str(), &w, &h) == 0 &&
           w > sprite.width) {
        size = std::min(size - 1, std::max(size * sprite.width / w, 1));
        setSize(sprite.bold, size);
    }

    const SDL_Color colour{sprite.colour.r, sprite.colour.g, sprite.colour.b, 255};
    const SurfacePtr drawn(TTF_RenderUTF8_Blended(font, text.c_str(), colour));
    if (!drawn) return std::nullopt;
    const SurfacePtr plain(SDL_ConvertSurfaceFormat(drawn.get(), SDL_PIXELFORMAT_RGBA32, 0));
    if (!plain) return std::nullopt;
    const bool pads = sprite.from_left && sprite.width > plain->w;
    Image image = blankImage(pads ? sprite.width : plain->w, plain->h);
    for (int y = 0; y < image.h; ++y)
        std::memcpy(image.at(0, y),
                    static_cast<const std::uint8_t*>(plain->pixels) + y * plain->pitch,
                    4 * static_cast<std::size_t>(plain->w));
    if (sprite.colour.a != 255)
        for (std::size_t i = 3; i < image.rgba.size(); i += 4)
            image.rgba[i] = static_cast<std::uint8_t>(image.rgba[i] * sprite.colour.a / 255);
    return image;
}

}  // namespace wrenlet::game
