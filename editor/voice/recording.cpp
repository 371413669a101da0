#include "editor/voice/recording.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::desk {

Recording::Recording(int rate, double most_seconds)
    : sound_{{}, rate}, most_samples_(static_cast<std::size_t>(most_seconds * rate)) {}

bool Recording::add(std::span<const float> block) {
    const std::size_t room = most_samples_ - sound_.samples.size();
    for (const float sample : block.first(std::min(room, block.size())))
        sound_.samples.push_back(std::isfinite(sample) ? std::clamp(sample, -1.0f, 1.0f) : 0.0f);
    return block.size() <= room;
}

void Recording::keepLast(double seconds) {
    const auto kept = static_cast<std::size_t>(seconds * sound_.rate);
    if (sound_.samples.size() <= kept) return;
    sound_.samples.erase(sound_.samples.begin(),
                         sound_.samples.end() - static_cast<std::ptrdiff_t>(kept));
}

}  // namespace wrenlet::desk
