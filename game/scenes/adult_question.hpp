// Between the child's screen and the adult's pages: a question that takes reading and a sum.
#pragma once

#include "game/scenes/scene.hpp"

namespace wrenlet::game {

/// A sum in words, with four numbers to choose from; a wrong one leads back to the child's screen.
class AdultQuestion final : public Scene {
  public:
    /// `seed` decides the sum.
    AdultQuestion(Setting setting, const Layout& layout, std::uint64_t seed);

    std::string place() const override { return "question"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override;

  private:
    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    std::string sum_;           // "seven and five"
    std::vector<int> numbers_;  // as they stand
    int right_ = 0;
};

}  // namespace wrenlet::game
