// A monkey at the tablet: several fingers, palms, swipes from the edge, keys, turned and resized
// screens, a program that is closed at any moment. What it did is watched by a Witness, and every
// kept answer is held against that.
#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "content/common/random.hpp"
#include "tests/monkey/witness.hpp"
#include "tests/scenes/player.hpp"

namespace wrenlet::monkey {

class Monkey {
  public:
    /// Plays `pack` on a tablet whose store lies in `folder`.
    Monkey(std::filesystem::path folder, pack::Pack pack, std::uint64_t seed);
    ~Monkey();

    /// This many fingers and keys go down. Every `kCalmEvery` of them it goes away, and a child who
    /// knows has to come to the end of a session from there.
    void play(int touches);

    int answers() const { return static_cast<int>(rows_.size()); }
    int sessions() const { return sessions_; }  // brought to their end by a child
    int starts() const { return starts_; }      // of the program
    const std::vector<std::string>& complaints() const { return complaints_; }

    static constexpr int kCalmEvery = 400;

  private:
    void start();
    void act();
    void touchSomewhere();
    void moveSome();
    void liftSome();
    void pressSome();
    void turn();
    void pass(game::Millis millis);
    void deftChild(game::Millis millis);
    void calm();
    void adultComes();
    void finishByFinger();
    void finishByKeys();

    void contact(const game::Contact& contact);
    void key(game::Key key, bool down);
    /// Every answer that came since the last look was given, and every one given has come.
    void look(bool is_time);
    void compareWithStore();
    void complain(const std::string& what);

    std::uint32_t below(std::uint32_t bound) { return random_.below(bound); }
    bool chance(double share) { return random_.unit() < share; }
    game::Point anywhere();
    game::Point onSomething();
    game::App& app() { return player_->app(); }

    std::filesystem::path store_;
    pack::Pack pack_;
    Random random_;
    std::unique_ptr<fixtures::Player> player_;
    std::unique_ptr<Witness> witness_;
    game::ScreenSize screen_;
    std::vector<game::Contact> fingers_;  // on the glass
    std::vector<game::Key> keys_;         // held down
    std::vector<practice::Response> rows_;
    std::vector<std::string> complaints_;
    int touches_ = 0, sessions_ = 0, starts_ = 0;
    bool lazy_ = false;  // time passes as on a device: nothing is stepped that is not due
};

}  // namespace wrenlet::monkey
