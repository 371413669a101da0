// Behind the way out, for adults alone: a question that takes reading, then a page that says how
// the tablet stands. Nothing of any child's results is shown here.
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

/// What the page tells, line by line.
struct AdultPage {
    std::string title;               // the class
    std::vector<std::string> facts;  // pack, tablet, where the data lies
    std::vector<std::string> words;  // problems, in words for an adult; none when all is well
};

class AdultScene final : public Scene {
  public:
    AdultScene(Setting setting, const Layout& layout, AdultPage page);

    std::string place() const override { return "adult"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override { return "back"; }

  private:
    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    AdultPage page_;
};

/// The next of the paces that the page offers, 0 (none) after the slowest.
Millis nextScanPace(Millis pace);

/// `text` in lines of at most `most` letters, broken between words.
std::vector<std::string> wrapped(std::string_view text, std::size_t most);

}  // namespace wrenlet::game
