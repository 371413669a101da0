// The colours of the pond-side and how well they can be told apart. Every drawing takes its colours
// from here, and a test holds the pairs that carry meaning to WCAG 2.2.
#pragma once

#include "game/stage/frame.hpp"

namespace wrenlet::game {

namespace palette {
inline constexpr Colour kPaper{0xFB, 0xF6, 0xEA};  // ground
inline constexpr Colour kCard{0xFF, 0xFF, 0xFF};   // cards and tiles
inline constexpr Colour kInk{0x22, 0x31, 0x3A};    // words, marks
inline constexpr Colour kMist{0xDC, 0xEF, 0xF2};   // sky
inline constexpr Colour kWater{0x8C, 0xC3, 0xCE};  // pond
inline constexpr Colour kDeep{0x2F, 0x6F, 0x7E};   // edges and buttons; never on water
inline constexpr Colour kReed{0x5E, 0x8C, 0x4A};   // plants; edges only
inline constexpr Colour kMoss{0xBB, 0xD8, 0xB0};   // far bank
inline constexpr Colour kBank{0xD9, 0xC7, 0xA0};   // near bank
inline constexpr Colour kBark{0x7A, 0x52, 0x30};   // nests, the wren
inline constexpr Colour kSun{0xE9, 0xA8, 0x20};    // the one thing to touch next, with ink on it
inline constexpr Colour kBerry{0xB4, 0x47, 0x2B};  // rare accent; never "wrong"
}  // namespace palette

/// 0 (black) to 1 (white), alpha left aside: "relative luminance" of WCAG 2.2
/// (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance).
double luminance(Colour colour);

/// 1 to 21, the same either way round: "contrast ratio" of WCAG 2.2
/// (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio).
double contrast(Colour a, Colour b);

}  // namespace wrenlet::game
