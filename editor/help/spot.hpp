// Where she is at the desk, as far as keys and help differ: a place, or a page of it.
#pragma once

#include <cstdint>

namespace wrenlet::desk {

enum class Spot : std::uint8_t {
    everywhere,  // keys alone: known at every other spot
    words,
    picture,  // one is chosen for a word
    bring,    // another teacher's unit is looked through
    booth,
    try_out,
    finder,  // words that would give a skill more
    hand_out,
    tablets,  // the tablets' page at Hand out
    map,
    child,
    tomorrow,
    papers,
    why,    // what stands behind a line
    aloud,  // a child is asked aloud
    list,
    settings,
};
inline constexpr int kSpotCount = static_cast<int>(Spot::settings) + 1;

}  // namespace wrenlet::desk
