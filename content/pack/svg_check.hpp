// Whether an SVG is a drawing and nothing more: the files are text that could also run something,
// fetch something, or keep a tablet drawing for hours.
#pragma once

#include <string>
#include <string_view>

namespace wrenlet::pack {

/// Why not, as the end of a sentence ("is cut short"), or empty. Of any bytes.
std::string whyNoSvg(std::string_view bytes);

}  // namespace wrenlet::pack
