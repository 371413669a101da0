#include "game/scenes/key_scene.hpp"

#include <algorithm>
#include <array>

#include "content/exercise/phrases.hpp"
#include "content/pack/picture_key.hpp"
#include "game/scenes/prompts.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kSeen = 900;  // how long both are seen before anything becomes of them
constexpr int kMostMisses = 3;
constexpr float kSlot = 120, kPicture = 160;

std::string nameOf(std::string_view picture) {
    return "picture:" + std::string(picture);
}

std::string slotName(std::size_t slot) {
    return "slot:" + std::to_string(slot);
}

std::string artOf(std::string_view picture) {
    return "key-" + std::string(picture);
}

std::size_t placeOf(std::string_view picture) {
    const auto& all = pack::kKeyPictures;
    return static_cast<std::size_t>(std::find(all.begin(), all.end(), picture) - all.begin());
}

}  // namespace

KeyScene::KeyScene(Setting setting, const Layout& layout, pack::Child child)
    : Scene(setting, layout), child_(std::move(child)) {}

std::string KeyScene::place() const {
    if (!isFull()) return chosen_.empty() ? "key" : "key chosen";
    return isRight() ? "key right" : "key wrong";
}

KeyScene::Places KeyScene::places() const {
    const Box stage = layout_.stage(), below = layout_.pieces();
    const Box all = {stage.x, stage.y, stage.w, below.y + below.h - stage.y};
    const float gap = layout_.gap(), slot = layout_.touchPx(kSlot);
    constexpr std::size_t count = pack::kKeyPictures.size();

    // In rows of five or of three, whichever makes them larger.
    std::size_t columns = 0;
    float side = 0;
    for (const std::size_t tried : {5u, 3u}) {
        const auto across = static_cast<float>(tried);
        const auto down = static_cast<float>((count + tried - 1) / tried);
        const float fits =
            std::min({layout_.touchPx(kPicture), (all.w - gap * (across - 1)) / across,
                      (all.h - slot - gap * down) / down});
        if (fits <= side) continue;
        side = fits;
        columns = tried;
    }
    const std::size_t rows = (count + columns - 1) / columns;
    const float tall = slot + static_cast<float>(rows) * (gap + side);
    float y = all.y + (all.h - tall) / 2;

    Places places;
    const auto above = rowIn({all.x, y, all.w, slot}, 1 + child_.key.size(), slot, slot, gap);
    places.badge = above.front();
    places.slots.assign(above.begin() + 1, above.end());
    y += slot + gap;
    for (std::size_t first = 0; first < count; first += columns, y += side + gap) {
        const auto row =
            rowIn({all.x, y, all.w, side}, std::min(columns, count - first), side, side, gap);
        places.pictures.insert(places.pictures.end(), row.begin(), row.end());
    }
    return places;
}

std::vector<Thing> KeyScene::things() const {
    std::vector<Thing> all = {
        {"replay", layout_.replay()}, {"leave", layout_.leave()}, {"wren", layout_.wren()}};
    if (isFull()) return all;
    const Places at = places();
    for (std::size_t i = 0; i < chosen_.size(); ++i) all.push_back({slotName(i), at.slots[i]});
    for (std::size_t i = 0; i < at.pictures.size(); ++i) {
        const std::string_view picture = pack::kKeyPictures[i];
        if (std::find(chosen_.begin(), chosen_.end(), picture) == chosen_.end())
            all.push_back({nameOf(picture), at.pictures[i]});
    }
    return all;
}

std::optional<std::string> KeyScene::rightTouch() const {
    if (isFull()) return std::nullopt;
    for (std::size_t i = 0; i < chosen_.size(); ++i)
        if (chosen_[i] != child_.key[i]) return slotName(i);
    return nameOf(child_.key[chosen_.size()]);
}

void KeyScene::enter(Millis now) {
    Scene::enter(now);
    tell(Prompts(setting_.pack).phrase(exercise::phrase::kKeyAsk), now);
}

void KeyScene::pressed(const std::string& thing, Millis) {
    if (thing.rfind("picture:", 0) == 0) setting_.voice.cue("lift");
}

void KeyScene::tapped(const std::string& thing, Millis now) {
    if (thing == "replay" || thing == "wren") {
        const bool again = misses_ > 0;
        tell(Prompts(setting_.pack)
                 .phrase(again ? exercise::phrase::kKeyAgain : exercise::phrase::kKeyAsk),
             now);
    } else if (const auto slot = indexIn(thing, "slot"); slot && *slot < chosen_.size()) {
        giveBack(*slot, now);
        chosen_.erase(chosen_.begin() + static_cast<std::ptrdiff_t>(*slot));
    } else if (thing.rfind("picture:", 0) == 0) {
        choose(thing.substr(8), now);
    }
}

void KeyScene::choose(const std::string& picture, Millis now) {
    const Places at = places();
    glides_.begin(slotName(chosen_.size()), at.pictures[placeOf(picture)].centre(), kMove, now);
    chosen_.push_back(picture);
    full_since_ = now;
    setting_.voice.cue("settle");
}

void KeyScene::giveBack(std::size_t slot, Millis now) {
    glides_.begin(nameOf(chosen_[slot]), places().slots[slot].centre(), kMove, now);
}

void KeyScene::step(Millis now) {
    Scene::step(now);
    if (!isFull() || now < full_since_ + kSeen) return;
    if (isRight()) return wish({Wish::Kind::unlocked, child_.id});
    for (std::size_t slot = 0; slot < chosen_.size(); ++slot) giveBack(slot, now);
    chosen_.clear();
    if (++misses_ >= kMostMisses) return wish({Wish::Kind::badges});
    tell(Prompts(setting_.pack).phrase(exercise::phrase::kKeyAgain), now);
}

std::optional<Millis> KeyScene::nextDue(Millis now) const {
    auto due = Scene::nextDue(now);
    if (!isFull()) return due;
    const Millis seen = std::max(full_since_ + kSeen, now + 1);
    return due ? std::min(*due, seen) : seen;
}

void KeyScene::drawGround(Painter& painter, Millis now) const {
    painter.pond({});
    const bool hops = isFull() && isRight();
    drawWren(painter, hops ? "wren-hop" : telling_.isSounding(now) ? "wren-sing" : "wren-look");
}

void KeyScene::drawPieces(Painter& painter, Millis now) const {
    painter.reedsInFront();
    const Places at = places();
    painter.art(child_.badge, at.badge);
    // Which is the first and which the second is told by one pip and two.
    for (std::size_t slot = 0; slot < at.slots.size(); ++slot) {
        const Box& box = at.slots[slot];
        painter.panel(box, palette::kPaper, palette::kInk);
        const float pip = layout_.px(18);
        for (std::size_t i = 0; i <= slot; ++i)
            painter.pip(
                {box.centre().x +
                     (static_cast<float>(i) - static_cast<float>(slot) / 2) * pip * 1.5f - pip / 2,
                 box.centre().y - pip / 2, pip, pip},
                true);
    }
    for (std::size_t i = 0; i < at.pictures.size(); ++i) {
        const std::string_view picture = pack::kKeyPictures[i];
        const bool gone = std::find(chosen_.begin(), chosen_.end(), picture) != chosen_.end();
        if (gone) continue;
        const Point centre = glides_.at(nameOf(picture), at.pictures[i].centre(), now);
        painter.signCard(artOf(picture), movedTo(at.pictures[i], centre),
                         holds(nameOf(picture)) ? Stand::lifted : Stand::resting);
    }
    for (std::size_t slot = 0; slot < chosen_.size(); ++slot) {
        const Point centre = glides_.at(slotName(slot), at.slots[slot].centre(), now);
        painter.signCard(artOf(chosen_[slot]), movedTo(at.slots[slot], centre), Stand::resting);
    }
    if (isFull() && isRight()) painter.leafMark(at.slots.back());
    const Box replay = layout_.replay();
    painter.art("ctl-replay", holds("replay") ? replay.grown(replay.w * 0.02f) : replay);
    drawLeave(painter, now);
}

}  // namespace wrenlet::game
