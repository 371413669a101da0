// The desk's marks as coverage: how much of each pixel a shape fills. They are drawn into the font
// atlas once, for a software renderer makes curved edges rough.
#pragma once

#include <cstdint>
#include <vector>

#include "editor/look/said.hpp"

namespace wrenlet::desk {

/// Sizes a mark is drawn at, in u across: in a map cell or on a bar, and beside a sentence.
enum class MarkSize : std::uint8_t { small, large };
inline constexpr int kMarkCount = 8;

/// The side of a mark's square in pixels; even, so that it stands centred on whole pixels.
int markSide(MarkSize size, float scale);

/// side × side values of 0 to 255, from 8×8 samples a pixel.
std::vector<std::uint8_t> markCoverage(Mark mark, int side);

/// A disc of `radius` pixels, or with `line` > 0 the ring of that thickness inside its rim, over a
/// square of 2 × radius: its quarters are the corners of boxes.
std::vector<std::uint8_t> discCoverage(int radius, int line);

/// The part of such a ring that `share` (0 to 1) of the way round takes, from the top, clockwise.
std::vector<std::uint8_t> arcCoverage(int radius, int line, double share);

}  // namespace wrenlet::desk
