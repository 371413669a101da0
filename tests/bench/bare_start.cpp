// The least an SDL program with letters and sound can do before its first frame: what the game's
// start is held against.
#include <SDL.h>
#include <SDL_mixer.h>
#include <SDL_ttf.h>

#include <cstdio>

int main(int, char**) {
    SDL_Init(SDL_INIT_VIDEO | SDL_INIT_AUDIO);
    TTF_Init();
    SDL_Window* window = SDL_CreateWindow("bare", 0, 0, 1280, 800, 0);
    SDL_Renderer* renderer = SDL_CreateRenderer(window, -1, SDL_RENDERER_SOFTWARE);
    Mix_OpenAudio(48'000, AUDIO_S16SYS, 2, 512);
    TTF_Font* font = TTF_OpenFont(WRENLET_TEST_SHARE "/fonts/Andika-Regular.ttf", 40);
    SDL_Surface* words = TTF_RenderUTF8_Blended(font, "first frame", {34, 49, 58, 255});
    SDL_Texture* texture = SDL_CreateTextureFromSurface(renderer, words);
    SDL_SetRenderDrawColor(renderer, 251, 246, 234, 255);
    SDL_RenderClear(renderer);
    SDL_RenderCopy(renderer, texture, nullptr, nullptr);
    SDL_RenderPresent(renderer);
    std::puts("first frame");
    std::fflush(stdout);
    return 0;
}
