// How loud a clip is, and bringing clips to one loudness, so that no word startles after another.
// Measured as ITU-R BS.1770 says (EBU R 128, by libebur128), a mono clip heard from both sides.
#pragma once

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kWordLufs = -20;   // words, sentences, phrases, vowels
inline constexpr double kSoundLufs = -26;  // a lone consonant is softer than a word, as in speech
inline constexpr double kMostPeakDb = -2;  // true peak, dBTP

/// LUFS over the whole clip, without a gate: the 400-ms blocks of the standard would make a word
/// shorter than that silent. -100 for silence.
double loudness(const Pcm& clip);

/// dBTP; -100 for silence.
double truePeak(const Pcm& clip);

/// The clip at `lufs`, or as near as its true peak lets it come.
Pcm broughtTo(Pcm clip, double lufs);

}  // namespace wrenlet::desk
