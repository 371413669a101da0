#include "game/stage/finger.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::game {

std::vector<Touch> FingerFilter::feed(const Contact& contact, Millis now) {
    const bool is_playing = playing_ && playing_->id == contact.id;

    if (contact.kind == Contact::Kind::down) {
        std::vector<Touch> touches;
        std::erase(ignored_, contact.id);  // its up was lost: judge it afresh
        if (is_playing) touches.push_back(cancelPlaying());

        if (contact.size_mm > kPalmMm || beginsAtEdge(contact.at)) {
            ignore(contact.id);
            return touches;
        }
        if (isBusy(now)) {
            ignore(contact.id);
            return touches;
        }
        if (playing_) {
            ignore(playing_->id);
            touches.push_back(cancelPlaying());
        }
        playing_ = Playing{contact.id, contact.at, contact.at, now, now, true};
        touches.push_back({Touch::Kind::down, contact.at});
        return touches;
    }

    const bool leaves = contact.kind != Contact::Kind::move;
    if (!is_playing) {
        if (leaves) std::erase(ignored_, contact.id);
        return {};
    }
    playing_->last = contact.at;
    playing_->heard = now;
    if (!isNear(playing_->began, contact.at)) playing_->still = false;

    if (contact.kind == Contact::Kind::cancel) return {cancelPlaying()};
    if (contact.size_mm > kPalmMm) {  // a palm that came down edge first
        if (!leaves) ignore(contact.id);
        return {cancelPlaying()};
    }
    if (contact.kind == Contact::Kind::up) {
        playing_.reset();
        return {{Touch::Kind::up, contact.at}};
    }
    return {{Touch::Kind::move, contact.at}};
}

std::optional<Touch> FingerFilter::reset(ScreenSize screen) {
    screen_ = screen;
    if (!playing_) return std::nullopt;
    ignore(playing_->id);
    return cancelPlaying();
}

bool FingerFilter::beginsAtEdge(Point at) const {
    const float edge = screen_.mm_per_px > 0 ? kEdgeMm / screen_.mm_per_px : kEdgePx;
    return at.x < edge || at.y < edge || at.x >= static_cast<float>(screen_.w) - edge ||
           at.y >= static_cast<float>(screen_.h) - edge;
}

bool FingerFilter::isNear(Point a, Point b) const {
    const float reach = screen_.mm_per_px > 0 ? kStillMm / screen_.mm_per_px : kStillPx;
    return std::hypot(a.x - b.x, a.y - b.y) <= reach;
}

bool FingerFilter::isBusy(Millis now) const {
    if (!playing_) return false;
    const bool only_rests = playing_->still && now - playing_->since >= kRestMillis;
    return !only_rests && now - playing_->heard < kLostMillis;
}

void FingerFilter::ignore(std::int64_t id) {
    if (std::find(ignored_.begin(), ignored_.end(), id) == ignored_.end()) ignored_.push_back(id);
}

Touch FingerFilter::cancelPlaying() {
    const Touch touch{Touch::Kind::cancel, playing_->last};
    playing_.reset();
    return touch;
}

}  // namespace wrenlet::game
