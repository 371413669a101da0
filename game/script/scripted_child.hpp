// A child made of chance: looks at what can be touched, thinks a while, and touches it, rightly or
// not, with palms and second fingers as they come. Plays whole sessions for tests, pictures and
// soaks; the same tape gives the same contacts.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/random.hpp"
#include "content/common/result.hpp"
#include "game/app.hpp"

namespace wrenlet::game {

/// How a scripted child plays; one JSON file.
struct Tape {
    std::uint64_t seed = 1;
    std::string child;           // who plays first; empty: whoever is next
    double right_share = 0.8;    // of answers that are right at the first try
    double drag_share = 0.5;     // of moves that are dragged; the others are tapped
    double palm_share = 0.1;     // of moves with a palm on the glass or a second finger
    double replay_share = 0.05;  // of moves before which everything is heard again
    double adult_share = 0;      // of moves before which the way out is held open
    int sessions = 1;
    int width = 1280, height = 800;  // px
    int most_minutes = 30;           // of the game's time, then the tape is stopped
};

/// Errors: broken JSON, a field out of its range or unknown.
Result<Tape> readTape(std::string_view json, std::string_view where);

class ScriptedChild {
  public:
    explicit ScriptedChild(const Tape& tape) : tape_(tape), random_(tape.seed) {}

    /// What touches the glass at `now`. Call it once a frame, 60 times a second.
    std::vector<Contact> tick(const App& app, Millis now);
    /// True when the tape's sessions have been played and the badges are shown again.
    bool isDone(const App& app) const;

  private:
    /// A move that takes several frames: each has a time and a contact.
    struct Due {
        Millis at;
        Contact contact;
    };

    void plan(const App& app, Millis now);
    void planTap(const App& app, const std::string& thing, Millis now);
    void planDrag(const App& app, const std::string& thing, Millis now);
    void planHold(const App& app, const std::string& thing, Millis now);
    void planPalm(Millis begin, Millis end);
    /// The right thing, or now and then another of its kind.
    std::string aim(const App& app, const std::string& right);
    Point inside(const Box& box);
    void at(Millis when, Contact::Kind kind, std::int64_t id, Point where);

    Tape tape_;
    Random random_;
    std::vector<Due> due_;                // in the order of time
    std::optional<Millis> next_move_;     // when it will have thought
    std::optional<std::string> dragged_;  // down on it; where to is decided at the next frame
    Point drag_from_;
    std::string place_;
    int ended_ = 0;
};

}  // namespace wrenlet::game
