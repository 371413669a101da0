// What hears the teacher. The desk's windows bring the machine's own; a test brings one that plays
// prepared takes.
#pragma once

#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::desk {

class Microphone {
  public:
    virtual ~Microphone() = default;
    /// Begins to hear; the rate in Hz. Error: there is none, or it may not be used.
    virtual Result<int> start() = 0;
    virtual void stop() = 0;
    /// What was heard since the last call or the start: one channel, -1 to 1. Never waits.
    virtual std::vector<float> heard() = 0;
};

/// What the teacher hears from the desk.
class Speaker {
  public:
    virtual ~Speaker() = default;
    /// Plays from the beginning; what played before ends.
    virtual void play(const std::vector<float>& samples, int rate) = 0;
    virtual bool isPlaying() const = 0;
};

}  // namespace wrenlet::desk
