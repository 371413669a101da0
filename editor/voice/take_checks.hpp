// The checks on a take that need no dictionary: clipped, too quiet, noisy, cut off, silent, two
// tries. Each is a plain call on a take and what was heard in it.
#pragma once

#include <optional>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/trim.hpp"

namespace wrenlet::desk {

inline constexpr double kWantedAboveRoomDb = 30;  // a lone consonant is softer: 15 less

/// Two runs or more of three samples at the top, with a corner on both sides. Looks at the take as
/// it came: another rate or an encoder would round the tops.
std::optional<Finding> clippedTops(const Pcm& take);

/// All of them, the gravest first; a silent take has that finding alone.
std::vector<Finding> checkTake(const Pcm& take, const HeardSpeech& heard,
                               const pack::VoiceNeed& need);

}  // namespace wrenlet::desk
