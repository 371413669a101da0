// The game as it goes on, a step at a time, for whoever owns the loop: a thread that waits between
// steps natively, the browser in a web page.
#pragma once

#include <functional>
#include <optional>

#include "game/sdl/table.hpp"

namespace wrenlet::game {

class Playing {
  public:
    /// Shows the first frame, then opens the sound. `shown`: called after each frame that was
    /// looked at, drawn or not. The table must outlive it.
    explicit Playing(Table& table, std::function<void()> shown = {});

    /// Hands over the events that wait, does what is due, shows what has changed and uses an idle
    /// moment. Never waits. False once the window or an adult has closed it.
    bool step();
    /// How long nothing needs to be done, if no event comes. ms
    Millis rest() const;
    /// True when an event waits or something is to be done within `soon` ms: whoever is woken for
    /// each frame of a screen need not step() before.
    bool isDue(Millis soon) const;

  private:
    Millis now() const;
    void stand();

    Table& table_;
    std::function<void()> shown_;
    bool decoding_ = true;
    Millis last_frame_ = 0;
    Millis away_ = 0;                // time that stood still, and is not counted
    std::optional<Millis> stopped_;  // when it stopped
};

/// Plays on a screen until the window or an adult closes it.
void playOnScreen(Table& table, const std::function<void()>& shown = {});

}  // namespace wrenlet::game
