// The least page with SDL: a window, one frame, a word to the console. What the page's start is
// held against in the same run (tests/web/figures.mjs).
#include <SDL.h>
#include <emscripten.h>

int main(int, char**) {
    SDL_Init(SDL_INIT_VIDEO);
    SDL_Window* window = SDL_CreateWindow("bare", 0, 0, 1024, 768, SDL_WINDOW_ALLOW_HIGHDPI);
    SDL_Renderer* renderer = SDL_CreateRenderer(window, -1, 0);
    SDL_SetRenderDrawColor(renderer, 251, 246, 234, 255);
    SDL_RenderClear(renderer);
    SDL_RenderPresent(renderer);
    EM_ASM({ console.log(JSON.stringify({ready : Math.round(performance.now())})); });
    return 0;
}
