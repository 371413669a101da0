#include "game/scenes/pick_scene.hpp"

namespace wrenlet::game {

PickScene::PickScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question()),
      example_(prompts_.exampleFor(turn.question().item())) {}

Script PickScene::askScript(Asking asking) const {
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

std::string PickScene::nameAt(std::size_t place) const {
    return "choice:" + round_.choiceAt(place);
}

std::optional<std::size_t> PickScene::placeOf(const std::string& piece) const {
    for (std::size_t place = 0; place < round_.places(); ++place)
        if (piece == nameAt(place)) return place;
    return std::nullopt;
}

std::vector<Thing> PickScene::pieces() const {
    std::vector<Thing> all;
    if (round_.picksSounds()) all.push_back({"stage", layout_.stage()});
    const auto heard = heardBoxes(table());
    for (std::size_t i = 0; i < heard.size(); ++i)
        all.push_back({"heard:" + std::to_string(i), heard[i]});
    const auto stones = layout_.stones(round_.places());
    for (std::size_t place = 0; place < stones.size(); ++place)
        if (round_.canTouch(place))
            all.push_back({nameAt(place), stones[place], round_.picksSounds()});
    return all;
}

std::optional<std::string> PickScene::rightPiece() const {
    const std::string right = nameAt(question().rightPlace());
    return holds(right) && hand_->drags ? "stage" : right;
}

void PickScene::pressed(const std::string& piece, Millis) {
    if (round_.picksSounds() && placeOf(piece)) setting_.voice.cue("lift");
}

void PickScene::tapPiece(const std::string& piece, Millis now) {
    if (const auto heard = indexIn(piece, "heard")) {
        const auto pieces = table().heard;
        Script script;
        if (*heard < pieces.size() && !pieces[*heard].clip.empty())
            script.push_back(
                {pieces[*heard].clip, 0, {Show::Kind::tile, static_cast<int>(*heard)}});
        murmur(script, now);
        return;
    }
    const auto place = placeOf(piece);
    if (!place) return;
    const Outcome outcome = round_.touch(*place);
    if (outcome.kind == Outcome::Kind::settled) {
        murmur(prompts_.choice(round_, *place), now);
        return;
    }
    answered(outcome, now);
    settle(now);
}

void PickScene::settle(Millis now) {
    if (!isRight()) return;
    const Table all = table();
    const auto stones = layout_.stones(all.choices.size());
    for (std::size_t place = 0; place < stones.size(); ++place)
        if ((place == all.right) != all.isOddOne())
            glides_.begin(nameAt(place), stones[place].centre(), kLean, now);
}

void PickScene::dropped(const Hand& hand, Millis now) {
    const auto place = placeOf(hand.thing.name);
    if (!place) return;
    released(hand, now);
    const Point seat = hand.thing.box.centre();
    const Point at = {seat.x + hand.at.x - hand.from.x, seat.y + hand.at.y - hand.from.y};
    if (layout_.stage().contains(hand.at) || layout_.stage().contains(at))
        answered(round_.bring(*place), now);
    else if (!layout_.stage().contains(at) && round_.chosen() != place)
        tapPiece(hand.thing.name, now);
}

void PickScene::released(const Hand& hand, Millis now) {
    if (!hand.thing.drags) return;
    const Point seat = hand.thing.box.centre();
    glides_.begin(hand.thing.name,
                  {seat.x + hand.at.x - hand.from.x, seat.y + hand.at.y - hand.from.y}, kMove, now);
}

}  // namespace wrenlet::game
