// Whether clips come out at one loudness, by our own meter and by an independent one: ffmpeg's
// ebur128 filter. Both are held to the tones of EBU Tech 3341 first.
#pragma once

#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

/// Test signals 1 to 5 of EBU Tech 3341, table 1 (a 1 kHz sine from both sides; from memory): each
/// reads -23.0 LUFS within 0.1 LU, the second -33.0.
struct MeterTone {
    desk::Pcm sound;
    double lufs;
};
std::vector<MeterTone> meterTones();

/// LUFS of `sound` from both sides by ffmpeg; nothing without ffmpeg.
std::optional<double> ffmpegLoudness(const desk::Pcm& sound, const std::filesystem::path& scratch);

std::vector<Line> loudnessReport(const std::vector<Word>& words,
                                 const std::vector<LoneSound>& sounds,
                                 const std::filesystem::path& scratch);

}  // namespace wrenlet::ear
