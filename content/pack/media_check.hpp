// Whether a clip is a clip and a picture is a picture, before either is handed to a decoder that
// trusts it.
#pragma once

#include <string>
#include <string_view>

namespace wrenlet::pack {

inline constexpr double kLeastClipSeconds = 0.02;
inline constexpr double kMostClipSeconds = 30;
inline constexpr std::size_t kMostPictureBytes = 1 << 20;
inline constexpr unsigned kMostPictureSide = 2048;  // of a PNG, in pixels

struct ClipCheck {
    std::string why_not;  // the end of a sentence ("is not a recording"), or empty
    double seconds = 0;
};

/// Looks whether it is OGG Vorbis or FLAC, 48 kHz, mono, of a sensible length.
ClipCheck checkClip(std::string_view bytes);

/// Decodes it to the end as well: what a damaged clip breaks on.
ClipCheck checkClipWhole(std::string_view bytes);

/// Why it is no picture, as the end of a sentence, or empty if it is an SVG with nothing in it that
/// runs or leads outside, or a PNG of bounded size.
std::string whyNoPicture(std::string_view bytes);

}  // namespace wrenlet::pack
