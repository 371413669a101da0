// The ending of a turn: one twig for each round flies to the nest, and the pond-side has grown by
// what was done. Then it is the next child's turn.
#pragma once

#include "game/scenes/scene.hpp"
#include "game/session/growth.hpp"

namespace wrenlet::game {

class EndingScene final : public Scene {
  public:
    EndingScene(Setting setting, const Layout& layout, Growth before, Growth after, int rounds);

    std::string place() const override { return "ending"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override { return "nest"; }
    void enter(Millis now) override;
    void step(Millis now) override;
    bool isMoving(Millis now) const override;
    std::optional<Millis> nextDue(Millis now) const override;

  private:
    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;
    Millis built() const;  // when the last twig has come
    bool isOver(Millis now) const;

    Growth before_, after_;
    int twigs_;
};

}  // namespace wrenlet::game
