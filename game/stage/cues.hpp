// The game's own sounds: wood knocked softly, a drop of water, a leaf. They say that a touch was
// felt, never that it was right or wrong. Computed once from a few figures, so that no file is
// needed and a run can be repeated.
#pragma once

#include <map>
#include <string>
#include <string_view>

#include "game/stage/mixer.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// What the voice is recorded to: see editor/voice. Cues lie kCueBelowVoice under it; a lone
/// consonant is softer than a word, and where the voice may be at one, they lie under that.
inline constexpr double kVoiceLufs = -20, kLoneSoundLufs = -26;
/// By this many LU at least, over their loudest 100 ms.
inline constexpr double kCueBelowVoice = 9;

struct Cue {
    Pcm alone;         // while nothing is said
    Pcm under_speech;  // while something is
    /// From its beginning; what is left of `alone` then lies under a lone sound as it must.
    Millis fades_after = 0;
};

class Cues {
  public:
    /// Computes all of them (some milliseconds).
    Cues();
    /// "lift", "settle", "join", "done", "water", "leaf"; null for any other name.
    const Cue* find(std::string_view name) const;
    const std::map<std::string, Cue, std::less<>>& all() const { return cues_; }

  private:
    std::map<std::string, Cue, std::less<>> cues_;
};

}  // namespace wrenlet::game
