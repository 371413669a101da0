// Cards and rings, drawn from their signed distance: each pixel is covered by how far it lies from
// the shape's edge, which gives the crispest edge at any size. Done once a size, on the CPU.
#pragma once

#include "game/sdl/image.hpp"
#include "game/stage/frame.hpp"

namespace wrenlet::game {

/// A rounded rectangle of width x height with its edge inside that size and its shadow, three
/// translucent layers, below and around it. REQUIRES: kind card, width and height of 1 or more.
Image drawCard(const Sprite& sprite);

/// A ring inside width x height: the arc clockwise from the top over part/24 of it in colour, the
/// rest of it in edge_colour. REQUIRES: kind ring, width and height of 1 or more.
Image drawRing(const Sprite& sprite);

}  // namespace wrenlet::game
