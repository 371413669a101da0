// A picture in memory, on its way from a sprite to a texture: straight (not premultiplied) alpha,
// so that a pixel at a shape's edge keeps the shape's colour and no dark fringe shows.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace wrenlet::game {

struct Image {
    int w = 0, h = 0;       // px
    int left = 0, top = 0;  // of its first pixel, from the top left corner of the sprite's size
    int size_w = 0, size_h = 0;      // the sprite's size: its middle is what stands at a place
    std::vector<std::uint8_t> rgba;  // 4 bytes a pixel, row by row

    std::uint8_t* at(int x, int y) { return &rgba[4 * (static_cast<std::size_t>(y) * w + x)]; }
    const std::uint8_t* at(int x, int y) const {
        return &rgba[4 * (static_cast<std::size_t>(y) * w + x)];
    }
};

Image blankImage(int w, int h);

/// The same picture without the empty rows and columns around it; one pixel if it is all empty.
Image trimmed(const Image& image);

/// What faced right faces left. REQUIRES: not trimmed.
Image flipped(const Image& image);

/// True iff no pixel lets anything through.
bool isOpaque(const Image& image);

/// Brought to w x h: each new pixel is the mean of the area it covers, weighed by alpha. Grown
/// pictures are blended between neighbours. REQUIRES: a picture and sizes of one pixel or more.
Image resized(const Image& image, int w, int h);

/// The largest w x h with the shape of `from_w` x `from_h` that fits, one pixel at least.
struct Fit {
    int w = 1, h = 1;
};
Fit fitInto(int from_w, int from_h, int w, int h);

}  // namespace wrenlet::game
