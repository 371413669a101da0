// A sound cut into frames of 5 ms with what tells a vowel from a hiss and a hum: its energy low, in
// the middle and high, and how much it repeats itself at a voice's pitch.
#pragma once

#include <vector>

#include "editor/voice/pcm.hpp"

namespace wrenlet::desk {

inline constexpr double kVoiceFrame = 0.005;  // s
inline constexpr int kVoiceRate = 16'000;     // Hz, at which frames are looked at

struct VoiceFrame {
    double low = 0;    // power in 80 to 450 Hz: a voice's own hum, a voice bar, a nasal
    double mid = 0;    // 450 to 3200 Hz: where a vowel is strong
    double high = 0;   // above 3200 Hz: hiss
    double again = 0;  // normalised autocorrelation, -1 to 1, at its best lag of 65 to 400 Hz
    double all() const { return low + mid + high; }
};

/// Powers are means over 15 ms around each frame.
std::vector<VoiceFrame> voiceFrames(const Pcm& sound);

}  // namespace wrenlet::desk
