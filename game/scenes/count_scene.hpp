// Count on the pond: a sentence is heard, and for each of its words an acorn is laid on a pad; or a
// word, with its picture, and an acorn for each of its beats. The leaf in sun says that is all.
#pragma once

#include "game/rounds/count_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class CountScene final : public RoundScene {
  public:
    CountScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

  private:
    std::string_view mechanic() const override { return "count"; }
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
    void drawRound(Painter& painter, Millis now) const override;
    void drawExplained(Painter& painter, Millis now) const override;

    /// Nothing is shown of a sentence; a word has its picture.
    bool isOfWord() const { return question().item().skill.unit != exercise::Unit::sentence; }
    std::vector<Box> padBoxes() const;
    /// An acorn's box on a pad, and in the heap, where the ones to be laid wait.
    Box onPad(std::size_t pad) const;
    Box inHeap(std::size_t index) const;
    /// The acorn that is taken from the heap next.
    std::size_t nextInHeap() const;
    void lay(Point from, Millis now);
    void take(Millis now);
    void drawExample(Painter& painter, int step, Millis now) const;
    void drawPads(Painter& painter, Millis now) const;
    void drawHeap(Painter& painter, Millis now) const;

    CountRound round_;
    const exercise::Item* example_;  // of the pack; null when it has none
};

}  // namespace wrenlet::game
