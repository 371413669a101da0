#include "game/scenes/round_scene.hpp"

#include <algorithm>
#include <cmath>

#include "game/scenes/change_scene.hpp"
#include "game/scenes/count_scene.hpp"
#include "game/scenes/join_scene.hpp"
#include "game/scenes/pick_scene.hpp"
#include "game/scenes/sort_scene.hpp"
#include "game/scenes/split_scene.hpp"

namespace wrenlet::game {
namespace {

constexpr Millis kAfterRight = 500, kAfterExplained = 900;
constexpr Millis kHintAfter = 15'000, kHint = 1400;
constexpr int kMostHints = 3;
constexpr Millis kExampleMove = 450;

}  // namespace

RoundScene::RoundScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : Scene(setting, layout),
      prompts_(setting.pack),
      turn_(turn),
      first_time_(first_time),
      growth_(turn.growth(false)) {}

std::string RoundScene::place() const {
    static constexpr std::string_view kPhases[] = {"asked", "explain", "together", "right"};
    std::string place = std::string(mechanic()) + ": ";
    if (isOpen() && shows_example_) return place + "example";
    place += kPhases[static_cast<std::size_t>(question().phase())];
    if (isOpen() && !soFar().empty()) place += " " + std::string(soFar());
    return place;
}

std::vector<Thing> RoundScene::things() const {
    std::vector<Thing> all = {
        {"replay", layout_.replay()}, {"leave", layout_.leave()}, {"wren", layout_.wren()}};
    if (!isOpen()) return all;
    if (shows_example_) {
        const Box stage = layout_.stage(), below = layout_.pieces();
        all.push_back({"example", {stage.x, stage.y, stage.w, below.y + below.h - stage.y}});
        return all;
    }
    for (auto& piece : pieces()) all.push_back(std::move(piece));
    return all;
}

std::optional<std::string> RoundScene::rightTouch() const {
    return isOpen() && !shows_example_ ? rightPiece() : std::nullopt;
}

void RoundScene::enter(Millis now) {
    Scene::enter(now);
    if (isExplaining()) {
        tell(explainScript(), now);
    } else if (isRight()) {
        tell(rightScript(), now);
        right_at_ = now;
    } else {
        const bool again = question().tryNumber() > 1;
        // Who comes back from the adult's page has seen the example, unless she was seeing it.
        const bool is_new = first_time_ && (!was_entered_ || shows_example_);
        ask(again ? Asking::again : is_new ? Asking::first_time : Asking::first, now);
    }
    was_entered_ = true;
}

void RoundScene::ask(Asking asking, Millis now) {
    asking_ = asking;
    Script script = isTogether() ? togetherScript() : askScript(asking);
    if (asking != Asking::again && turn_.remindsToListen()) script = prompts_.listenAgain(script);
    prompt(script, now);
    askedAnew(now);
}

void RoundScene::prompt(const Script& script, Millis now) {
    tell(script, now);
    turn_.beat(now);
    hearings_ = 1;
    prompt_end_ = telling_.end();
    seeExample(now);
    hints_left_ = kMostHints;
    rest(telling_.end());
}

void RoundScene::murmur(const Script& script, Millis now) {
    prompt_end_ = std::min(prompt_end_, now);  // what cuts a prompt short ends it
    tell(script, now);
    turn_.beat(now);
    seeExample(now);
    rest(telling_.end());
}

void RoundScene::hearAgain(Millis now) {
    if (isRight()) return;
    if (isExplaining()) {
        tell(explainScript(), now);
        return;
    }
    ++hearings_;
    const bool as_it_was = asking_ == Asking::next || asking_ == Asking::first_time;
    const Asking asking = as_it_was ? asking_ : Asking::first;
    murmur(isTogether() ? togetherScript() : askScript(asking), now);
}

void RoundScene::answered(const Outcome& outcome, Millis now) {
    if (outcome.kind != Outcome::Kind::answered) return;
    turn_.beat(now);
    turn_.record({outcome.choice, hearings_, std::max<Millis>(0, now - prompt_end_)});
    setting_.voice.cue("settle");
    if (outcome.right) {
        right_at_ = now;
        tell(rightScript(), now);
    } else {
        tell(explainScript(), now);
    }
}

void RoundScene::tapped(const std::string& thing, Millis now) {
    turn_.beat(now);
    if (thing == "replay" || thing == "wren")
        hearAgain(now);
    else if (thing == "example")
        prompt(askScript(Asking::first), now);  // she has seen enough of it
    else if (thing != "leave" && isOpen())
        tapPiece(thing, now);
}

void RoundScene::rest(Millis now) {
    hint_at_ = now + kHintAfter;
}

Millis RoundScene::settledAt() const {
    return std::max(telling_.end(), right_at_ + kHop) + kAfterRight;
}

void RoundScene::step(Millis now) {
    Scene::step(now);
    if (!telling_.isOver(now)) turn_.beat(now);
    seeExample(now);
    if (isExplaining() && now >= telling_.end() + kAfterExplained) {
        explained();
        ask(Asking::again, now);
    }
    if (isRight() && now >= settledAt()) wish({Wish::Kind::go_on});
    if (isOpen() && hints_left_ > 0 && now >= hint_at_ + kHint) {
        --hints_left_;
        hint_at_ = now + kHintAfter;
    }
}

std::optional<Millis> RoundScene::nextDue(Millis now) const {
    auto due = Scene::nextDue(now);
    const auto consider = [&](Millis moment) {
        moment = std::max(moment, now + 1);
        due = due ? std::min(*due, moment) : moment;
    };
    if (isExplaining()) consider(telling_.end() + kAfterExplained);
    if (isRight()) consider(settledAt());
    if (isOpen() && hints_left_ > 0) consider(now < hint_at_ ? hint_at_ : hint_at_ + kHint);
    return due;
}

bool RoundScene::isMoving(Millis now) const {
    if (Scene::isMoving(now)) return true;
    if (!setting_.tablet.motion) return false;
    if (exampleStep(now) && exampleMotion(now) < 1) return true;
    return hint(now) > 0 || (isRight() && now < right_at_ + kHop);
}

bool RoundScene::isOpen() const {
    return question().phase() == Question::Phase::asked || isTogether();
}

std::optional<int> RoundScene::exampleStep(Millis now) const {
    const Show show = telling_.show(now);
    return show.kind == Show::Kind::example ? std::optional(show.index) : std::nullopt;
}

float RoundScene::exampleMotion(Millis now) const {
    return setting_.tablet.motion ? eased(telling_.shownSince(now), kExampleMove, now) : 1;
}

void RoundScene::drawTouched(Painter& painter, Point at, Millis now) const {
    constexpr float kSteps = 5;  // of its growth: each size is baked once
    const float part = exampleMotion(now);
    if (part >= 1) return;
    const float side = layout_.px(56 + 56 * std::floor(part * kSteps) / kSteps);
    painter.ring({at.x - side / 2, at.y - side / 2, side, side}, 24, palette::kInk);
}

float RoundScene::hint(Millis now) const {
    Millis since = -1;
    if (telling_.show(now).moves)
        since = now - telling_.shownSince(now);
    else if (isOpen() && hints_left_ > 0 && now >= hint_at_)
        since = now - hint_at_;
    if (since < 0 || since >= kHint || hand_) return 0;
    if (!setting_.tablet.motion) return 1;  // the same by a cut
    const float part = static_cast<float>(since) / static_cast<float>(kHint);
    return std::fabs(std::sin(part * 2 * 3.14159265f));
}

Box RoundScene::explainPaper() const {
    const Box area = layout_.stage();
    const float w = std::min(area.w, layout_.px(760));
    return {area.centre().x - w / 2, area.y, w,
            area.h + (layout_.isPortrait() ? layout_.gap() / 2 : 0)};
}

Box RoundScene::explainRow(int pair) const {
    const Box paper = explainPaper().grown(-layout_.px(16));
    const float h = paper.h / 2;
    return {paper.x, paper.y + h * static_cast<float>(pair), paper.w, h};
}

void RoundScene::drawPaper(Painter& painter) const {
    painter.panel(explainPaper(), palette::kPaper, palette::kDeep);
}

std::string RoundScene::pictureOf(std::string_view word) const {
    const auto* entry = setting_.pack.vocabulary.word(word);
    return entry != nullptr ? entry->picture : std::string();
}

void RoundScene::drawSubjectCard(Painter& painter, const Box& box, Stand stand, Millis now) const {
    const bool said = telling_.show(now).kind == Show::Kind::subject && telling_.isSounding(now);
    painter.pictureCard(pictureOf(question().item().subject), box,
                        said || holds("word") ? Stand::lifted : stand);
    if (said) painter.speaking(box);
}

const std::string& RoundScene::wordAt(std::size_t place) const {
    return question().item().choices[question().choiceAt(place)].id;
}

void RoundScene::drawChoices(Painter& painter, Millis now) const {
    const Show show = telling_.show(now);
    const auto stones = layout_.stones(question().places());
    for (std::size_t place = 0; place < stones.size(); ++place) {
        const std::string name = "choice:" + wordAt(place);
        const Box box = movedTo(stones[place], glides_.at(name, stones[place].centre(), now));
        const float w = box.w * 1.24f, h = w * 70 / 220;
        painter.art("stone", {box.centre().x - w / 2, box.y + box.h - h * 0.58f, w, h});
        const bool shown = show.kind == Show::Kind::place && show.index == static_cast<int>(place);
        const bool is_it = place == question().rightPlace();
        const bool off = (isTogether() || isRight()) && !is_it;
        if (isTogether() && is_it) painter.sunBelow(box, 24);
        painter.pictureCard(pictureOf(wordAt(place)), box,
                            off                    ? Stand::done
                            : shown || holds(name) ? Stand::lifted
                                                   : Stand::resting);
        if (shown && telling_.isSounding(now)) painter.speaking(box);
        if (isRight() && is_it) painter.leafMark(box);
    }
}

void RoundScene::drawGround(Painter& painter, Millis now) const {
    painter.pond(growth_);
    const bool hops = isRight() && now < right_at_ + kHop;
    const bool sounds = telling_.isSounding(now);
    const char* pose = hops       ? "wren-hop"
                       : sounds   ? "wren-sing"
                       : isOpen() ? "wren-look"
                                  : "wren-rest";
    drawWren(painter, pose, isRight() ? hop(right_at_, now) : 0);
}

void RoundScene::drawPieces(Painter& painter, Millis now) const {
    painter.reedsInFront();  // in front of the pond, and never over a piece
    drawRound(painter, now);
    if (isExplaining()) {
        drawPaper(painter);
        drawExplained(painter, now);
    }
    const Box replay = layout_.replay();
    painter.art("ctl-replay", holds("replay") ? replay.grown(replay.w * 0.02f) : replay);
    drawLeave(painter, now);
}

std::unique_ptr<RoundScene> makeRound(Setting setting, const Layout& layout, Turn& turn,
                                      bool first_time) {
    switch (exercise::mechanicOf(turn.question().item())) {
        case exercise::Mechanic::sort:
            return std::make_unique<SortScene>(setting, layout, turn, first_time);
        case exercise::Mechanic::join:
            return std::make_unique<JoinScene>(setting, layout, turn, first_time);
        case exercise::Mechanic::split:
            return std::make_unique<SplitScene>(setting, layout, turn, first_time);
        case exercise::Mechanic::change:
            return std::make_unique<ChangeScene>(setting, layout, turn, first_time);
        case exercise::Mechanic::pick:
            return std::make_unique<PickScene>(setting, layout, turn, first_time);
        case exercise::Mechanic::count:
            break;
    }
    return std::make_unique<CountScene>(setting, layout, turn, first_time);
}

}  // namespace wrenlet::game
