// Recordings from files, and clips into files: decoding, another rate, encoding. By libsndfile,
// soxr and libsamplerate; every file is bounded and checked, for it comes from outside.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "content/common/result.hpp"
#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr std::uint64_t kMostRecordingBytes = 32ull << 20;

/// A recording (WAV, FLAC, OGG, MP3) as one channel, at the rate it was made with: what checks look
/// at. Errors name the file: no recording, longer than kMostRecordingSeconds, more than
/// kMostRecordingBytes, shorter than its own head says.
Result<Pcm> readTake(const std::filesystem::path& path);
/// The same of a file's bytes; `name` stands in problems.
Result<Pcm> decodeTake(std::string bytes, std::string_view name);

/// The same sound at another rate, for what is heard: soxr's high quality, which keeps noise 20
/// bits (120 dB) down and 91 % of the band (its own header), in a thirtieth of libsamplerate's
/// time.
Pcm atRate(const Pcm& clip, int rate);
/// The same for what is only measured, as the checks' thresholds were chosen with: libsamplerate's
/// quickest filter; up to 0.4 of the lower rate is whole.
Pcm roughlyAtRate(const Pcm& clip, int rate);

/// OGG Vorbis, as packs carry it: the same bytes for the same sound. Errors: the encoder refused.
Result<std::string> encodeOgg(const Pcm& clip);

/// FLAC of 24 bits at the take's own rate: the untouched take, kept. What came in 16 or 24 bits
/// comes back to the bit. Errors: the encoder refused.
Result<std::string> encodeFlac(const Pcm& take);

}  // namespace wrenlet::desk
