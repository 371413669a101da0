// From contacts on the glass to the one finger that plays: resting palms, contacts at the edge and
// second fingers are left out, so that a scene sees one calm hand.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "game/stage/frame.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// A contact as the system reports it (a mouse is one contact with id 0).
struct Contact {
    enum class Kind : std::uint8_t { down, move, up, cancel };
    Kind kind = Kind::down;
    std::int64_t id = 0;
    Point at;
    float size_mm = 0;  // 0 where the system does not tell
};

/// What the playing finger does.
struct Touch {
    enum class Kind : std::uint8_t { down, move, up, cancel };
    Kind kind = Kind::down;
    Point at;
};

class FingerFilter {
  public:
    explicit FingerFilter(ScreenSize screen) : screen_(screen) {}
    /// The touch that `contact` makes, if it is the playing finger's.
    std::optional<Touch> feed(const Contact& contact, Millis now);
    /// Lifts the playing finger as if it had been cancelled (rotation, pause).
    std::optional<Touch> reset(ScreenSize screen);

  private:
    ScreenSize screen_;
    std::optional<std::int64_t> playing_;
    Point last_;
    std::vector<std::int64_t> ignored_;
};

}  // namespace wrenlet::game
