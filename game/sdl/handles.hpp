// SDL's things, owned: each is let go when its owner goes.
#pragma once

#include <SDL.h>
#include <SDL_ttf.h>

#include <memory>

namespace wrenlet::game {

struct LetGo {
    void operator()(SDL_Window* it) const { SDL_DestroyWindow(it); }
    void operator()(SDL_Renderer* it) const { SDL_DestroyRenderer(it); }
    void operator()(SDL_Texture* it) const { SDL_DestroyTexture(it); }
    void operator()(SDL_Surface* it) const { SDL_FreeSurface(it); }
    void operator()(SDL_mutex* it) const { SDL_DestroyMutex(it); }
    void operator()(TTF_Font* it) const { TTF_CloseFont(it); }
};

using WindowPtr = std::unique_ptr<SDL_Window, LetGo>;
using RendererPtr = std::unique_ptr<SDL_Renderer, LetGo>;
using TexturePtr = std::unique_ptr<SDL_Texture, LetGo>;
using SurfacePtr = std::unique_ptr<SDL_Surface, LetGo>;
using MutexPtr = std::unique_ptr<SDL_mutex, LetGo>;
using FontPtr = std::unique_ptr<TTF_Font, LetGo>;

}  // namespace wrenlet::game
