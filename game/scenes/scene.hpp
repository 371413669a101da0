// What one screen of the game is: things that can be touched, something that is told, pieces that
// move. This part is the same for all: one finger presses, drags, taps and drops; the way out is
// held open; the wren sings, looks and hops.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/pack/pack.hpp"
#include "game/scenes/layout.hpp"
#include "game/scenes/motion.hpp"
#include "game/scenes/painter.hpp"
#include "game/scenes/telling.hpp"
#include "game/stage/finger.hpp"
#include "game/stage/voice.hpp"
#include "game/start/tablet_settings.hpp"

namespace wrenlet::game {

/// What every scene is given. All must outlive it.
struct Setting {
    Voice& voice;
    const pack::Pack& pack;
    TabletSettings tablet{};
};

/// Something that can be touched now.
struct Thing {
    std::string name;
    Box box;
    bool drags = false;
};

/// What a scene asks of the game: another scene, mostly.
struct Wish {
    enum class Kind : std::uint8_t {
        play,      // a child touched a badge
        unlocked,  // and the pictures of her key
        begin,     // the welcome is over
        go_on,     // a question is done
        badges,    // who is next?
        question,  // the way out was held open
        adult,     // the question was answered
        back,      // to what was left
        let_go,    // to the child, and no pause any more
        settings,  // how the tablet is set
        facts,     // how the tablet stands
        set,       // the tablet is set anew
        close,     // end the program
    };
    Kind kind;
    std::string child{};      // of play and unlocked
    TabletSettings tablet{};  // of set
};

inline constexpr Millis kHoldMillis = 1500;  // the way out

class Scene {
  public:
    Scene(Setting setting, const Layout& layout)
        : setting_(setting), layout_(layout), glides_(setting.tablet.motion) {}
    virtual ~Scene() = default;
    Scene(const Scene&) = delete;
    Scene& operator=(const Scene&) = delete;

    /// What is on the screen, in words: "sort: asked".
    virtual std::string place() const = 0;
    /// In the order in which they lie, the uppermost last.
    virtual std::vector<Thing> things() const = 0;
    /// The thing a child who knows would touch next.
    virtual std::optional<std::string> rightTouch() const = 0;

    /// The scene comes up, or comes back after the adult's page.
    virtual void enter(Millis now);
    virtual void step(Millis now);
    void touch(const Touch& touch, Millis now);
    /// The same for a child who touches things by their names (keys, a switch). There is one hand:
    /// what a finger holds no key lets go, and the other way round.
    void pressThing(std::string_view name, Millis now);
    void letGoThing(Touch::Kind kind, Millis now);
    bool isTelling(Millis now) const { return !telling_.isOver(now); }
    void resize(const Layout& layout);
    /// What an adult has chosen, from now on.
    void set(const TabletSettings& tablet);
    /// The pieces do not come up by and by: a child who starts the game sees them at once.
    void standAtOnce() { comes_up_ = false; }

    Frame frame(Millis now) const;
    virtual bool isMoving(Millis now) const;
    virtual std::optional<Millis> nextDue(Millis now) const;

    std::optional<Wish> takeWish();

  protected:
    /// What the finger holds down.
    struct Hand {
        Thing thing;
        Point from, at;
        Millis since = 0;
        bool drags = false;
        bool by_key = false;  // or by a switch
    };

    virtual void pressed(const std::string& /*thing*/, Millis /*now*/) {}
    virtual void tapped(const std::string& thing, Millis now) = 0;
    /// A drag that ended; the hand still tells where.
    virtual void dropped(const Hand& /*hand*/, Millis /*now*/) {}
    /// A piece that was pressed or carried, and let go of elsewhere.
    virtual void released(const Hand& /*hand*/, Millis /*now*/) {}
    /// The pond and what lives on it; then, on top, the pieces.
    virtual void drawGround(Painter& painter, Millis now) const = 0;
    virtual void drawPieces(Painter& painter, Millis now) const = 0;

    void tell(const Script& script, Millis now) { telling_.begin(setting_.voice, script, now); }
    void wish(Wish wish) { wish_ = std::move(wish); }
    bool holds(std::string_view thing) const { return hand_ && hand_->thing.name == thing; }
    /// True while what is held follows the finger.
    bool carries() const { return hand_ && hand_->thing.drags; }
    /// Where a piece is drawn that belongs at `seat`: there, on its way, or under the finger.
    Box placed(const std::string& piece, const Box& seat, Millis now) const;
    void drawLeave(Painter& painter, Millis now) const;
    void drawWren(Painter& painter, std::string_view pose, float lift = 0) const;
    /// 0 to 1 and back while the wren hops, from `begin` on.
    float hop(Millis begin, Millis now) const;

    Setting setting_;
    Layout layout_;
    Glides glides_;
    Telling telling_;
    std::optional<Hand> hand_;
    Millis entered_ = 0;

  private:
    void press(Point at, Millis now);
    void press(const Thing& thing, Point at, bool by_key, Millis now);
    void letGo(Touch::Kind kind, Millis now);
    bool comesUp() const { return comes_up_ && setting_.tablet.motion; }

    std::optional<Wish> wish_;
    bool comes_up_ = true;
};

/// The scene's box `box` moved so that its middle is at `centre`.
Box movedTo(const Box& box, Point centre);
/// "home:2" gives 2; nothing when `name` does not begin with `kind` and a colon, or has no number.
std::optional<std::size_t> indexIn(std::string_view name, std::string_view kind);

}  // namespace wrenlet::game
