// The two pictures that a child may have to touch after her badge, so that nobody plays in her
// place by mistake. It keeps no secret: it is no protection of data.
#pragma once

#include <array>
#include <string_view>

namespace wrenlet::pack {

/// What a key is made of, in the order in which it lies on the screen. The game has a drawing of
/// each, "key-apple".
inline constexpr std::array<std::string_view, 9> kKeyPictures = {
    "apple", "ball", "cake", "chair", "ladder", "sock", "spoon", "tree", "wheel"};

/// How many of them a child touches, one after the other; no two alike.
inline constexpr std::size_t kKeyLength = 2;

}  // namespace wrenlet::pack
