#include "game/scenes/ending_scene.hpp"

#include <algorithm>

#include "content/exercise/phrases.hpp"
#include "game/scenes/prompts.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kTwigAfter = 600, kTwigEvery = 260, kTwigFlight = 420;
constexpr Millis kStay = 20'000;  // then back to the badges by itself
constexpr int kMostTwigs = 12;

}  // namespace

EndingScene::EndingScene(Setting setting, const Layout& layout, Growth before, Growth after,
                         int rounds)
    : Scene(setting, layout),
      before_(before),
      after_(after),
      twigs_(std::clamp(rounds, 0, kMostTwigs)) {}

std::vector<Thing> EndingScene::things() const {
    return {{"leave", layout_.leave()}, {"wren", layout_.wren()}, {"nest", layout_.nest()}};
}

void EndingScene::enter(Millis now) {
    Scene::enter(now);
    const Prompts prompts(setting_.pack);
    Script script = prompts.phrase(exercise::phrase::kGoodbye);
    for (auto line : prompts.phrase(exercise::phrase::kNextChild)) {
        line.gap_before = 1200;
        script.push_back(line);
    }
    setting_.voice.cue("water");
    tell(script, now);
}

Millis EndingScene::built() const {
    return entered_ + kTwigAfter + kTwigEvery * std::max(0, twigs_ - 1) + kTwigFlight;
}

bool EndingScene::isOver(Millis now) const {
    return now >= std::max(telling_.end(), built()) + kStay;
}

void EndingScene::step(Millis now) {
    Scene::step(now);
    if (isOver(now)) wish({Wish::Kind::badges});
}

void EndingScene::tapped(const std::string& thing, Millis) {
    if (thing == "wren" || thing == "nest") wish({Wish::Kind::badges});
}

bool EndingScene::isMoving(Millis now) const {
    return Scene::isMoving(now) || (setting_.tablet.motion && now < built() + kSceneChange);
}

std::optional<Millis> EndingScene::nextDue(Millis now) const {
    const auto due = Scene::nextDue(now);
    const Millis end = std::max(std::max(telling_.end(), built()) + kStay, now + 1);
    return due ? std::min(*due, end) : end;
}

void EndingScene::drawGround(Painter& painter, Millis now) const {
    const bool grown = !setting_.tablet.motion || now >= built();
    painter.pond(grown ? after_ : before_);
    drawWren(painter, telling_.isSounding(now) ? "wren-sing" : "wren-rest");
}

void EndingScene::drawPieces(Painter& painter, Millis now) const {
    const Box nest = layout_.nest();
    const bool grown = !setting_.tablet.motion || now >= built();
    painter.grownNest(nest, grown ? after_ : before_);

    // Twigs lie beside the nest, where the wren will find them tomorrow.
    const float w = layout_.px(64), h = w / 2;
    for (int i = 0; i < twigs_; ++i) {
        const Millis begin = entered_ + kTwigAfter + kTwigEvery * i;
        if (setting_.tablet.motion && now < begin) break;
        const int column = i % 6, row = i / 6;
        const Point seat = {nest.centre().x + (static_cast<float>(column) - 2.5f) * w * 0.9f,
                            nest.y + nest.h + h * (0.9f + static_cast<float>(row))};
        const Point from = {layout_.wren().centre().x, layout_.wren().y};
        const Point at =
            setting_.tablet.motion ? between(from, seat, eased(begin, kTwigFlight, now)) : seat;
        painter.art("twig", {at.x - w / 2, at.y - h / 2, w, h});
    }
    drawLeave(painter, now);
    painter.reedsInFront();
}

}  // namespace wrenlet::game
