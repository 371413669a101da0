// How loud a clip is, and bringing clips to one loudness, so that no word startles after another.
// Measured as ITU-R BS.1770 says (EBU R 128, by libebur128), a mono clip heard from both sides.
#pragma once

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kWordLufs = -20;   // words, sentences, phrases, vowels
inline constexpr double kSoundLufs = -26;  // a lone consonant is softer than a word, as in speech
inline constexpr double kMostPeakDb = -2;  // true peak, dBTP
inline constexpr double kSilenceLufs = -100;

/// LUFS over the whole clip, without a gate: the 400-ms blocks of the standard would make a word
/// shorter than that silent. kSilenceLufs for silence.
double loudness(const Pcm& clip);

/// LUFS with the standard's gates, which leave pauses out: for a second and more of speech.
/// kSilenceLufs for silence and for what is shorter than a block.
double gatedLoudness(const Pcm& clip);

/// dBTP; -100 for silence.
double truePeak(const Pcm& clip);

/// Louder by `db`, or as near as its true peak lets it come; softer by all of it.
Pcm turnedUp(Pcm clip, double db);

/// The clip at `lufs`, or as near as its true peak lets it come.
Pcm broughtTo(Pcm clip, double lufs);

}  // namespace wrenlet::desk
