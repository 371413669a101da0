// Drawings from files: SVG drawn at its exact size in pixels, and PNG photographs averaged down.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "game/sdl/image.hpp"

namespace wrenlet::game {

/// The SVG drawn so that its view box fills w x h whole, stretched where the shapes differ.
/// Nothing when it can't be drawn.
std::optional<Image> drawSvgFilling(std::string_view svg, int w, int h);

/// An SVG or PNG drawn as large as fits into w x h, its shape kept, in the middle. Nothing when the
/// bytes are neither.
std::optional<Image> drawFitted(std::string_view bytes, int w, int h);

/// `svg` with its root told to fill w x h. Exposed for its tests.
std::string withRootSize(std::string_view svg, int w, int h);

}  // namespace wrenlet::game
