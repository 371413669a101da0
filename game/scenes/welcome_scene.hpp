// A short welcome: the child sees that it is her turn, and how the pond-side stands.
#pragma once

#include "content/pack/classroom.hpp"
#include "game/scenes/scene.hpp"
#include "game/session/growth.hpp"

namespace wrenlet::game {

class WelcomeScene final : public Scene {
  public:
    WelcomeScene(Setting setting, const Layout& layout, pack::Child child, Growth growth);

    std::string place() const override { return "welcome"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override { return std::nullopt; }
    void enter(Millis now) override;
    void step(Millis now) override;
    bool isMoving(Millis now) const override;
    std::optional<Millis> nextDue(Millis now) const override;

  private:
    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;
    Millis over() const;

    pack::Child child_;
    Growth growth_;
};

}  // namespace wrenlet::game
