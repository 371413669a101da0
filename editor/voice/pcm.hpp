// Sound as numbers: what is recorded, synthesized, measured and brought to one loudness.
#pragma once

#include <vector>

namespace wrenlet::desk {

inline constexpr int kClipRate = 48'000;  // Hz, of every clip in a pack

/// One channel, -1 to 1.
struct Pcm {
    std::vector<float> samples;
    int rate = kClipRate;
    double seconds() const { return static_cast<double>(samples.size()) / rate; }
};

}  // namespace wrenlet::desk
