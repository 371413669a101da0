// What a scene says: clips one after another on one sample clock, so that a gap is exact and the
// scene knows when each clip begins. The words come from the pack; cues are the game's own sounds.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::game {

/// Milliseconds of the game's clock, which stands still while the game is paused.
using Millis = std::int64_t;

struct Spoken {
    std::string clip;       // id of a clip in the pack
    Millis gap_before = 0;  // silence before it
};
using Utterance = std::vector<Spoken>;

/// When each clip of an utterance sounds, in the game's clock.
struct Timing {
    Millis begin = 0, end = 0;
};
struct Speech {
    std::vector<Timing> clips;  // one for each of the utterance's
    Millis end = 0;
    /// The clip that sounds at `now`, or -1.
    int at(Millis now) const;
};

class Voice {
  public:
    virtual ~Voice() = default;
    /// Stops what is being said and says this. A clip that the pack lacks is silence of 300 ms.
    virtual Speech say(const Utterance& utterance, Millis now) = 0;
    virtual void hush() = 0;
    /// One of the game's own soft sounds ("lift", "settle", "join", "done", "water"), below the
    /// voice by 9 LU or more.
    virtual void cue(std::string_view name) = 0;
    /// 0 to 1, of the loudest the game can be: see Mixer::setVolume.
    virtual void setVolume(float volume) = 0;
    /// Why nothing can be heard, in words for an adult; empty when all is well.
    virtual std::string trouble() const = 0;
};

}  // namespace wrenlet::game
