#include "game/stage/voice.hpp"

namespace wrenlet::game {

int Speech::at(Millis now) const {
    for (std::size_t i = 0; i < clips.size(); ++i)
        if (now >= clips[i].begin && now < clips[i].end) return static_cast<int>(i);
    return -1;
}

}  // namespace wrenlet::game
