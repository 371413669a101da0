// The checks on a take that need no dictionary: clipped, too quiet, noisy, cut off, silent, two
// tries. Each is a plain call on a take and what was heard in it.
#pragma once

#include <vector>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/trim.hpp"

namespace wrenlet::desk {

inline constexpr double kWantedAboveRoomDb = 30;  // a lone consonant is softer: 15 less

/// All of them, the gravest first; a silent take has that finding alone. Cut off is what sounds
/// within 20 ms of the take's end; a word that ends in p, t, k or ch also one of which none was
/// heard let go within 40 ms, for it is silent before that. A longer silence, which people may well
/// keep, can't be told from a good take with little room after it.
std::vector<Finding> checkTake(const Pcm& take, const HeardSpeech& heard,
                               const pack::VoiceNeed& need);

}  // namespace wrenlet::desk
