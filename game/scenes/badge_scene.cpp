#include "game/scenes/badge_scene.hpp"

#include <algorithm>
#include <utility>

#include "content/exercise/phrases.hpp"
#include "game/scenes/prompts.hpp"

namespace wrenlet::game {

BadgeScene::BadgeScene(Setting setting, const Layout& layout, const pack::ClassList& list,
                       std::string next)
    : Scene(setting, layout), list_(list), next_(std::move(next)) {
    for (std::size_t i = 0; i < list_.children.size(); ++i)
        if (list_.children[i].id == next_) page_ = i / perPage();
}

std::size_t BadgeScene::perPage() const {
    return layout_.badgesPerPage(list_.children.size());
}

std::size_t BadgeScene::pages() const {
    return std::max<std::size_t>(1, (list_.children.size() + perPage() - 1) / perPage());
}

std::size_t BadgeScene::first() const {
    return page_ % pages() * perPage();
}

std::size_t BadgeScene::shown() const {
    return std::min(perPage(), list_.children.size() - std::min(first(), list_.children.size()));
}

// The name is touched as the badge is, and stands within the frame that marks it.
Box BadgeScene::withName(Box badge) const {
    badge.h += layout_.px(26);
    return badge;
}

std::vector<Thing> BadgeScene::things() const {
    std::vector<Thing> all = {
        {"replay", layout_.replay()}, {"leave", layout_.leave()}, {"wren", layout_.wren()}};
    const auto boxes = layout_.badges(shown());
    for (std::size_t i = 0; i < boxes.size(); ++i)
        all.push_back({"badge:" + list_.children[first() + i].id, withName(boxes[i])});
    if (pages() > 1) all.push_back({"page", layout_.nextPage()});
    return all;
}

std::optional<std::string> BadgeScene::rightTouch() const {
    if (list_.children.empty()) return std::nullopt;
    for (std::size_t i = first(); i < first() + shown(); ++i)
        if (list_.children[i].id == next_) return "badge:" + next_;
    return pages() > 1 ? "page" : "badge:" + list_.children[first()].id;
}

void BadgeScene::enter(Millis now) {
    Scene::enter(now);
    tell(Prompts(setting_.pack).phrase(exercise::phrase::kWho), now);
}

void BadgeScene::pressed(const std::string& thing, Millis) {
    if (thing != "leave") setting_.voice.cue("lift");
}

void BadgeScene::tapped(const std::string& thing, Millis now) {
    if (thing == "replay" || thing == "wren")
        tell(Prompts(setting_.pack).phrase(exercise::phrase::kWho), now);
    else if (thing == "page")
        page_ = (page_ + 1) % pages();
    else if (thing.rfind("badge:", 0) == 0)
        wish({Wish::Kind::play, thing.substr(6)});
}

void BadgeScene::drawGround(Painter& painter, Millis now) const {
    painter.pond({});
    drawWren(painter, telling_.isSounding(now) ? "wren-sing" : "wren-look");
}

void BadgeScene::drawPieces(Painter& painter, Millis now) const {
    const auto boxes = layout_.badges(shown());
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const auto& child = list_.children[first() + i];
        const Box& box = boxes[i];
        painter.art(child.badge, holds("badge:" + child.id) ? box.grown(box.w * 0.02f) : box);
        painter.text(child.name, {box.centre().x, box.y + box.h + layout_.px(15)}, layout_.px(26));
    }
    if (list_.children.empty())
        painter.text("No children yet: the teacher adds them at the desk.",
                     layout_.stage().centre(), layout_.px(28));
    if (pages() > 1) {
        const Box box = layout_.nextPage();
        painter.panel(box, palette::kCard, palette::kInk);
        painter.art("leaf-mark", box.grown(-box.w * 0.2f));
    }
    painter.art("ctl-replay", layout_.replay());
    drawLeave(painter, now);
}

}  // namespace wrenlet::game
