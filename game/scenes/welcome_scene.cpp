#include "game/scenes/welcome_scene.hpp"

#include <algorithm>
#include <utility>

#include "content/exercise/phrases.hpp"
#include "game/scenes/prompts.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kLeast = 1200, kAfter = 300;

}  // namespace

WelcomeScene::WelcomeScene(Setting setting, const Layout& layout, pack::Child child, Growth growth)
    : Scene(setting, layout), child_(std::move(child)), growth_(growth) {}

std::vector<Thing> WelcomeScene::things() const {
    return {{"leave", layout_.leave()}, {"nest", layout_.nest()}};
}

void WelcomeScene::enter(Millis now) {
    Scene::enter(now);
    tell(Prompts(setting_.pack).phrase(exercise::phrase::kHello), now);
}

Millis WelcomeScene::over() const {
    return std::max(telling_.end() + kAfter, entered_ + kLeast);
}

void WelcomeScene::step(Millis now) {
    Scene::step(now);
    if (now >= over() && !hand_) wish({Wish::Kind::begin});
}

void WelcomeScene::tapped(const std::string& thing, Millis) {
    if (thing == "nest") wish({Wish::Kind::begin});
}

bool WelcomeScene::isMoving(Millis now) const {
    return Scene::isMoving(now) || (setting_.tablet.motion && now < entered_ + kHop);
}

std::optional<Millis> WelcomeScene::nextDue(Millis now) const {
    const auto due = Scene::nextDue(now);
    const Millis end = std::max(over(), now + 1);
    return due ? std::min(*due, end) : end;
}

void WelcomeScene::drawGround(Painter& painter, Millis now) const {
    painter.pond(growth_);
    const bool hops = now < entered_ + kHop;
    drawWren(painter,
             hops                       ? "wren-hop"
             : telling_.isSounding(now) ? "wren-sing"
                                        : "wren-rest",
             hop(entered_, now));
}

void WelcomeScene::drawPieces(Painter& painter, Millis now) const {
    const Box nest = layout_.nest();
    painter.grownNest(nest, growth_);
    const float side = nest.w * 0.46f;
    const Box badge = {nest.centre().x - side / 2, nest.y - side * 0.75f, side, side};
    painter.art(child_.badge, badge);
    painter.text(child_.name, {badge.centre().x, badge.y - layout_.px(22)}, layout_.px(32));
    drawLeave(painter, now);
    painter.reedsInFront();
}

}  // namespace wrenlet::game
