// The mark of a child who plays without a finger on the glass: by the keys of a keyboard, or with
// one switch while the mark goes on by itself. It stands on one of the things that can be touched.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "game/stage/voice.hpp"

namespace wrenlet::game {

/// What keys say, whichever keys they are. A switch is `touch`.
enum class Key : std::uint8_t { next, previous, touch, replay, leave };

/// How long the mark may stand on a thing while it goes on by itself: common practice for single
/// switches is one to five seconds, set for each child.
inline constexpr Millis kQuickestScan = 1'000, kSlowestScan = 5'000;

class Mark {
  public:
    /// `names` are those of things that can be touched. Pieces come first, then replay and the way
    /// out; the wren, who only says the same as replay, is left out.
    static std::vector<std::string> orderOf(std::vector<std::string> names);

    /// On to the next (1) or back (-1), round and round. The first move shows the mark.
    void move(const std::vector<std::string>& order, int by);
    /// A finger plays: there is no mark until the next move.
    void hide() { at_.reset(); }
    /// What is marked: the first one, when the marked thing is gone. Nothing while it is hidden.
    std::optional<std::string> on(const std::vector<std::string>& order) const;

  private:
    std::optional<std::string> at_;
};

}  // namespace wrenlet::game
