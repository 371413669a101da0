// Recordings from files, and clips into files: decoding, another rate, encoding. By libsndfile and
// libsamplerate; every file is bounded and checked, for it comes from outside.
#pragma once

#include <filesystem>
#include <string>

#include "content/common/result.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kMostRecordingSeconds = 30;

/// A recording (WAV, FLAC, OGG, MP3) as one channel at kClipRate. Errors name the file: no
/// recording, longer than 30 s, more than 10 MB, broken off.
Result<Pcm> readRecording(const std::filesystem::path& path);

/// The same sound at another rate, filtered.
Pcm atRate(const Pcm& clip, int rate);

/// OGG Vorbis, as packs carry it. Errors: the encoder refused.
Result<std::string> encodeOgg(const Pcm& clip);

/// Only what sounds, with `margin_s` before and after it and soft ends.
Pcm trimmed(const Pcm& clip, double margin_s);

/// Both ends faded over `seconds`.
Pcm softened(Pcm clip, double seconds);

}  // namespace wrenlet::desk
