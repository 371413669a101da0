// One loudness for all clips of a pack: how loud each kind of sound should be, and bringing a
// take's spoken part there. A lone /f/ or a stop is not lifted to a word's loudness.
#pragma once

#include "content/pack/pack_builder.hpp"
#include "editor/voice/loudness.hpp"

namespace wrenlet::desk {

/// LUFS that a clip for `need` is brought to.
double aimedLufs(const pack::VoiceNeed& need);

/// LUFS of `spoken` in `take`, for a sentence with its pauses left out as EBU R 128 does (gated);
/// anything shorter by a window as long as it is. -100 for silence.
double spokenLufs(const Pcm& take, Stretch spoken, const pack::VoiceNeed& need);

/// The clip that children hear: `kept` of the take, at kClipRate, with soft edges, brought to
/// aimedLufs by what is `spoken`, or as near as kMostPeakDb (true peak) lets it come.
Pcm levelClip(const Pcm& take, Stretch kept, Stretch spoken, const pack::VoiceNeed& need);

// The booth's level meter, dBFS of 10 ms: softer is too soft, louder comes near to clipping. Common
// practice, not from a standard.
inline constexpr double kMeterSoftDb = -40, kMeterLoudDb = -9;

}  // namespace wrenlet::desk
