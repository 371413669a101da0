// Everything that sounds, laid out on one sample clock: a clip begins at its exact sample, so the
// gap between two clips is what was asked for, whatever the frame rate. Pure: it turns voices into
// samples; whoever owns a sound device pulls them, and so does a test.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace wrenlet::game {

inline constexpr int kSampleRate = 48'000;
inline constexpr int kSamplesPerMilli = kSampleRate / 1000;
inline constexpr int kFadeSamples = 5 * kSamplesPerMilli;  // of a clip that is stopped

/// No sample leaves the mixer louder than this share of full scale, whatever plays together at
/// whatever volume. It bounds the gain; it does not say how loud that is at an ear.
inline constexpr float kGainCap = 0.7f;

/// A sound, decoded: mono, 48 kHz.
struct Pcm {
    std::vector<std::int16_t> samples;
};

class Mixer {
  public:
    enum class Lane : std::uint8_t { voice, cue };

    /// One sound of a layout: `pcm` begins `after` samples after the layout does.
    struct Line {
        const Pcm* pcm = nullptr;  // must outlive its sounding
        std::int64_t after = 0;    // at least 0
    };

    /// Starts a layout with the next sample that is mixed; returns that sample's number.
    std::int64_t begin(Lane lane, std::span<const Line> lines);
    /// Fades out what sounds in the lane and drops what has not begun.
    void stop(Lane lane);
    /// 0 to 1; anything outside is brought inside. It makes everything softer and bounds it too: no
    /// sample leaves louder than this share of kGainCap, whatever plays together.
    void setVolume(float volume);
    /// Silent, with the clock standing still, until it is let go on.
    void setPaused(bool paused) { paused_ = paused; }

    /// Writes `frames` stereo pairs, both sides alike.
    void mix(std::int16_t* stereo, std::size_t frames);

    /// Samples mixed so far.
    std::int64_t clock() const { return clock_; }
    /// True when no voice is left to sound.
    bool isQuiet() const { return voices_.empty(); }

  private:
    struct Voice {
        const Pcm* pcm = nullptr;
        Lane lane = Lane::voice;
        std::int64_t begin = 0;
        std::int64_t stopped = -1;  // the sample at which its fade began
        std::int64_t end() const;
    };

    std::vector<Voice> voices_;
    std::vector<std::int32_t> sum_;
    std::int64_t clock_ = 0;
    std::int32_t volume_ = 1 << 15;  // 1 is 2^15: whole numbers sound the same on every machine
    bool paused_ = false;
};

}  // namespace wrenlet::game
