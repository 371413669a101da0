// Rooms for test recordings: quiet before and after what is said, and noise of a known distance
// below it.
#pragma once

#include <cstdint>

#include "editor/voice/pcm.hpp"

namespace wrenlet::ear {

/// What noise sounds like: as strong at every frequency, or falling by 3 dB an octave as in a room.
enum class Colour : std::uint8_t { white, pink };

/// A take at kClipRate: `before_s` and `after_s` of the room around what is said, the room `snr_db`
/// under its sounding part (both without what lies below 80 Hz). The said part peaks at -12 dBFS.
desk::Pcm inRoom(const desk::Pcm& said, double snr_db, Colour colour, std::uint64_t seed,
                 double before_s = 0.6, double after_s = 0.7);

/// Seconds at which a clean clip first and last is within `under_db` of its loudest 5 ms: the truth
/// that trimming is held to.
struct Audible {
    double begin, end;
};
Audible audible(const desk::Pcm& clean, double under_db = 40);

}  // namespace wrenlet::ear
