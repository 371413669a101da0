// Who is playing? A page of badges, each a picture that a child knows as hers; nothing is typed.
#pragma once

#include "content/pack/classroom.hpp"
#include "game/scenes/scene.hpp"

namespace wrenlet::game {

class BadgeScene final : public Scene {
  public:
    /// `next` is the child whose turn it would be, for scripts; the page with her badge comes
    /// first. `list` must outlive it.
    BadgeScene(Setting setting, const Layout& layout, const pack::ClassList& list,
               std::string next);

    std::string place() const override { return "badges"; }
    std::vector<Thing> things() const override;
    std::optional<std::string> rightTouch() const override;
    void enter(Millis now) override;

  private:
    void tapped(const std::string& thing, Millis now) override;
    void pressed(const std::string& thing, Millis now) override;
    void drawGround(Painter& painter, Millis now) const override;
    void drawPieces(Painter& painter, Millis now) const override;

    Box withName(Box badge) const;
    std::size_t pages() const;
    std::size_t first() const;  // index of the page's first child
    std::size_t shown() const;  // badges on the page
    std::size_t perPage() const;

    const pack::ClassList& list_;
    std::string next_;
    std::size_t page_ = 0;
};

}  // namespace wrenlet::game
