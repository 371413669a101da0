#include "editor/windows/keyed.hpp"

#include "editor/windows/input.hpp"

namespace wrenlet::desk {

bool hit(const View& view, Does does) {
    const KeyRow* row = keyFor(view.spot, does);
    if (row == nullptr || !input::pressed(row->key)) return false;
    switch (row->hold) {
        case Hold::ctrl:
            return input::ctrl();
        case Hold::alt:
            return input::alt();
        case Hold::nothing:
            break;
    }
    if (input::ctrl() || input::alt()) return false;
    if (row->spot == Spot::everywhere) return true;
    if (row->isLetter() && !view.settings.now().letters) return false;
    const bool is_stops = row->key == Key::enter || row->key == Key::space;
    return !input::isTyping() && (!is_stops || view.ui.enterIsFree());
}

std::string capOf(const View& view, Does does) {
    const KeyRow* row = keyFor(view.spot, does);
    if (row == nullptr || (row->isLetter() && !view.settings.now().letters)) return {};
    return row->cap;
}

}  // namespace wrenlet::desk
