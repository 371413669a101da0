// Where speech lies in a take: found by energy above the room, in the whole voice and in the hiss
// alone, so that a soft last "s" or "f" is not left off.
#pragma once

#include <vector>

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kTrimMargin = 0.09;  // s kept around speech, so that no soft end is lost
inline constexpr double kSoftEdge = 0.008;   // s over which an end fades

/// What is heard in a take, and what it stands out from.
struct HeardSpeech {
    /// Parted by 150 ms of quiet or more, in order; a click is left out.
    std::vector<Stretch> bursts;
    /// Of the last burst what follows its last quiet, however short: all of it, or what was let go
    /// after a closed mouth.
    Stretch last_sound;
    double speech_db = -100;  // dBFS without hum, of the frames that are speech
    double room_db = -100;    // dBFS without hum, of the quietest tenth

    /// From the first burst to the last; empty when nothing is heard.
    Stretch all() const {
        return bursts.empty() ? Stretch{} : Stretch{bursts.front().begin, bursts.back().end};
    }
    double aboveRoomDb() const { return speech_db - room_db; }
};

/// What is 12 dB above the room, with what is 6 dB above it at its ends, and a sound of 9 dB within
/// 150 ms of such a burst, as a last "p" let go softly. Softer is taken for the room.
HeardSpeech heardIn(const Pcm& take);

/// With `seconds` more on both sides, as far as the take reaches.
Stretch widened(Stretch stretch, double seconds, const Pcm& take);

/// A synthesized clip with only `margin_s` of the silence around it, and soft ends. Goes by its
/// samples alone: in a recording, noise would count as sound.
Pcm withoutSilence(const Pcm& clip, double margin_s);

}  // namespace wrenlet::desk
