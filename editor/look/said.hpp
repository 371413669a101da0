// What the desk says of one sound of one child, as a word, a mark and a ground that agree: meaning
// never goes by colour alone.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "content/practice/progress.hpp"
#include "editor/look/palette.hpp"

namespace wrenlet::desk {

/// The four words of practice::Standing, and two for a place they cannot speak of: a shielded sound
/// that would be called missed, and one that was never asked.
enum class Said : std::uint8_t { missed, growing, steady, too_little, shielded, not_asked };

inline constexpr std::array<Said, 4> kFourWords{Said::missed, Said::growing, Said::steady,
                                                Said::too_little};

Said saidOf(const practice::SoundLine& line);
std::string_view wordOf(Said said);

enum class Mark : std::uint8_t {
    diamond,
    half_disc,
    disc,
    dot,
    shield,
    none,
    tick,     // gathered, done
    warning,  // a tag with a cut corner and "!"
};

struct SaidLook {
    Mark mark;
    Colour ground;
    Colour on_ground;  // the mark's colour on that ground
    Colour alone;      // the mark's colour on card or paper
    bool framed;       // a hairline around the ground, for one as pale as paper
};
SaidLook lookOf(Said said);

}  // namespace wrenlet::desk
