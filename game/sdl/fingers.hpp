// From SDL's events to contacts on the glass: fingers, or a mouse where there is no touch, and
// never the one made out of the other.
#pragma once

#include <SDL.h>

#include <optional>

#include "game/stage/finger.hpp"
#include "game/stage/mark.hpp"

namespace wrenlet::game {

/// The contact that `event` tells of, in px of `screen`, or nothing. `window_w` and `window_h` are
/// the window's size in its own units, in which a mouse is told. A mouse has id 0, fingers others.
std::optional<Contact> contactOf(const SDL_Event& event, ScreenSize screen, int window_w,
                                 int window_h);

/// The touch device that scripted fingers come from.
inline constexpr SDL_TouchID kScriptedTouch = 0x57524E;

/// Sends `contact` through SDL's own queue as a finger's event, as a touch screen would.
/// REQUIRES: an id of 1 or more. False when the queue is full.
bool pushFinger(const Contact& contact, ScreenSize screen);

/// Tab and the arrows move the mark, Space and Enter touch, R replays, Escape is the way out.
std::optional<Key> keyOf(const SDL_Keysym& key);

}  // namespace wrenlet::game
