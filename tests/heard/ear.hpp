// An ear for what was mixed: finds a clip in a recording by correlation, to the sample, knowing
// nothing of how the mixer works.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace wrenlet::heard {

using Samples = std::span<const std::int16_t>;

/// Where a clip was heard, and how like it that was: 1 is the clip itself, at whatever loudness.
struct Heard {
    std::size_t at = 0;  // its first sample's place in the recording
    double like = 0;
};

/// Every place in the recording's samples `from` to `to` where the clip is heard, in their order.
/// Fainter likenesses of its active part than `least` are taken for something else.
std::vector<Heard> places(Samples recording, std::size_t from, std::size_t to, Samples clip,
                          double least = 0.8);

/// Which of several clips sound, one after another, in their order. Where two that are alike would
/// overlap (hat, cat), the likest is the one.
struct Sounded {
    std::size_t clip = 0;  // index into the clips
    Heard heard;
};
std::vector<Sounded> inOrder(Samples recording, std::size_t from, std::size_t to,
                             const std::vector<Samples>& clips);

/// LUFS of these samples as they were played, the same from both sides (ITU-R BS.1770, by
/// libebur128), without gates: in pieces of 3 s at most, whose powers are averaged.
double loudness(Samples played);
/// The same of their loudest 100 ms.
double loudestMoment(Samples played);
/// The samples between the first and the last 10 ms that lie within 40 dB of the loudest 10 ms.
Samples active(Samples clip);

}  // namespace wrenlet::heard
