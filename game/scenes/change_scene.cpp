#include "game/scenes/change_scene.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

constexpr float kReach = 60;    // how far beside the row a tile may be dropped, in the look's px
constexpr float kLoose = 0.2f;  // of a tile's width: the room around a loose one

std::string tileName(std::size_t tile) {
    return "tile:" + std::to_string(tile);
}

Box around(const Box& first, const Box& last) {
    return {first.x, first.y, last.x + last.w - first.x, first.h};
}

}  // namespace

ChangeScene::ChangeScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question(),
             exercise::changeTiles(turn.question().item(), setting.pack.vocabulary), turn.chain()),
      example_(prompts_.exampleFor(turn.question().item())) {}

bool ChangeScene::goOn(Millis now) {
    if (!round_.goesOnWith(turn_.question()) || turn_.chain().empty()) return false;
    const Point from = layout_.stones(question().places())[question().rightPlace()].centre();
    round_.goOn(turn_.question(),
                exercise::changeTiles(turn_.question().item(), setting_.pack.vocabulary));
    glides_.clear();
    glides_.begin("subject", from, kLean, now);
    ask(Asking::next, now);
    return true;
}

Script ChangeScene::askScript(Asking asking) const {
    if (round_.isChanged()) return prompts_.pick(round_, asking == Asking::again);
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

std::size_t ChangeScene::markOfNew(const exercise::ChangeTiles& tiles) {
    return tiles.before.size() < 4 ? 4 : (tiles.at + 2) % 4 + 1;
}

std::vector<ChangeScene::Seat> ChangeScene::row(const exercise::ChangeTiles& tiles, bool taken,
                                                bool put) const {
    std::vector<Seat> seats;
    const auto comeIn = [&] {
        if (tiles.puts) seats.push_back({put ? "new" : "gap", markOfNew(tiles)});
    };
    for (std::size_t i = 0; i < tiles.before.size(); ++i) {
        const bool at = i == tiles.at;
        if (at && (!tiles.takes || taken)) comeIn();
        if (at && tiles.takes && taken) continue;
        seats.push_back({at && tiles.takes ? "loose" : tileName(i), i % 4 + 1});
    }
    if (!tiles.takes && tiles.at >= tiles.before.size()) comeIn();

    std::vector<float> open;
    for (std::size_t i = 0; i < seats.size(); ++i) {
        const bool apart = i > 0 && (seats[i].name == "loose" || seats[i - 1].name == "loose");
        open.push_back(apart ? kLoose : 0);
    }
    const auto boxes = layout_.row(open);
    for (std::size_t i = 0; i < seats.size(); ++i) seats[i].box = boxes[i];
    return seats;
}

Box ChangeScene::outside(const std::string& name) const {
    Box box = layout_.waiting();
    if (name == "loose" && round_.tiles().puts) box.x += box.w + layout_.gap();
    return box;
}

std::vector<Thing> ChangeScene::pieces() const {
    std::vector<Thing> all = {{"word", layout_.subject()}};
    for (const Seat& seat : row()) {
        const bool drags = seat.name == "loose" && round_.canTake();
        if (seat.name != "new") all.push_back({seat.name, seat.box, drags});
    }
    if (round_.canPut()) all.push_back({"new", outside("new"), true});
    if (round_.canTake() && !round_.tiles().puts) all.push_back({"away", outside("loose")});
    if (!round_.isChanged()) return all;
    const auto stones = layout_.stones(question().places());
    for (std::size_t place = 0; place < stones.size(); ++place)
        if (round_.canPick(place)) all.push_back({"choice:" + wordAt(place), stones[place]});
    return all;
}

std::optional<std::string> ChangeScene::rightPiece() const {
    if (round_.isChanged()) return "choice:" + wordAt(question().rightPlace());
    if (!round_.canPut()) return holds("loose") ? "away" : "loose";
    if (!holds("new")) return "new";
    return round_.canTake() ? "loose" : "gap";
}

void ChangeScene::pressed(const std::string& piece, Millis) {
    if (piece == "loose" || piece == "new" || indexIn(piece, "tile")) setting_.voice.cue("lift");
}

void ChangeScene::tapPiece(const std::string& piece, Millis now) {
    if (piece == "new" || piece == "gap") {
        change("new", outside("new").centre(), now);
    } else if (piece == "loose" || piece == "away") {
        for (const Seat& seat : row())
            if (seat.name == "loose") return change("loose", seat.box.centre(), now);
    } else if (piece == "word") {
        murmur(prompts_.word(question()), now);
    } else if (indexIn(piece, "tile")) {
        say(piece, now);
    }
    for (std::size_t place = 0; place < question().places(); ++place) {
        if (piece != "choice:" + wordAt(place)) continue;
        answered(round_.pick(place), now);
        return;
    }
}

void ChangeScene::say(const std::string& piece, Millis now) {
    if (question().tryNumber() == 1) return murmur(prompts_.word(question()), now);
    const auto seats = row();
    for (std::size_t i = 0; i < seats.size(); ++i)
        if (seats[i].name == piece) return murmur(prompts_.tile(round_, i), now);
}

void ChangeScene::dropped(const Hand& hand, Millis now) {
    turn_.beat(now);
    const auto seats = row();
    const Box all = around(seats.front().box, seats.back().box).grown(layout_.px(kReach));
    const bool in_row = all.contains(hand.at);
    if (hand.thing.name == (in_row ? "new" : "loose"))
        change(hand.thing.name, hand.at, now);
    else
        released(hand, now);
}

void ChangeScene::released(const Hand& hand, Millis now) {
    const Point seat = hand.thing.box.centre();
    glides_.begin(hand.thing.name,
                  {seat.x + hand.at.x - hand.from.x, seat.y + hand.at.y - hand.from.y}, kMove, now);
}

void ChangeScene::change(const std::string& piece, Point from, Millis now) {
    const auto before = row();
    const Outcome outcome = piece == "new" ? round_.put() : round_.take();
    if (outcome.kind == Outcome::Kind::nothing) return;
    for (const Seat& seat : before) glides_.begin(seat.name, seat.box.centre(), kLean, now);
    glides_.begin(piece, from, kLean, now);
    setting_.voice.cue(piece == "new" ? "join" : "settle");
    if (!round_.isChanged()) return;
    const auto stones = layout_.stones(question().places());
    for (std::size_t place = 0; place < stones.size(); ++place)
        glides_.begin("choice:" + wordAt(place),
                      {stones[place].centre().x, layout_.height() + stones[place].h}, kSceneChange,
                      now);
    prompt(prompts_.pick(round_, false), now);
}

}  // namespace wrenlet::game
