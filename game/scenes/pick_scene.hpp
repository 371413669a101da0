// Pick on the pond: what is asked stands on the stage, and two to four choices on stones below:
// pictures, letters or signs that a touch answers, or sounds that are heard at a first touch and
// answer at a second one or when they are brought to the stage.
#pragma once

#include "game/rounds/pick_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class PickScene final : public RoundScene {
  public:
    PickScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

  private:
    std::string_view mechanic() const override { return "pick"; }
    const Question& question() const override { return round_.question(); }
    std::string_view soFar() const override { return round_.chosen() ? "chosen" : ""; }
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
    void drawRound(Painter& painter, Millis now) const override;
    void drawExplained(Painter& painter, Millis now) const override;

    std::string nameAt(std::size_t place) const;
    std::optional<std::size_t> placeOf(const std::string& piece) const;
    /// How a question's pieces lie: an item's own, or an example's.
    struct Table {
        const exercise::Item& item;
        std::vector<Piece> heard, choices;  // in the order in which they lie
        std::size_t right;                  // place of the answer
        bool isOddOne() const { return item.skill.task == exercise::Task::odd_one_out; }
    };
    Table table() const;
    Table exampleTable() const;
    std::vector<Box> heardBoxes(const Table& table) const;
    /// The same, with room left for what belongs to it.
    std::vector<Box> besideBoxes(const Table& table) const;
    /// Where the ones that rhyme lie in their nest.
    Box mateBox(const Table& table, std::size_t mate) const;
    /// The right choice begins to go where it belongs; of an odd one out the others do.
    void settle(Millis now);
    /// Where the right choice goes to be with what is asked.
    Box foundBox(const Table& table) const;
    void drawStage(Painter& painter, const Table& table) const;
    void drawHeard(Painter& painter, Millis now) const;
    void drawChoices(Painter& painter, Millis now) const;
    void drawStone(Painter& painter, const Box& box) const;
    void drawExample(Painter& painter, int step, Millis now) const;
    /// What an example has found, on its way to where it belongs.
    void drawFound(Painter& painter, const Table& table, int step, Millis now) const;

    PickRound round_;
    const exercise::Item* example_;  // of the pack; null when it has none
};

}  // namespace wrenlet::game
