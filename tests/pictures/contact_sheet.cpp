#include "tests/pictures/contact_sheet.hpp"

#include "game/sdl/screenshot.hpp"
#include "game/stage/palette.hpp"

namespace wrenlet::pictures {

using namespace game;

namespace {

constexpr int kGap = 8, kGroupGap = 40, kNames = 330, kHead = 110, kBetweenRows = 14;

/// RGBA, row by row, of a surface of any format.
Image imageOf(SDL_Surface& surface) {
    Image image = blankImage(surface.w, surface.h);
    SDL_ConvertPixels(surface.w, surface.h, surface.format->format, surface.pixels, surface.pitch,
                      SDL_PIXELFORMAT_RGBA32, image.rgba.data(), 4 * surface.w);
    for (std::size_t i = 3; i < image.rgba.size(); i += 4) image.rgba[i] = 255;
    return image;
}

void blit(SDL_Surface& page, Image& image, int x, int y) {
    const SurfacePtr from(SDL_CreateRGBSurfaceWithFormatFrom(
        image.rgba.data(), image.w, image.h, 32, 4 * image.w, SDL_PIXELFORMAT_RGBA32));
    SDL_Rect to{x, y, image.w, image.h};
    SDL_BlitSurface(from.get(), nullptr, &page, &to);
}

}  // namespace

ContactSheet::ContactSheet(const std::filesystem::path& fonts, std::vector<Column> columns,
                           int row_height)
    : letters_(fonts), columns_(std::move(columns)), row_height_(row_height) {}

void ContactSheet::row(const std::string& name, const std::string& id) {
    rows_.emplace_back(name, id);
}

void ContactSheet::put(std::size_t column, SDL_Surface& picture) {
    const Fit fit = fitInto(picture.w, picture.h, columns_[column].width, row_height_);
    pictures_.push_back({rows_.size() - 1, column, resized(imageOf(picture), fit.w, fit.h)});
}

int ContactSheet::left(std::size_t column) const {
    int x = kGap + kNames;
    for (std::size_t i = 0; i < column; ++i) {
        x += columns_[i].width + kGap;
        if (i + 1 < columns_.size() && columns_[i + 1].group != columns_[i].group) x += kGroupGap;
    }
    return x;
}

int ContactSheet::top(std::size_t row) const {
    return kHead + static_cast<int>(row) * (row_height_ + kBetweenRows);
}

void ContactSheet::write(SDL_Surface& page, const std::string& text, int x, int y, int height,
                         bool bold) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::text;
    sprite.name = text;
    sprite.height = height;
    sprite.bold = bold;
    sprite.colour = palette::kInk;
    if (auto image = letters_.draw(sprite)) blit(page, *image, x, y);
}

Result<Done> ContactSheet::save(const std::filesystem::path& path) {
    const int w = left(columns_.size()), h = top(rows_.size());
    const SurfacePtr page(SDL_CreateRGBSurfaceWithFormat(0, w, h, 32, SDL_PIXELFORMAT_RGBA32));
    if (!page) return Problem{path.string(), "The page is too large to be made.", ""};
    SDL_FillRect(page.get(), nullptr, SDL_MapRGB(page->format, 0xFB, 0xF6, 0xEA));
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const bool begins = i == 0 || columns_[i - 1].group != columns_[i].group;
        if (begins) write(*page, columns_[i].group, left(i), 8, 44, true);
        write(*page, columns_[i].name, left(i), 62, 34, false);
    }
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        write(*page, rows_[i].first, kGap, top(i) + 10, 36, true);
        write(*page, rows_[i].second, kGap, top(i) + 52, 28, false);
    }
    for (Small& small : pictures_) blit(*page, small.image, left(small.column), top(small.row));
    return savePng(page.get(), path);
}

}  // namespace wrenlet::pictures
