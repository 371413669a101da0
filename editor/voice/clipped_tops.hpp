// Tops that a converter cut: what a recording looks like that was made too loud, also when it was
// turned down afterwards. Found by how flat a wave's tops are, and how steep beside them.
#pragma once

#include <optional>

#include "editor/voice/finding.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

/// Each side of the wave has its own top. A take is clipped where either is so:
/// - Two runs or more of three samples, within .05 % of the top, with a corner on both sides.
/// - Runs of two or more samples of exactly the top's value where a round top as steep as the wave
///   beside it would have fallen by many of the 16 bits' steps: by chance less than once in 4000
///   takes, were each sample's last bits free.
/// Looks at the take as it came: another rate or an encoder would round the tops. It can't find
/// one cut that is a single sample long; and a test tone that repeats to the sample may look cut.
std::optional<Finding> clippedTops(const Pcm& take);

}  // namespace wrenlet::desk
