// Drawing an SVG's bytes as tablets draw them.
#pragma once

#include "editor/unit/own_picture.hpp"

namespace wrenlet::desk {

/// For OwnPictures. May be called from several threads.
std::optional<Rgba> drawnSvg(std::string_view svg, int side);

}  // namespace wrenlet::desk
