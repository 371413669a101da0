// How prompts point at what they speak of, for the files that write one mechanic's prompts.
#pragma once

#include <cstddef>

#include "game/scenes/telling.hpp"

namespace wrenlet::game {

/// The silence before what follows at once, and before what is another thought.
inline constexpr Millis kBeat = 250, kRest = 600;

inline Show at(Show::Kind kind, std::size_t index = 0, bool moves = false) {
    Show show;
    show.kind = kind;
    show.index = static_cast<int>(index);
    show.moves = moves;
    return show;
}

inline Show paired(int pair, int side, bool part, std::size_t index = 0) {
    Show show = at(Show::Kind::pair, index);
    show.pair = pair;
    show.side = side;
    show.part = part;
    return show;
}

}  // namespace wrenlet::game
