// Watches a hand beside the game: what came down on what, by which finger or key, and where it was
// lifted. It knows the game's public face and the rules of a hand alone, so it can say of a kept
// answer whether anybody gave it.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "content/practice/response.hpp"
#include "game/app.hpp"

namespace wrenlet::monkey {

class Witness {
  public:
    /// `tablet`: as it is set, until an adult's page comes up, where that may change.
    Witness(game::ScreenSize screen, const game::TabletSettings& tablet)
        : screen_(screen), scans_(tablet.scan_pace > 0), taps_only_(!tablet.drags) {}

    /// Each is told before the app is.
    void contact(const game::Contact& contact, const game::App& app, game::Millis now);
    void key(game::Key key, bool down, const game::App& app, game::Millis now);
    void resized(game::ScreenSize screen);
    /// Something else happens: what was done before has had its effect.
    void otherwise() { done_.clear(); }

    /// Why nobody can have given this answer just now; empty when somebody did.
    std::string doubts(const practice::Response& response) const;
    /// True when what was done last, by one hand alone, has to be kept as an answer.
    bool hasAnswered() const;
    /// The mark may be going on by itself.
    bool mayScan() const { return scans_; }
    /// What was done last, in words.
    std::string told() const;

  private:
    struct Lying {
        std::string name;
        game::Box box;
    };
    /// What could be touched at a moment.
    struct Seen {
        std::string place;
        std::vector<Lying> things;  // the uppermost last
        std::optional<std::string> marked;

        const Lying* at(game::Point point) const;
        const Lying* named(std::string_view name) const;
    };
    /// One finger on the glass, or a key that is held.
    struct Held {
        game::Point from, last;
        game::Millis since = 0, heard = 0;
        bool rests = true;     // where it came down
        bool strayed = false;  // further than a tap may
        bool plays = false;
        bool alone = true;                 // nothing else was done meanwhile
        game::Key key = game::Key::touch;  // of a key
        Seen seen;                         // when it came down
        std::string thing;                 // under it then
    };
    struct Done {
        Held held;
        game::Point at;
        Seen seen;  // when it was lifted
        int counted = 0;
        bool is_key = false;  // or the switch
    };

    static Seen look(const game::App& app);
    void down(const game::Contact& contact, Seen seen, game::Millis now);
    void lift(Held held, game::Point at, bool is_key, const game::App& app, game::Millis now);
    void disturb();
    bool beginsAtEdge(game::Point at) const;
    float reach(float length) const;
    /// What the child has laid or parted, as it is seen.
    int counted(const Seen& seen, const game::App& app, game::Millis now) const;
    /// The answer that this gives; nothing when it gives none. `order`: the choices as they stand.
    std::optional<std::string> answerOf(const Done& done,
                                        const std::vector<std::string>& order) const;
    std::optional<std::string> dropped(const Done& done,
                                       const std::vector<std::string>& order) const;

    game::ScreenSize screen_;
    bool scans_;      // it may be that a contact anywhere is the switch
    bool taps_only_;  // it may be that nothing is dragged
    std::map<std::int64_t, Held> fingers_;
    std::optional<Held> key_;
    std::map<std::int64_t, Held> switched_;  // pressed by the contact that is the switch
    std::vector<Done> done_;
    std::set<std::string> children_;  // whose badge was touched; where that is in doubt, all
};

}  // namespace wrenlet::monkey
