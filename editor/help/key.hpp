// The keys that the desk knows, whatever brings them.
#pragma once

#include <cstdint>

namespace wrenlet::desk {

enum class Key : std::uint8_t {
    none,
    tab,
    left,
    right,
    up,
    down,
    page_up,
    page_down,
    home,
    end,
    enter,
    space,
    escape,
    f5,
    plus,
    minus,
    zero,
    one,
    two,
    three,
    four,
    five,
    erase,  // Delete
    backspace,
    f1,
    // letters that Dear ImGui's text fields know with Ctrl, and that places use
    a,
    c,
    d,
    f,
    h,
    k,
    l,
    p,
    s,
    v,
    x,
    y,
    z,
};

/// What is held down with a key.
enum class Hold : std::uint8_t { nothing, ctrl, alt };

}  // namespace wrenlet::desk
