// The desk's colours by what they are for, with the contrast rule they were chosen by. Values only:
// the windows turn them into whatever the screen wants.
#pragma once

#include <cstdint>

namespace wrenlet::desk {

struct Colour {
    std::uint8_t red = 0, green = 0, blue = 0, alpha = 255;
    bool operator==(const Colour&) const = default;
};

namespace colour {
inline constexpr Colour kPaper{0xFB, 0xF6, 0xEA};
inline constexpr Colour kCard{0xFF, 0xFD, 0xF8};
inline constexpr Colour kRail{0xF0, 0xE6, 0xCF};
inline constexpr Colour kWash{0xF5, 0xED, 0xDA};
inline constexpr Colour kInk{0x22, 0x31, 0x3A};
inline constexpr Colour kSoft{0x4C, 0x5B, 0x63};  // notes
inline constexpr Colour kDeep{0x2F, 0x6F, 0x7E};  // the filled button, steady
inline constexpr Colour kDeeper{0x23, 0x54, 0x5F};
inline constexpr Colour kPaleDeep{0xD6, 0xE7, 0xE2};
inline constexpr Colour kStraw{0xE9, 0xC5, 0x7F};
inline constexpr Colour kStrawInk{0x5B, 0x3F, 0x00};
inline constexpr Colour kBrick{0x98, 0x36, 0x1E};
inline constexpr Colour kMidBrick{0xE7, 0xB9, 0xA6};
inline constexpr Colour kPaleBrick{0xF8, 0xE1, 0xD8};
inline constexpr Colour kButter{0xFA, 0xE8, 0xBE};
inline constexpr Colour kEdge{0x7D, 0x70, 0x58};  // around every control
inline constexpr Colour kDot{0x76, 0x70, 0x5F};
inline constexpr Colour kLine{0xDD, 0xD0, 0xB4};  // decoration, carries no meaning
inline constexpr Colour kFocus{0x1C, 0x4F, 0xA0};
inline constexpr Colour kWhite{0xFF, 0xFF, 0xFF};
}  // namespace colour

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.2, "contrast ratio").
double contrast(Colour a, Colour b);

}  // namespace wrenlet::desk
