// How things move: functions of the time, easing out, so that a frame at a moment is always the
// same frame.
#pragma once

#include <map>
#include <optional>
#include <string>

#include "game/stage/frame.hpp"
#include "game/stage/voice.hpp"

namespace wrenlet::game {

inline constexpr Millis kLift = 120, kMove = 200, kLean = 300, kSceneChange = 400, kHop = 450;

/// 0 at `begin`, 1 from `begin` + `length` on; quick first, then slow.
float eased(Millis begin, Millis length, Millis now);
Point between(Point from, Point to, float part);

/// Pieces on their way to where they belong, each by its name.
class Glides {
  public:
    /// With motion off everything is where it belongs at once.
    explicit Glides(bool motion) : motion_(motion) {}

    void begin(const std::string& piece, Point from, Millis length, Millis now);
    void clear() { glides_.clear(); }
    /// Where a piece is that belongs at `seat`.
    Point at(const std::string& piece, Point seat, Millis now) const;
    bool isMoving(Millis now) const;

  private:
    struct Glide {
        Point from;
        Millis begin = 0, length = 0;
    };
    bool motion_;
    std::map<std::string, Glide, std::less<>> glides_;
};

}  // namespace wrenlet::game
