#include "game/scenes/motion.hpp"

#include <algorithm>

namespace wrenlet::game {

float eased(Millis begin, Millis length, Millis now) {
    if (length <= 0 || now >= begin + length) return 1;
    if (now <= begin) return 0;
    const float left = 1 - static_cast<float>(now - begin) / static_cast<float>(length);
    return 1 - left * left * left;
}

Point between(Point from, Point to, float part) {
    return {from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part};
}

void Glides::begin(const std::string& piece, Point from, Millis length, Millis now) {
    if (motion_) glides_[piece] = {from, now, length};
}

Point Glides::at(const std::string& piece, Point seat, Millis now) const {
    const auto found = glides_.find(piece);
    if (found == glides_.end()) return seat;
    return between(found->second.from, seat, eased(found->second.begin, found->second.length, now));
}

bool Glides::isMoving(Millis now) const {
    return std::any_of(glides_.begin(), glides_.end(), [now](const auto& entry) {
        return now < entry.second.begin + entry.second.length;
    });
}

}  // namespace wrenlet::game
