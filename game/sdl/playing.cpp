#include "game/sdl/playing.hpp"

#include <SDL.h>

#include <algorithm>
#include <utility>

namespace wrenlet::game {

namespace {

constexpr Millis kFrameMillis = 16;
constexpr Millis kLongestWait = 60'000;

}  // namespace

Playing::Playing(Table& table, std::function<void()> shown)
    : table_(table), shown_(std::move(shown)) {
    table_.canvas().show(table_.app().frame(now()), table_.screen());
    table_.openSound();
}

Millis Playing::now() const {
    return stopped_ ? *stopped_ : static_cast<Millis>(SDL_GetTicks64()) - away_;
}

/// Stops the time, or lets it go on, as the table asks.
void Playing::stand() {
    if (table_.isStill() == stopped_.has_value()) return;
    if (!stopped_) {
        stopped_ = now();
        return;
    }
    away_ = static_cast<Millis>(SDL_GetTicks64()) - *stopped_;
    stopped_.reset();
}

bool Playing::step() {
    stand();
    if (!table_.handleAll(now())) return false;
    stand();
    if (stopped_) return true;
    last_frame_ = now();
    table_.show(last_frame_);
    if (shown_) shown_();
    if (decoding_ && !table_.isStill() && !table_.app().isMoving(now()))
        decoding_ = table_.clips().decodeOne();
    return !table_.app().wantsToClose();
}

Millis Playing::rest() const {
    if (stopped_) return kLongestWait;
    const Millis at = now();
    if (table_.app().isMoving(at))
        return std::clamp<Millis>(last_frame_ + kFrameMillis - at, 0, 16);
    if (decoding_) return 0;
    const auto due = table_.app().nextDue(at);
    return due ? std::clamp<Millis>(*due - at, 0, kLongestWait) : kLongestWait;
}

bool Playing::isDue(Millis soon) const {
    return rest() <= soon || SDL_HasEvents(SDL_FIRSTEVENT, SDL_LASTEVENT) == SDL_TRUE;
}

void playOnScreen(Table& table, const std::function<void()>& shown) {
    Playing playing(table, shown);
    while (playing.step()) SDL_WaitEventTimeout(nullptr, static_cast<int>(playing.rest()));
}

}  // namespace wrenlet::game
