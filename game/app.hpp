// The child's program without a screen: badges, sessions, rounds, the ending, the adult's page.
// Fingers and time go in, frames and speech come out; the outer layer only carries them.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "content/common/clock.hpp"
#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "content/pack/pack.hpp"
#include "content/practice/scheduler.hpp"
#include "content/practice/store.hpp"
#include "game/stage/finger.hpp"
#include "game/stage/frame.hpp"
#include "game/stage/mark.hpp"
#include "game/stage/voice.hpp"
#include "game/start/tablet_settings.hpp"

namespace wrenlet::game {

struct AppOptions {
    std::optional<std::uint64_t> seed;  // of the next session; drawn from the clock when absent
    TabletSettings tablet{};            // until an adult sets it otherwise
    bool tries_out = false;  // begins with the pack's question, and is over when that is answered
};

/// What the app is handed. All must outlive it.
struct AppParts {
    const pack::ClassList& list;
    const pack::Pack& pack;
    practice::Store& store;
    const practice::Scheduler& scheduler;
    Voice& voice;
    const Clock& clock;                // the time of day, for rows; never for motion
    std::vector<Problem> problems;     // what went wrong at the start, for the adult's page
    std::filesystem::path snapshot;    // where the tablet's snapshot goes; empty: nowhere
    std::filesystem::path data{};      // where the store lies, for the adult's page
    std::filesystem::path settings{};  // where the tablet's settings are kept; empty: nowhere
};

/// The badges (or that the game is paused), as the app shows them before anything was heard or
/// touched. No pack is needed for that, so it is what a child can see while it is still being read.
Frame firstFrame(const pack::ClassList& list, ScreenSize screen, const TabletSettings& tablet = {});

class App {
  public:
    App(AppParts parts, AppOptions options, ScreenSize screen);
    ~App();

    void resize(ScreenSize screen, Millis now);
    void touch(const Contact& contact, Millis now);
    /// A key goes down or up. While the mark goes on by itself, a contact anywhere but on the way
    /// out is the switch too.
    void key(Key key, bool down, Millis now);
    /// Lets everything happen that is due at `now`. Time never runs backward.
    void step(Millis now);
    Frame frame(Millis now) const;
    /// True while something moves, so that frames are wanted at the screen's rate.
    bool isMoving(Millis now) const;
    /// The next moment at which step() has something to do, if nothing is touched before.
    std::optional<Millis> nextDue(Millis now) const;

    /// What is on the screen, in words, for scripts and tests: "badges", "sort: asked",
    /// "join: explain", "ending", "adult".
    std::string place() const;
    /// The box of a thing that can be touched now, by its name ("badge:c-01", "home:0", "card",
    /// "tile:1", "choice:hat", "acorn", "pad:2", "done", "replay", "leave"); none if not there.
    std::optional<Box> boxOf(std::string_view name) const;
    /// All such names that are on the screen now.
    std::vector<std::string> touchables() const;
    /// The thing that is marked for a touch by key or switch.
    std::optional<std::string> marked() const;
    /// What a child who knows the answer would touch next ("card", then "home:1"); nothing while
    /// there is only listening to do. A drag goes from one such thing to the one that follows it:
    /// a piece counts as lifted from the finger's down on it.
    std::optional<std::string> rightTouch() const;
    /// How the tablet is set now.
    const TabletSettings& settings() const;
    /// Of the running session: ms that were spent playing, pauses left out; 0 between sessions.
    Millis playedMs() const;
    /// The sequence of the newest answer that is kept; for scripts.
    std::int64_t newestAnswer() const;
    /// True once an adult has asked to close the program.
    bool wantsToClose() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace wrenlet::game
