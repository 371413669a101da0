#include "game/scenes/sort_scene.hpp"

#include <cmath>

namespace wrenlet::game {
namespace {

constexpr std::string_view kShapes[] = {"home-nest", "home-basket", "home-log"};
constexpr float kReach = 70;  // how far beside a home a card may be dropped, in the look's px

}  // namespace

SortScene::SortScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question(), turn.sorted()),
      example_(prompts_.exampleFor(turn.question().item())) {}

Script SortScene::askScript(Asking asking) const {
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

bool SortScene::goOn(Millis now) {
    if (!round_.goesOnWith(turn_.question()) || turn_.sorted().empty()) return false;
    round_.goOn(turn_.question());
    const Box seat = layout_.card();
    glides_.begin("card", {seat.centre().x, layout_.height() + seat.h}, kLean, now);
    ask(Asking::next, now);
    return true;
}

std::vector<Thing> SortScene::pieces() const {
    std::vector<Thing> all;
    const auto homes = layout_.homes(round_.homes());
    for (std::size_t i = 0; i < homes.size(); ++i)
        if (round_.canPut(i)) all.push_back({"home:" + std::to_string(i), homes[i].all});
    all.push_back({"card", layout_.card(), true});
    return all;
}

std::optional<std::string> SortScene::rightPiece() const {
    if (!isLifted()) return "card";
    return "home:" + std::to_string(question().rightPlace());
}

void SortScene::pressed(const std::string& piece, Millis) {
    if (piece == "card") setting_.voice.cue("lift");
}

void SortScene::tapPiece(const std::string& piece, Millis now) {
    if (piece == "card") {
        chosen_ = !chosen_;
        return;
    }
    if (const auto home = indexIn(piece, "home")) put(*home, layout_.card().centre(), now);
}

void SortScene::dropped(const Hand& hand, Millis now) {
    const Box seat = layout_.card();
    const Point at = {seat.centre().x + hand.at.x - hand.from.x,
                      seat.centre().y + hand.at.y - hand.from.y};
    const auto homes = layout_.homes(round_.homes());
    std::optional<std::size_t> nearest;
    float least = 0;
    for (std::size_t i = 0; i < homes.size(); ++i) {
        const Box reach = homes[i].all.grown(layout_.px(kReach));
        const Point middle = homes[i].all.centre();
        const float away = std::hypot(middle.x - at.x, middle.y - at.y);
        if (!round_.canPut(i) || !(reach.contains(at) || reach.contains(hand.at))) continue;
        if (!nearest || away < least) {
            nearest = i;
            least = away;
        }
    }
    chosen_ = false;
    if (nearest)
        put(*nearest, at, now);
    else
        released(hand, now);
}

void SortScene::released(const Hand& hand, Millis now) {
    if (hand.thing.name != "card") return;
    const Point seat = layout_.card().centre();
    glides_.begin("card", {seat.x + hand.at.x - hand.from.x, seat.y + hand.at.y - hand.from.y},
                  kMove, now);
}

void SortScene::put(std::size_t home, Point from, Millis now) {
    const Outcome outcome = round_.put(home);
    if (outcome.kind == Outcome::Kind::nothing) return;
    chosen_ = false;
    came_from_ = outcome.right ? std::nullopt
                               : std::optional(layout_.homes(round_.homes())[home].art.centre());
    answered(outcome, now);
    glides_.begin("card", from, kMove, now);
}

void SortScene::askedAnew(Millis now) {
    chosen_ = false;
    if (came_from_) glides_.begin("card", *came_from_, kLean, now);
    came_from_.reset();
}

void SortScene::drawHome(Painter& painter, std::size_t home, Millis now) const {
    const HomeBox box = layout_.homes(round_.homes())[home];
    const Show show = telling_.show(now);
    const bool shown = show.kind == Show::Kind::place && show.index == static_cast<int>(home);
    const bool is_it = isTogether() && home == question().rightPlace();
    const bool off = isTogether() && !is_it;
    const std::string shape(kShapes[home % 3]);

    painter.art(shape, box.art, off ? 0.5f : 1);
    const auto& sorted = round_.sorted(home);
    const std::size_t small =
        isRight() && home == question().rightPlace() ? sorted.size() - 1 : sorted.size();
    for (std::size_t i = 0; i < small; ++i)
        painter.pictureCard(pictureOf(sorted[i]), box.sorted(i), Stand::resting);
    if (isRight() && home == question().rightPlace()) drawCard(painter, now);
    painter.art(shape + "-front", box.art, off ? 0.5f : 1);

    if (is_it && isLifted()) painter.sunBelow(box.head, 24);
    const Stand stand = shown || holds("home:" + std::to_string(home)) ? Stand::lifted
                        : off                                          ? Stand::done
                                                                       : Stand::resting;
    const Piece head = Pieces(setting_.pack, question().item()).choice(question().choiceAt(home));
    paint(painter, head, box.head, stand);
    if (shown && telling_.isSounding(now)) painter.speaking(box.head);
}

Box SortScene::inHome(const HomeBox& home) const {
    const float side = home.head.w * 0.72f;
    const float foot = home.art.y + home.art.h * 0.66f;
    Box seat = {home.art.centre().x - side / 2, foot - side, side, side};
    if (home.art.h > home.head.h * 1.1f) seat.x += home.head.w * 0.34f;
    return seat;
}

void SortScene::drawCard(Painter& painter, Millis now) const {
    const std::string picture = pictureOf(question().item().subject);
    if (isRight()) {
        const Box seat = inHome(layout_.homes(round_.homes())[question().rightPlace()]);
        const Box box = movedTo(seat, glides_.at("card", seat.centre(), now));
        painter.pictureCard(picture, box, Stand::resting);
        painter.leafMark(box);
        return;
    }
    Box box = placed("card", layout_.card(), now);
    box.y -= hint(now) * layout_.px(46);
    const Show show = telling_.show(now);
    const bool shown = show.kind == Show::Kind::subject;
    if (!isLifted() && isOpen()) painter.sunBelow(box, 24);
    painter.pictureCard(picture, box, isLifted() || shown ? Stand::lifted : Stand::resting);
    if (shown && telling_.isSounding(now)) painter.speaking(box);
}

void SortScene::drawExample(Painter& painter, int step, Millis now) const {
    const Pieces pieces(setting_.pack, *example_);
    const Piece card = pieces.heard().front();
    const bool found = step >= SolvedStep::found;
    const auto homes = layout_.homes(example_->choices.size());
    for (std::size_t i = 0; i < homes.size(); ++i) {
        const bool is_right = i == example_->answer;
        const std::string shape(kShapes[i % 3]);
        painter.art(shape, homes[i].art);
        if (found && is_right) {
            const float way = step == SolvedStep::found ? exampleMotion(now) : 1;
            const Box seat = inHome(homes[i]);
            const Box box = movedTo(seat, between(layout_.card().centre(), seat.centre(), way));
            const bool part = step == SolvedStep::heard_part;
            paint(painter, card, box, part ? Stand::lifted : Stand::resting);
            if (part) painter.bracket(partOf(card, box));
        }
        painter.art(shape + "-front", homes[i].art);
        const Piece head = pieces.choice(i);
        const bool named = step == SolvedStep::named + static_cast<int>(i);
        const bool told = is_right && (step == SolvedStep::found || step == SolvedStep::found_part);
        paint(painter, head, homes[i].head, named || told ? Stand::lifted : Stand::resting);
        if ((named || told) && telling_.isSounding(now)) painter.speaking(homes[i].head);
        if (step == SolvedStep::found_part && is_right)
            painter.bracket(partOf(head, homes[i].head));
    }
    if (found) return;
    const bool heard = step == SolvedStep::heard;
    paint(painter, card, layout_.card(), heard ? Stand::lifted : Stand::resting);
    if (heard && telling_.isSounding(now)) painter.speaking(layout_.card());
}

void SortScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, *step, now);
    for (std::size_t i = 0; i < round_.homes(); ++i) drawHome(painter, i, now);
    if (!isRight() && !isExplaining()) drawCard(painter, now);
}

void SortScene::drawExplained(Painter& painter, Millis now) const {
    const auto& item = question().item();
    const std::uint8_t chosen = question().wrongChoice().value_or(item.answer);
    const auto last = paintCompared(painter, layout_, Pieces(setting_.pack, item).compared(chosen),
                                    {explainRow(0), explainRow(1)}, telling_, now);
    const float home = layout_.px(84);
    for (const bool is_right : {false, true}) {
        const Box& box = last[is_right ? 1 : 0];
        if (box.w <= 0) continue;
        const std::uint8_t choice = is_right ? item.answer : chosen;
        painter.art(
            std::string(kShapes[question().placeOf(choice) % 3]),
            {box.x + box.w + layout_.px(20), box.centre().y - home * 0.36f, home, home * 0.72f});
    }
}

}  // namespace wrenlet::game
