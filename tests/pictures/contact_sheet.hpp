// One page of small pictures in rows and columns, each row named, so that every state of every
// skill can be looked over at once.
#pragma once

#include <SDL.h>

#include <filesystem>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "game/sdl/handles.hpp"
#include "game/sdl/image.hpp"
#include "game/sdl/letters.hpp"

namespace wrenlet::pictures {

class ContactSheet {
  public:
    /// px of each column's pictures, one after the other; all rows are as tall.
    struct Column {
        std::string name;   // "asked"
        std::string group;  // "1280 x 800", written above the first of those that share it
        int width = 0;
    };
    ContactSheet(const std::filesystem::path& fonts, std::vector<Column> columns, int row_height);

    /// Begins a row; `name` and `id` stand at its left.
    void row(const std::string& name, const std::string& id);
    /// Puts the picture, made small, into the last row.
    void put(std::size_t column, SDL_Surface& picture);
    /// Errors: not writable, or too large for this machine.
    Result<Done> save(const std::filesystem::path& path);

  private:
    struct Small {
        std::size_t row, column;
        game::Image image;
    };
    void write(SDL_Surface& page, const std::string& text, int x, int y, int height, bool bold);
    int left(std::size_t column) const;
    int top(std::size_t row) const;

    game::Letters letters_;
    std::vector<Column> columns_;
    int row_height_;
    std::vector<std::pair<std::string, std::string>> rows_;
    std::vector<Small> pictures_;
};

}  // namespace wrenlet::pictures
