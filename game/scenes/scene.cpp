#include "game/scenes/scene.hpp"

#include <algorithm>
#include <cmath>

#include "game/scenes/captions.hpp"

namespace wrenlet::game {
namespace {

constexpr float kSlop = 14;  // a tap may stray this far, in the look's px
constexpr float kPi = 3.14159265f;

}  // namespace

Box movedTo(const Box& box, Point centre) {
    return {centre.x - box.w / 2, centre.y - box.h / 2, box.w, box.h};
}

std::optional<std::size_t> indexIn(std::string_view name, std::string_view kind) {
    if (name.size() <= kind.size() + 1 || name.substr(0, kind.size()) != kind ||
        name[kind.size()] != ':')
        return std::nullopt;
    std::size_t index = 0;
    for (const char digit : name.substr(kind.size() + 1)) {
        if (digit < '0' || digit > '9') return std::nullopt;
        index = index * 10 + static_cast<std::size_t>(digit - '0');
    }
    return index;
}

void Scene::enter(Millis now) {
    entered_ = now;
}

void Scene::resize(const Layout& layout) {
    layout_ = layout;
    glides_.clear();
    hand_.reset();
}

void Scene::set(const TabletSettings& tablet) {
    if (tablet.motion != setting_.tablet.motion) glides_ = Glides(tablet.motion);
    setting_.tablet = tablet;
}

void Scene::press(Point at, Millis now) {
    const auto all = things();
    const auto found = std::find_if(all.rbegin(), all.rend(),
                                    [at](const Thing& thing) { return thing.box.contains(at); });
    if (found != all.rend()) press(*found, at, false, now);
}

void Scene::press(const Thing& thing, Point at, bool by_key, Millis now) {
    hand_ = Hand{thing, at, at, now, false, by_key};
    if (!setting_.tablet.drags) hand_->thing.drags = false;
    pressed(thing.name, now);
}

void Scene::pressThing(std::string_view name, Millis now) {
    if (hand_) return;
    for (const Thing& thing : things())
        if (thing.name == name) return press(thing, thing.box.centre(), true, now);
}

void Scene::letGoThing(Touch::Kind kind, Millis now) {
    if (hand_ && hand_->by_key) letGo(kind, now);
}

void Scene::touch(const Touch& touch, Millis now) {
    if (touch.kind == Touch::Kind::down) {
        if (!hand_) press(touch.at, now);
        return;
    }
    if (!hand_ || hand_->by_key) return;
    hand_->at = touch.at;
    const float strayed = std::hypot(touch.at.x - hand_->from.x, touch.at.y - hand_->from.y);
    if (hand_->thing.drags && strayed > layout_.px(kSlop)) hand_->drags = true;
    if (touch.kind != Touch::Kind::move) return letGo(touch.kind, now);
    const bool left = hand_->thing.name == "leave" && !hand_->thing.box.contains(touch.at);
    if (left) hand_.reset();
}

void Scene::letGo(Touch::Kind kind, Millis now) {
    const Hand hand = *hand_;
    hand_.reset();
    const Box reach = hand.thing.box.grown(layout_.px(kSlop));
    if (kind == Touch::Kind::up && hand.drags)
        dropped(hand, now);
    else if (kind == Touch::Kind::up && reach.contains(hand.at))
        tapped(hand.thing.name, now);
    else if (hand.thing.drags)
        released(hand, now);
}

void Scene::step(Millis now) {
    if (!holds("leave") || now < hand_->since + kHoldMillis) return;
    hand_.reset();
    wish({Wish::Kind::question});
}

std::optional<Wish> Scene::takeWish() {
    auto taken = std::move(wish_);
    wish_.reset();
    return taken;
}

bool Scene::isMoving(Millis now) const {
    const bool comes_up = comesUp() && now < entered_ + kSceneChange;
    return comes_up || glides_.isMoving(now) || holds("leave") || (hand_ && hand_->drags);
}

std::optional<Millis> Scene::nextDue(Millis now) const {
    auto due = telling_.nextChange(now);
    if (holds("leave")) {
        const Millis opens = hand_->since + kHoldMillis;
        due = due ? std::min(*due, opens) : opens;
    }
    return due;
}

Frame Scene::frame(Millis now) const {
    Painter painter(layout_);
    drawGround(painter, now);
    painter.setPresence(comesUp() ? eased(entered_, kSceneChange, now) : 1);
    drawPieces(painter, now);
    if (setting_.tablet.captions) {
        painter.setPresence(1);
        drawCaption(painter, layout_, captionOf(telling_, setting_.pack, now));
    }
    return painter.take();
}

Box Scene::placed(const std::string& piece, const Box& seat, Millis now) const {
    if (holds(piece) && carries()) {
        const Point centre = seat.centre();
        return movedTo(
            seat, {centre.x + hand_->at.x - hand_->from.x, centre.y + hand_->at.y - hand_->from.y});
    }
    return movedTo(seat, glides_.at(piece, seat.centre(), now));
}

void Scene::drawLeave(Painter& painter, Millis now) const {
    const Box box = layout_.leave();
    painter.art("ctl-leave", box.grown(-box.w * 0.14f), 0.85f);
    if (!holds("leave")) return;
    const Millis held = now - hand_->since;
    painter.ring(box, static_cast<int>(std::min<Millis>(24, held * 24 / kHoldMillis)),
                 palette::kInk);
}

void Scene::drawWren(Painter& painter, std::string_view pose, float lift) const {
    const Box box = layout_.wren();
    const float unit = box.w / 200;
    const Point foot = {box.centre().x, box.y + box.h * 0.92f};
    painter.facingArt("wren-perch",
                      {foot.x - 120 * unit, foot.y - 16 * unit, 240 * unit, 90 * unit});
    const float side = box.w * 0.96f;
    painter.facingArt(
        pose, {foot.x - side / 2, foot.y - side * 0.95f - layout_.px(26) * lift, side, side});
}

float Scene::hop(Millis begin, Millis now) const {
    if (!setting_.tablet.motion || now < begin || now >= begin + kHop) return 0;
    return std::sin(kPi * static_cast<float>(now - begin) / static_cast<float>(kHop));
}

}  // namespace wrenlet::game
