// Where the game stands, in a line: for whoever drives the program from outside and has to know
// what lies where on the screen, as a test on a real touch screen does.
#pragma once

#include <string>

#include "game/app.hpp"

namespace wrenlet::game {

/// One line of JSON without its end: {"answers": newest, "place": "sort: asked", "right": "card" or
/// null, "things": {"card": [x, y, w, h], ...}}, boxes in px of the screen.
std::string told(const App& app);

}  // namespace wrenlet::game
