// From contacts on the glass to the one finger that plays: resting palms, contacts at the edge and
// second fingers are left out, so that a scene sees one calm hand.
//
// The first contact plays. Ignored until they are lifted: contacts wider than a fingertip, contacts
// that begin at an edge of the screen (a palm, a thumb that holds the tablet, a swipe from
// outside), and second fingers. Two exceptions give way to the next contact: one that has only
// rested where it fell holds nothing; and of one that was not heard of for long the up was lost
// (glass tells the slightest stir of a finger that is there), and would keep all others out for
// good. The figures are this project's own, for hands of 5 to 7 years.
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

inline constexpr float kPalmMm = 30;               // wider than this is no fingertip
inline constexpr float kEdgeMm = 4, kEdgePx = 12;  // px where the display's size is not known
inline constexpr float kStillMm = 3, kStillPx = 12;
inline constexpr Millis kRestMillis = 1500;  // still for this long from its down: it only rests
inline constexpr Millis kLostMillis = 5000;  // unheard of for this long: its up was lost

class FingerFilter {
  public:
    explicit FingerFilter(ScreenSize screen) : screen_(screen) {}
    /// What `contact` does as the playing finger: mostly one touch or none. A down may come after
    /// a cancel, when the finger before was lost without an up or only rested. Each down is
    /// followed by exactly one up or cancel.
    std::vector<Touch> feed(const Contact& contact, Millis now);
    /// Lifts the playing finger as if it had been cancelled (rotation, pause).
    std::optional<Touch> reset(ScreenSize screen);

  private:
    struct Playing {
        std::int64_t id = 0;
        Point began, last;
        Millis since = 0, heard = 0;
        bool still = true;
    };

    bool beginsAtEdge(Point at) const;
    bool isNear(Point a, Point b) const;
    /// True iff the finger that plays holds a next one up.
    bool isBusy(Millis now) const;
    void ignore(std::int64_t id);
    Touch cancelPlaying();

    ScreenSize screen_;
    std::optional<Playing> playing_;
    std::vector<std::int64_t> ignored_;
};

}  // namespace wrenlet::game
