// Change on the pond: a word as a row of tiles below its picture, one of them loose, or a new one
// waiting below. When it is taken away, put in or swapped, picture cards come up to pick what the
// row says now. The tiles that stay are silent until the child has answered once: what they say
// together is the answer.
#pragma once

#include "game/rounds/change_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class ChangeScene final : public RoundScene {
  public:
    ChangeScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

    bool goOn(Millis now) override;

  private:
    /// A tile as it lies in the row, or the gap where one is to come.
    struct Seat {
        std::string name;  // "tile:2", "loose", "new", "gap"
        std::size_t mark = 1;
        Box box{};
    };

    std::string_view mechanic() const override { return "change"; }
    const Question& question() const override { return round_.question(); }
    std::string_view soFar() const override { return round_.isChanged() ? "changed" : ""; }
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

    std::vector<Seat> row(const exercise::ChangeTiles& tiles, bool taken, bool put) const;
    std::vector<Seat> row() const { return row(round_.tiles(), round_.isTaken(), round_.isPut()); }
    /// Where a tile lies that is not in the row.
    Box outside(const std::string& name) const;
    /// Takes the loose tile out or puts the new one in; it comes from where it was dropped.
    void change(const std::string& piece, Point from, Millis now);
    void say(const std::string& piece, Millis now);
    void drawSubject(Painter& painter, Millis now) const;
    void drawRow(Painter& painter, Millis now) const;
    void drawOutside(Painter& painter, Millis now) const;
    void drawExample(Painter& painter, ChangeStep step, Millis now) const;
    /// A tile beside a word that is explained.
    struct Told {
        std::size_t mark = 1;
        bool decides = false;  // the bracket stays below it
        bool gone = false;     // taken away: drawn, not said
    };
    std::vector<Told> explainedTiles(int pair) const;
    void drawExplainedRow(Painter& painter, int pair, Millis now) const;
    /// A mark that no tile beside the new one has.
    static std::size_t markOfNew(const exercise::ChangeTiles& tiles);
    /// That of the tile of the asked words that sounds alike; 0 if there is none.
    std::size_t markOf(const exercise::Part& part) const;

    ChangeRound round_;
    const exercise::Item* example_;  // of the pack; null when it has none
};

}  // namespace wrenlet::game
