#include "editor/voice/pcm.hpp"

#include <algorithm>

namespace wrenlet::desk {

Pcm cutOut(const Pcm& sound, Stretch stretch) {
    const std::size_t end = std::min(stretch.end, sound.samples.size());
    const std::size_t begin = std::min(stretch.begin, end);
    return {{sound.samples.begin() + static_cast<std::ptrdiff_t>(begin),
             sound.samples.begin() + static_cast<std::ptrdiff_t>(end)},
            sound.rate};
}

Pcm softened(Pcm clip, double seconds) {
    const std::size_t n =
        std::min(static_cast<std::size_t>(seconds * clip.rate), clip.samples.size() / 2);
    for (std::size_t i = 0; i < n; ++i) {
        const float gain = (static_cast<float>(i) + 0.5f) / static_cast<float>(n);
        clip.samples[i] *= gain;
        clip.samples[clip.samples.size() - 1 - i] *= gain;
    }
    return clip;
}

}  // namespace wrenlet::desk
