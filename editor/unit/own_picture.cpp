#include "editor/unit/own_picture.hpp"

#include <libexif/exif-data.h>

#define STBI_NO_STDIO
#define STBI_WRITE_NO_STDIO
#include <stb/stb_image.h>
#include <stb/stb_image_resize.h>
#include <stb/stb_image_write.h>

#include <algorithm>
#include <memory>

#include "content/pack/media_check.hpp"

namespace wrenlet::desk {
namespace {

struct FreePixels {
    void operator()(unsigned char* pixels) const { stbi_image_free(pixels); }
};
struct UnrefExif {
    void operator()(ExifData* data) const { exif_data_unref(data); }
};

const unsigned char* raw(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}

bool isSvg(std::string_view bytes) {
    const std::size_t first = bytes.find('<');
    return first != std::string_view::npos && first < 64 &&
           bytes.find("<svg") != std::string_view::npos;
}

/// How the camera was held, 1 to 8 (CIPA DC-008, Exif 2.32, tag 274 "Orientation").
int orientationOf(std::string_view bytes) {
    const std::unique_ptr<ExifData, UnrefExif> data(
        exif_data_new_from_data(raw(bytes), static_cast<unsigned>(bytes.size())));
    if (!data) return 1;
    const ExifEntry* entry = exif_content_get_entry(data->ifd[EXIF_IFD_0], EXIF_TAG_ORIENTATION);
    if (entry == nullptr || entry->format != EXIF_FORMAT_SHORT || entry->components != 1) return 1;
    const int way = exif_get_short(entry->data, exif_data_get_byte_order(data.get()));
    return way >= 1 && way <= 8 ? way : 1;
}

/// The pixel of the stored picture that stands at x, y of the upright one.
struct From {
    int x, y;
};
From storedAt(int way, int x, int y, int width, int height) {
    switch (way) {
        case 2:
            return {width - 1 - x, y};
        case 3:
            return {width - 1 - x, height - 1 - y};
        case 4:
            return {x, height - 1 - y};
        case 5:
            return {y, x};
        case 6:
            return {y, height - 1 - x};
        case 7:
            return {width - 1 - y, height - 1 - x};
        case 8:
            return {width - 1 - y, x};
        default:
            return {x, y};
    }
}

Rgba upright(const Rgba& stored, int way) {
    Rgba turned{stored.width, stored.height, {}};
    if (way >= 5) std::swap(turned.width, turned.height);
    turned.bytes.reserve(stored.bytes.size());
    for (int y = 0; y < turned.height; ++y)
        for (int x = 0; x < turned.width; ++x) {
            const From from = storedAt(way, x, y, stored.width, stored.height);
            const auto at = stored.bytes.begin() +
                            4 * (static_cast<std::ptrdiff_t>(from.y) * stored.width + from.x);
            turned.bytes.insert(turned.bytes.end(), at, at + 4);
        }
    return turned;
}

/// Not made larger.
Rgba within(int side, const unsigned char* pixels, int width, int height) {
    const double shrink = std::min(1.0, static_cast<double>(side) / std::max(width, height));
    Rgba small{std::max(1, static_cast<int>(width * shrink + 0.5)),
               std::max(1, static_cast<int>(height * shrink + 0.5)),
               {}};
    small.bytes.resize(static_cast<std::size_t>(small.width) *
                       static_cast<std::size_t>(small.height) * 4);
    stbir_resize_uint8_srgb(pixels, width, height, 0, small.bytes.data(), small.width, small.height,
                            0, 4, 3, 0);
    return small;
}

std::string pngOf(const Rgba& picture) {
    std::string png;
    stbi_write_png_to_func(
        [](void* to, void* data, int size) {
            static_cast<std::string*>(to)->append(static_cast<const char*>(data),
                                                  static_cast<std::size_t>(size));
        },
        &png, picture.width, picture.height, 4, picture.bytes.data(), 0);
    return png;
}

Result<Rgba> photograph(std::string_view bytes, const std::string& name) {
    int width = 0, height = 0, channels = 0;
    const int size = static_cast<int>(bytes.size());
    if (!stbi_info_from_memory(raw(bytes), size, &width, &height, &channels) || width < 1 ||
        height < 1)
        return Problem{name, "This is not a picture that can be read.",
                       "Save it as PNG, JPEG or SVG and drop it again."};
    if (static_cast<std::uint64_t>(width) * static_cast<std::uint64_t>(height) > kMostPhotoPixels)
        return Problem{name,
                       "This picture is " + std::to_string(width) + " by " +
                           std::to_string(height) + " pixels, more than can be opened here.",
                       "Save it smaller, 1000 pixels wide or less, and drop it again."};
    const std::unique_ptr<unsigned char, FreePixels> pixels(
        stbi_load_from_memory(raw(bytes), size, &width, &height, &channels, 4));
    if (!pixels) return Problem{name, "This picture is damaged.", "Save or copy it again."};
    return upright(within(kOwnPictureSide, pixels.get(), width, height), orientationOf(bytes));
}

}  // namespace

Result<std::string> tidiedPicture(std::string_view bytes, std::string_view name,
                                  const DrawSvg& draw_svg) {
    const std::string where(name);
    if (bytes.size() > kMostPhotoBytes)
        return Problem{where, "This file is larger than 64 MB, more than a picture needs.",
                       "Save it smaller and drop it again."};
    if (!isSvg(bytes)) {
        const Result<Rgba> photo = photograph(bytes, where);
        if (!photo.ok()) return photo.problems();
        return pngOf(photo.value());
    }
    if (const std::string why = pack::whyNoPicture(bytes); !why.empty())
        return Problem{where, "This drawing " + why + ".",
                       "Save it as a plain SVG, or as PNG, and drop it again."};
    const std::optional<Rgba> drawn = draw_svg ? draw_svg(bytes, kOwnPictureSide) : std::nullopt;
    if (!drawn || drawn->width < 1 || drawn->height < 1)
        return Problem{where, "This drawing cannot be drawn.", "Save it as PNG and drop it again."};
    return pngOf(*drawn);
}

}  // namespace wrenlet::desk
