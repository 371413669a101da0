// A scripted child at the table, on a clock of its own: its contacts go through SDL's event queue
// as a touch screen's would, 60 times a second of the game's time, as fast as the machine can.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "content/common/clock.hpp"
#include "game/script/scripted_child.hpp"
#include "game/sdl/table.hpp"

namespace wrenlet::game {

/// The time of day in a script: stands still unless the script moves it.
class ScriptClock final : public Clock {
  public:
    std::int64_t unixMillis() const override { return kBegin + now; }
    Millis now = 0;

  private:
    static constexpr std::int64_t kBegin = 1'790'000'000'000;  // one morning in September 2026
};

struct ScriptRun {
    std::filesystem::path pictures;              // a picture of each place; empty: none
    std::string picture_prefix;                  // of their names
    bool each_place_once = false;                // leave out places that have a picture already
    std::function<void(std::int64_t)> announce;  // the newest row's sequence, before more is heard
    std::function<void(Millis now, const Frame&)> each_frame;  // 60 a second, drawn or not
};

struct ScriptResult {
    std::uint64_t frames_hash = 0;    // of every frame, as a value
    std::uint64_t pictures_hash = 0;  // of the pixels of each place's picture
    std::uint64_t sound_hash = 0;     // of every sample
    std::int64_t steps = 0;           // frames of the game's time
    bool finished = false;            // the tape's sessions came to their end
    std::vector<std::string> places;  // in the order in which they came
    std::vector<std::string> files;   // pictures left
    std::vector<Problem> problems;
};

/// REQUIRES: a table off screen with sound for decoding only, its app on `clock`.
ScriptResult runScript(Table& table, ScriptClock& clock, const Tape& tape, const ScriptRun& run);

}  // namespace wrenlet::game
