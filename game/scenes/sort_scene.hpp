// Sort on the pond: homes told apart by their shape and headed by a picture card or a sign, and one
// card at a time to bring to the home where it belongs.
#pragma once

#include "game/rounds/sort_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class SortScene final : public RoundScene {
  public:
    SortScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

    bool goOn(Millis now) override;

  private:
    std::string_view mechanic() const override { return "sort"; }
    const Question& question() const override { return round_.question(); }
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
    void released(const Hand& hand, Millis now) override;
    void askedAnew(Millis now) override;
    void drawRound(Painter& painter, Millis now) const override;
    void drawExplained(Painter& painter, Millis now) const override;

    void put(std::size_t home, Point from, Millis now);
    void drawHome(Painter& painter, std::size_t home, Millis now) const;
    /// Where the card lies when it is home.
    Box inHome(const HomeBox& home) const;
    void drawExample(Painter& painter, int step, Millis now) const;
    void drawCard(Painter& painter, Millis now) const;
    bool isLifted() const { return chosen_ || holds("card"); }

    SortRound round_;
    const exercise::Item* example_;  // of the pack; null when it has none
    bool chosen_ = false;            // the card was tapped and waits for its home
    std::optional<Point> came_from_;
};

}  // namespace wrenlet::game
