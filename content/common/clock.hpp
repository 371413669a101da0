// The time of day, passed in so that tests and replays have their own.
#pragma once

#include <cstdint>

namespace wrenlet {

class Clock {
  public:
    virtual ~Clock() = default;
    /// Milliseconds since 1970-01-01 UTC. A tablet's clock can be wrong: nothing is ordered by it.
    virtual std::int64_t unixMillis() const = 0;
};

class SystemClock final : public Clock {
  public:
    std::int64_t unixMillis() const override;
};

}  // namespace wrenlet
