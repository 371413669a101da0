// After her badge a child touches the two pictures of her key, one after the other, out of a few
// that are always the same and always in the same place. Three times wrong leads back to the
// badges: it may have been another child's.
#pragma once

#include <vector>

#include "content/pack/classroom.hpp"
#include "game/scenes/scene.hpp"

namespace wrenlet::game {

class KeyScene final : public Scene {
  public:
    /// REQUIRES: the child has a key.
    KeyScene(Setting setting, const Layout& layout, pack::Child child);

    std::string place() const override;
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override;
    void enter(Millis now) override;
    void step(Millis now) override;
    std::optional<Millis> nextDue(Millis now) const override;

  private:
    /// What stands where: her badge and the two empty places above, the pictures below.
    struct Places {
        Box badge;
        std::vector<Box> slots, pictures;
    };
    Places places() const;

    void tapped(const std::string& thing, Millis now) override;
    void pressed(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    bool isFull() const { return chosen_.size() == child_.key.size(); }
    bool isRight() const { return chosen_ == child_.key; }
    void choose(const std::string& picture, Millis now);
    /// The picture of a slot goes back to where it lies.
    void giveBack(std::size_t slot, Millis now);

    pack::Child child_;
    std::vector<std::string> chosen_;
    Millis full_since_ = 0;
    int misses_ = 0;
};

}  // namespace wrenlet::game
