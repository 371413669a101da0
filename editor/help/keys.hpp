// Every key of the desk in one table: pages ask it whether a key was meant for them, buttons take
// from it what they show, Help lists it. So what Help says is what the keys do.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "editor/help/key.hpp"
#include "editor/help/spot.hpp"

namespace wrenlet::desk {

/// What a key is for.
enum class Does : std::uint8_t {
    help,
    go_words,
    go_booth,
    go_try_out,
    go_hand_out,
    go_class,
    next_step,
    undo,
    redo,
    text_larger,
    text_smaller,
    gather,
    next_stop,
    back,
    up,
    down,
    page_up,
    page_down,
    first,
    last,
    left,
    right,
    open,
    leave_out,
    hear,
    hear_demo,
    turn,  // takes a thing or leaves it
    listen,
    skip,
    keep,
    cut,
    play,
    another,
    find,
    add,
    add_all,
    print,
    mark_right,  // what was heard
    mark_almost,
    mark_wrong,
};

struct KeyRow {
    Spot spot;
    Does does;
    Key key;
    Hold hold;
    const char* cap;   // "Alt 1"; of a pair the first has both, "↑ ↓"
    const char* says;  // what it does; empty: told in the row of its pair

    /// A letter alone: one that can be switched off.
    bool isLetter() const { return hold == Hold::nothing && key >= Key::a; }
};

std::span<const KeyRow> keyRows();
/// The row for it at that spot, else the one for everywhere; null when it has no key there.
const KeyRow* keyFor(Spot spot, Does does);
/// What Help lists: those of that spot alone, without the rows told by another.
std::vector<KeyRow> keysAt(Spot spot);

}  // namespace wrenlet::desk
