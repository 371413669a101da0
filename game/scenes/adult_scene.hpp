// The adult's page: what can be set for the children at this tablet, each thing with its state in
// words and in shape, and set at once when it is touched. Nothing of any child's results is here.
#pragma once

#include "game/scenes/adult_look.hpp"
#include "game/scenes/scene.hpp"

namespace wrenlet::game {

/// `settings` with the next state of what `thing` names: "volume", "motion", "hands", "side",
/// "minutes", "scan", "captions", "pause".
TabletSettings setOn(TabletSettings settings, std::string_view thing);

class AdultScene final : public Scene {
  public:
    /// `title`: of the class. `class_minutes`: of a session, where the tablet has none of its own.
    /// `to_look_at`: how many problems the facts tell of.
    AdultScene(Setting setting, const Layout& layout, std::string title, int class_minutes,
               std::size_t to_look_at);

    std::string place() const override { return "adult"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override { return "back"; }

  private:
    /// What stands where.
    struct Placed {
        Control control;
        Box box;
    };
    struct Page {
        Box title, caution;
        std::vector<Placed> controls;
    };
    Page page() const;
    std::vector<Control> controls() const;

    void tapped(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    std::string title_;
    int class_minutes_;
    std::size_t to_look_at_;
};

}  // namespace wrenlet::game
