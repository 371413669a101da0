// A picture of her own for a word: read, turned upright as the camera was held, made as small as a
// tablet needs, and written anew as PNG, so that nothing goes on but what is seen: not where and
// when it was taken, nor by whom.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::desk {

inline constexpr int kOwnPictureSide = 400;                    // px, the longest side
inline constexpr std::uint64_t kMostPhotoBytes = 64ull << 20;  // of the file that she drops
inline constexpr std::uint64_t kMostPhotoPixels = 50'000'000;  // past any camera in a pocket

/// Red, green, blue and alpha of each pixel, row by row, not premultiplied.
struct Rgba {
    int width = 0, height = 0;
    std::vector<unsigned char> bytes;
};
/// Draws an SVG as tablets do, its longest side `side` pixels; nothing when it can't.
using DrawSvg = std::function<std::optional<Rgba>(std::string_view svg, int side)>;

/// The PNG that packs carry of a PNG, JPEG or SVG file's bytes. `name` stands in problems. Errors,
/// before anything is unpacked: no picture, more than kMostPhotoBytes or kMostPhotoPixels, an SVG
/// that runs something, points outside itself or would not end; damaged.
Result<std::string> tidiedPicture(std::string_view bytes, std::string_view name,
                                  const DrawSvg& draw_svg);

}  // namespace wrenlet::desk
