// Draws the page's icon from its SVG, as large as home screens want it: draw_icons SVG FOLDER
#include <SDL_image.h>

#include <filesystem>
#include <iostream>
#include <string>

#include "game/sdl/handles.hpp"
#include "game/sdl/screenshot.hpp"

using namespace wrenlet;

int main(int argc, char** argv) {
    if (argc != 3) return 2;
    const std::filesystem::path folder = argv[2];
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    for (const int side : {180, 192, 512}) {
        SDL_RWops* svg = SDL_RWFromFile(argv[1], "rb");
        if (svg == nullptr) return 1;
        const game::SurfacePtr icon(IMG_LoadSizedSVG_RW(svg, side, side));
        SDL_RWclose(svg);
        const auto file = folder / ("icon-" + std::to_string(side) + ".png");
        if (!icon || !game::savePng(icon.get(), file).ok()) {
            std::cerr << file << " could not be drawn\n";
            return 1;
        }
    }
    return 0;
}
