// Sound as numbers: what is recorded, synthesized, measured and brought to one loudness.
#pragma once

#include <cstddef>
#include <vector>

namespace wrenlet::desk {

inline constexpr int kClipRate = 48'000;  // Hz, of every clip in a pack

/// One channel, -1 to 1.
struct Pcm {
    std::vector<float> samples;
    int rate = kClipRate;
    double seconds() const { return static_cast<double>(samples.size()) / rate; }
};

/// Samples of a Pcm, from `begin` to just before `end`.
struct Stretch {
    std::size_t begin = 0, end = 0;
    std::size_t size() const { return end - begin; }
    bool empty() const { return end <= begin; }
    bool operator==(const Stretch&) const = default;
};

/// That stretch of it, kept inside what is there.
Pcm cutOut(const Pcm& sound, Stretch stretch);

/// Both ends faded over `seconds`.
Pcm softened(Pcm clip, double seconds);

}  // namespace wrenlet::desk
