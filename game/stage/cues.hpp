// The game's own sounds: wood knocked softly, a drop of water, a leaf. They say that a touch was
// felt, never that it was right or wrong. Computed once from a few figures, so that no file is
// needed and a run can be repeated.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "game/stage/mixer.hpp"

namespace wrenlet::game {

/// What the voice is recorded to: see editor/voice. Cues lie kCueBelowVoice under it.
inline constexpr double kVoiceLufs = -20;
/// By this many LU at least, over their loudest 100 ms.
inline constexpr double kCueBelowVoice = 9;

class Cues {
  public:
    /// Computes all of them (some milliseconds).
    Cues();
    /// "lift", "settle", "join", "done", "water", "leaf"; null for any other name.
    const Pcm* find(std::string_view name) const;
    const std::map<std::string, Pcm, std::less<>>& all() const { return cues_; }

  private:
    std::map<std::string, Pcm, std::less<>> cues_;
};

}  // namespace wrenlet::game
