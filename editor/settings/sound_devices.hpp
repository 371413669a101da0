// Which microphones and loudspeakers there are, and which of them is used. The desk's windows bring
// the machine's own; a test brings some that are made up.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace wrenlet::desk {

enum class SoundWay : std::uint8_t { in, out };

class SoundDevices {
  public:
    virtual ~SoundDevices() = default;
    /// By their system's names, as plugged in now.
    virtual std::vector<std::string> names(SoundWay way) = 0;
    /// Used from now on; empty, or one that is not there: the system's own choice.
    virtual void use(SoundWay way, const std::string& name) = 0;
};

}  // namespace wrenlet::desk
