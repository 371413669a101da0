#include "game/sdl/canvas.hpp"

#include <cmath>

#include "game/stage/palette.hpp"

namespace wrenlet::game {

namespace {

int whole(float px) {
    return static_cast<int>(std::floor(px + 0.5f));
}

// The left (or top) side of something `size` px long whose middle stands at `centre`.
int side(float centre, int size) {
    return whole(centre - static_cast<float>(size) / 2);
}

}  // namespace

bool Canvas::show(const Frame& frame, ScreenSize screen) {
    if (shown_ && screen == last_screen_ && frame == last_) return false;
    draw(frame);
    SDL_RenderPresent(renderer_);
    last_ = frame;
    last_screen_ = screen;
    shown_ = true;
    return true;
}

void Canvas::draw(const Frame& frame) {
    ++drawn_;
    baker_.beginFrame();
    const Colour paper = palette::kPaper;
    SDL_SetRenderDrawColor(renderer_, paper.r, paper.g, paper.b, 255);
    SDL_RenderClear(renderer_);
    for (const Blit& blit : frame) {
        const Sprite& sprite = blit.sprite;
        if (blit.alpha == 0) continue;
        if (sprite.kind == Sprite::Kind::fill) {
            const int alpha = sprite.colour.a * blit.alpha / 255;
            const SDL_Rect box{side(blit.centre.x, sprite.width),
                               side(blit.centre.y, sprite.height), sprite.width, sprite.height};
            SDL_SetRenderDrawBlendMode(renderer_,
                                       alpha == 255 ? SDL_BLENDMODE_NONE : SDL_BLENDMODE_BLEND);
            SDL_SetRenderDrawColor(renderer_, sprite.colour.r, sprite.colour.g, sprite.colour.b,
                                   static_cast<Uint8>(alpha));
            SDL_RenderFillRect(renderer_, &box);
            continue;
        }
        const Baked& baked = baker_.get(sprite);
        if (!baked.texture) continue;
        const SDL_Rect to{side(blit.centre.x, baked.size_w) + baked.left,
                          side(blit.centre.y, baked.size_h) + baked.top, baked.w, baked.h};
        SDL_BlendMode resting = SDL_BLENDMODE_BLEND;
        if (blit.alpha != 255) {  // an opaque texture that is let fade has to be blended
            SDL_GetTextureBlendMode(baked.texture.get(), &resting);
            SDL_SetTextureBlendMode(baked.texture.get(), SDL_BLENDMODE_BLEND);
        }
        SDL_SetTextureAlphaMod(baked.texture.get(), blit.alpha);
        SDL_RenderCopy(renderer_, baked.texture.get(), nullptr, &to);
        if (blit.alpha != 255) {
            SDL_SetTextureAlphaMod(baked.texture.get(), 255);
            SDL_SetTextureBlendMode(baked.texture.get(), resting);
        }
    }
}

void Canvas::forget() {
    baker_.forget();
    shown_ = false;
}

}  // namespace wrenlet::game
