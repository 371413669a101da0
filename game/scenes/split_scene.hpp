// Split on the pond: a long leaf below the word's picture, that parts into boxes where it is
// tapped or pulled. The boxes are silent until the child has said that is all, for what is in them
// is the answer; then each says its part.
#pragma once

#include "game/rounds/split_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class SplitScene final : public RoundScene {
  public:
    SplitScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

  private:
    std::string_view mechanic() const override { return "split"; }
    const Question& question() const override { return round_.question(); }
    std::string_view soFar() const override { return round_.boxes() > 1 ? "parted" : ""; }
    Script askScript(Asking asking) const override;
    Script togetherScript() const override { return prompts_.together(round_); }
    Script explainScript() const override { return prompts_.explain(round_); }
    Script rightScript() const override { return prompts_.right(round_); }
    void explained() override { round_.explained(); }
    std::vector<Thing> pieces() const override;
    std::optional<std::string> rightPiece() const override;
    void tapPiece(const std::string& piece, Millis now) override;
    void pressed(const std::string& piece, Millis now) override;
    void dropped(const Hand& hand, Millis now) override;
    void drawRound(Painter& painter, Millis now) const override;
    void drawExplained(Painter& painter, Millis now) const override;

    std::vector<Box> boxes() const {
        return layout_.leaf(static_cast<std::size_t>(round_.boxes()));
    }
    std::optional<std::size_t> heldBox() const;
    void part(std::size_t box, Point from, Millis now);
    void join(std::size_t box, Millis now);
    void makeWhole(Millis now);
    void drawLeaf(Painter& painter, Millis now) const;
    /// What is pulled off the leaf follows the finger.
    void drawPulled(Painter& painter) const;
    void drawControls(Painter& painter) const;
    void drawExample(Painter& painter, int step, Millis now) const;

    SplitRound round_;
    const exercise::Item* example_;  // of the pack; null when it has none
};

}  // namespace wrenlet::game
