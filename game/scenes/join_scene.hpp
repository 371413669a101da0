// Join on the pond: tiles of sounds or letters on lily pads that say their sound when touched and
// lean together when brought together, then picture cards on stones to pick the whole from.
#pragma once

#include "game/rounds/join_round.hpp"
#include "game/scenes/round_scene.hpp"

namespace wrenlet::game {

class JoinScene final : public RoundScene {
  public:
    JoinScene(Setting setting, const Layout& layout, Turn& turn, bool first_time);

  private:
    std::string_view mechanic() const override { return "join"; }
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
    void askedAnew(Millis) override { chosen_.reset(); }
    void drawRound(Painter& painter, Millis now) const override;
    void drawExplained(Painter& painter, Millis now) const override;

    std::vector<Box> tileSeats() const;
    /// Where a tile is now; the tiles that lean on a dragged one follow it.
    Box tileBox(std::size_t tile, Millis now) const;
    std::optional<std::size_t> heldTile() const;
    void bring(std::size_t tile, std::size_t other, Millis now);
    void drawExample(Painter& painter, int step, Millis now) const;
    void drawTiles(Painter& painter, Millis now) const;
    /// A sound's mark or a letter, whichever is joined.
    void drawTile(Painter& painter, std::size_t mark, const exercise::Part& part, const Box& box,
                  Stand stand) const;

    JoinRound round_;
    const exercise::Item* example_;      // of the pack; null when it has none
    std::optional<std::size_t> chosen_;  // the tile that was tapped
};

}  // namespace wrenlet::game
