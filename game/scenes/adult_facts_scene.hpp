// How the tablet stands, for an adult: the class, the pack, where everything lies, and what to look
// at, page by page where it is much. Nothing of any child's results is here.
#pragma once

#include "game/scenes/scene.hpp"

namespace wrenlet::game {

/// What is told.
struct AdultFacts {
    std::string title;               // the class
    std::vector<std::string> facts;  // pack, tablet, where the data lies
    std::vector<std::string> words;  // problems, in words for an adult; none when all is well
};

class AdultFactsScene final : public Scene {
  public:
    AdultFactsScene(Setting setting, const Layout& layout, AdultFacts facts);

    std::string place() const override { return "adult: facts"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override { return "back"; }

  private:
    /// A line as it is read.
    struct Said {
        std::string text;
        bool bold = false;
        bool is_berry = false;
    };
    std::vector<Said> lines() const;
    std::size_t linesAPage() const;
    std::size_t pages() const;
    /// What can be touched and what is written on it.
    std::vector<std::pair<std::string, std::string>> buttons() const;

    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    AdultFacts facts_;
    std::size_t page_ = 0;
};

}  // namespace wrenlet::game
