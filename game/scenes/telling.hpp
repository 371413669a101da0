// Something being told: what is said, clip by clip, and what is shown while each clip sounds.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// What a clip is about, so that the screen can point at it.
struct Show {
    enum class Kind : std::uint8_t {
        nothing,
        subject,  // the card that waits, or the asked word
        place,    // a home, a picture or an acorn's pad, by its place
        tile,     // a sound tile
        loose,    // of a change: the tile that is taken out
        fresh,    // of a change: the tile that is put in
        example,  // a step of an example, shown in place of the question
        pair,     // the explanation: two things compared; see Show::pair
    };
    Kind kind = Kind::nothing;
    int index = 0;       // of the place, tile, step or column
    int pair = 0;        // explanation: 0 what was chosen, 1 what was asked
    int side = 0;        // explanation: which of the two sounds, 0 or 1
    bool part = false;   // explanation: only the deciding part sounds
    bool moves = false;  // the piece shows by moving how it is to be touched
    bool operator==(const Show&) const = default;
};

struct Line {
    std::string clip;
    Millis gap_before = 0;
    Show show{};
};
using Script = std::vector<Line>;

class Telling {
  public:
    void begin(Voice& voice, const Script& script, Millis now);
    /// Stops at once; isOver() from then on.
    void stop(Voice& voice, Millis now);

    const Script& script() const { return script_; }
    /// The line begun last, by its place in the script; 0 before the first.
    std::size_t reached(Millis now) const;
    /// The line told last or being told now; null before the first and when all is over.
    const Line* line(Millis now) const;
    /// What is shown at `now`; nothing in long pauses and when all is over.
    Show show(Millis now) const;
    bool isSounding(Millis now) const { return speech_.at(now) >= 0; }
    bool isOver(Millis now) const { return now >= speech_.end; }
    Millis end() const { return speech_.end; }
    /// When the line that is shown began.
    Millis shownSince(Millis now) const;
    /// The next moment at which something here changes.
    std::optional<Millis> nextChange(Millis now) const;

  private:
    Script script_;
    Speech speech_;
};

}  // namespace wrenlet::game
