// One take while it is being recorded: blocks from a microphone, kept in order and bounded, so that
// a microphone left on fills no memory.
#pragma once

#include <span>

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kMostRecordingSeconds = 30;
inline constexpr int kLeastRate = 8'000, kMostRate = 192'000;  // Hz

class Recording {
  public:
    /// REQUIRES: kLeastRate <= rate <= kMostRate; 0 < most_seconds <= kMostRecordingSeconds.
    explicit Recording(int rate, double most_seconds = kMostRecordingSeconds);

    /// Appends what still fits. A sample that is no number counts as 0, one outside -1..1 as the
    /// nearer of the two. False iff something did not fit.
    bool add(std::span<const float> block);

    /// Forgets all but the last `seconds`: while she has not begun to speak.
    void keepLast(double seconds);

    bool full() const { return sound_.samples.size() >= most_samples_; }
    const Pcm& sound() const { return sound_; }
    Pcm taken() && { return std::move(sound_); }

  private:
    Pcm sound_;
    std::size_t most_samples_;
};

}  // namespace wrenlet::desk
