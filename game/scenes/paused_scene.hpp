// The game is quiet: the wren rests, nothing is told and nothing answers but the way out, by which
// an adult lets the game go on.
#pragma once

#include "game/scenes/scene.hpp"

namespace wrenlet::game {

class PausedScene final : public Scene {
  public:
    PausedScene(Setting setting, const Layout& layout) : Scene(setting, layout) {}

    std::string place() const override { return "paused"; }
    std::vector<Thing> things() const override { return {{"leave", layout_.leave()}}; }
    std::optional<std::string> rightTouch() const override { return std::nullopt; }

  private:
    void tapped(const std::string& /*thing*/, Millis /*now*/) override {}
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;
};

}  // namespace wrenlet::game
