// What reaches the desk's window: a pointer, keys and text, in the terms of Dear ImGui's current
// context. The platform layer and scripted tests both speak through these few calls.
#pragma once

#include <cstdint>
#include <string_view>

#include "editor/help/key.hpp"

namespace wrenlet::desk {

namespace input {

/// Once, after the context is made.
void prepare();
void pointTo(float x, float y);  // pixels
void lift();                     // a finger left the glass: the pointer is nowhere
void press(bool down);
void wheel(float columns, float rows);
void key(Key key, bool down);
void modifiers(bool ctrl, bool shift, bool alt);
void text(std::string_view utf8);

/// True in the frame in which the key went down, and again while it repeats.
bool pressed(Key key);
/// True while a text field has the cursor: single letters and arrows are the field's then.
bool isTyping();
bool ctrl();
bool shift();
bool alt();

}  // namespace input

}  // namespace wrenlet::desk
