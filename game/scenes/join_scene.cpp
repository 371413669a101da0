#include "game/scenes/join_scene.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

constexpr float kReach = 40;  // how far from its neighbour a tile may be dropped, in the look's px

std::string tileName(std::size_t tile) {
    return "tile:" + std::to_string(tile);
}

void drawPad(Painter& painter, const Box& seat) {
    const float w = seat.w * 1.34f, h = w * 110 / 150;
    painter.art("pad", {seat.centre().x - w / 2, seat.y + seat.h - h * 0.62f, w, h});
}

bool meet(const Box& a, const Box& b) {
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

}  // namespace

JoinScene::JoinScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question()),
      example_(prompts_.exampleFor(turn.question().item())) {}

Script JoinScene::askScript(Asking asking) const {
    if (round_.isJoined()) return prompts_.pick(round_, asking == Asking::again);
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

std::vector<Box> JoinScene::tileSeats() const {
    std::vector<bool> leaning;
    for (std::size_t i = 0; i + 1 < round_.tiles(); ++i) leaning.push_back(round_.leans(i));
    return layout_.tiles(leaning);
}

std::optional<std::size_t> JoinScene::heldTile() const {
    return carries() ? indexIn(hand_->thing.name, "tile") : std::nullopt;
}

Box JoinScene::tileBox(std::size_t tile, Millis now) const {
    const Box seat = tileSeats()[tile];
    const auto held = heldTile();
    if (held && !round_.isJoined() && round_.runOf(*held) == round_.runOf(tile)) {
        const Point centre = seat.centre();
        return movedTo(
            seat, {centre.x + hand_->at.x - hand_->from.x, centre.y + hand_->at.y - hand_->from.y});
    }
    return movedTo(seat, glides_.at(tileName(tile), seat.centre(), now));
}

std::vector<Thing> JoinScene::pieces() const {
    std::vector<Thing> all;
    const auto tiles = tileSeats();
    for (std::size_t i = 0; i < tiles.size(); ++i)
        all.push_back({tileName(i), tiles[i], !round_.isJoined()});
    if (!round_.isJoined()) return all;
    const auto stones = layout_.stones(question().places());
    for (std::size_t place = 0; place < stones.size(); ++place)
        if (round_.canPick(place)) all.push_back({"choice:" + wordAt(place), stones[place]});
    return all;
}

std::optional<std::string> JoinScene::rightPiece() const {
    if (round_.isJoined()) return "choice:" + wordAt(question().rightPlace());
    std::size_t gap = 0;
    while (round_.leans(gap)) ++gap;
    const auto held = heldTile() ? heldTile() : chosen_;
    if (!held || !round_.canBring(*held, gap + 1) || *held > gap) return tileName(gap);
    return tileName(gap + 1);
}

void JoinScene::pressed(const std::string& piece, Millis) {
    if (indexIn(piece, "tile")) setting_.voice.cue("lift");
}

void JoinScene::tapPiece(const std::string& piece, Millis now) {
    if (const auto tile = indexIn(piece, "tile")) {
        if (*tile >= round_.tiles()) return;
        if (chosen_ && round_.canBring(*chosen_, *tile)) {
            bring(*chosen_, *tile, now);
            return;
        }
        if (!round_.isJoined()) chosen_ = *tile;
        const auto run = round_.runOf(*tile);
        murmur(prompts_.tiles(round_, run.first, run.second, kTogether), now);
        return;
    }
    for (std::size_t place = 0; place < question().places(); ++place) {
        if (piece != "choice:" + wordAt(place)) continue;
        answered(round_.pick(place), now);
        return;
    }
}

void JoinScene::dropped(const Hand& hand, Millis now) {
    const auto tile = indexIn(hand.thing.name, "tile");
    if (!tile) return;
    turn_.beat(now);
    const auto seats = tileSeats();
    const auto run = round_.runOf(*tile);
    for (std::size_t other = 0; other < round_.tiles(); ++other) {
        if (!round_.canBring(*tile, other)) continue;
        const std::size_t edge = other < run.first ? run.first : run.second;
        Box moved = seats[edge];
        moved.x += hand.at.x - hand.from.x;
        moved.y += hand.at.y - hand.from.y;
        if (!meet(moved.grown(layout_.px(kReach)), seats[other])) continue;
        released(hand, now);
        bring(*tile, other, now);
        return;
    }
    released(hand, now);
    murmur(prompts_.tiles(round_, run.first, run.second, kTogether), now);
}

void JoinScene::released(const Hand& hand, Millis now) {
    const auto tile = indexIn(hand.thing.name, "tile");
    if (!tile || *tile >= round_.tiles() || round_.isJoined()) return;
    const auto seats = tileSeats();
    const auto run = round_.runOf(*tile);
    for (std::size_t i = run.first; i <= run.second; ++i) {
        const Point seat = seats[i].centre();
        glides_.begin(tileName(i),
                      {seat.x + hand.at.x - hand.from.x, seat.y + hand.at.y - hand.from.y}, kMove,
                      now);
    }
}

void JoinScene::bring(std::size_t tile, std::size_t other, Millis now) {
    std::vector<Point> from;
    for (std::size_t i = 0; i < round_.tiles(); ++i) from.push_back(tileBox(i, now).centre());
    if (round_.bring(tile, other).kind == Outcome::Kind::nothing) return;
    chosen_.reset();
    for (std::size_t i = 0; i < from.size(); ++i) glides_.begin(tileName(i), from[i], kLean, now);
    setting_.voice.cue("join");
    if (!round_.isJoined()) {
        const auto run = round_.runOf(tile);
        murmur(prompts_.tiles(round_, run.first, run.second, kTogether), now);
        return;
    }
    const auto stones = layout_.stones(question().places());
    for (std::size_t place = 0; place < stones.size(); ++place)
        glides_.begin("choice:" + wordAt(place),
                      {stones[place].centre().x, layout_.height() + stones[place].h}, kSceneChange,
                      now);
    prompt(prompts_.pick(round_, false), now);
}

void JoinScene::drawTile(Painter& painter, std::size_t mark, const exercise::Part& part,
                         const Box& box, Stand stand) const {
    if (question().item().skill.unit == exercise::Unit::letter)
        painter.letterTile(part.label, box, stand);
    else
        painter.tile(mark, box, stand);
}

void JoinScene::drawTiles(Painter& painter, Millis now) const {
    const Show show = telling_.show(now);
    const std::size_t count = round_.tiles();
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i) boxes.push_back(tileBox(i, now));
    const bool settled = round_.isJoined() && !glides_.isMoving(now);
    if (settled) {
        painter.joinedPad(boxes.front(), boxes.back());
    } else {
        for (const Box& seat : tileSeats()) drawPad(painter, seat);
    }
    const auto right = isOpen() && !round_.isJoined() ? rightPiece() : std::nullopt;
    const float nudge = hint(now) * layout_.px(30);
    for (std::size_t i = 0; i < count; ++i) {
        Box box = boxes[i];
        if (nudge > 0 && !round_.isJoined()) box.x += i == 0 ? nudge : i == 1 ? -nudge : 0;
        const bool sounds = show.kind == Show::Kind::tile && show.index == static_cast<int>(i) &&
                            telling_.isSounding(now);
        const bool lifted = chosen_ == i || holds(tileName(i));
        if (right == tileName(i) && !lifted) painter.sunBelow(box, 20);
        drawTile(painter, i % 4 + 1, question().item().parts[i], box,
                 lifted || sounds ? Stand::lifted : Stand::resting);
        if (sounds) painter.speaking(box);
    }
}

void JoinScene::drawExample(Painter& painter, int step, Millis now) const {
    const auto count = example_->parts.size();
    const auto all = static_cast<int>(count);
    const bool joined = step > all;
    const auto apart = layout_.tiles(std::vector<bool>(count - 1, false));
    const auto close = layout_.tiles(std::vector<bool>(count - 1, true));
    const float part = step == all + 1 ? exampleMotion(now) : 1;
    if (!joined)
        for (const Box& seat : apart) drawPad(painter, seat);
    else if (part >= 1)
        painter.joinedPad(close.front(), close.back());
    for (std::size_t i = 0; i < count; ++i) {
        const Box& to = joined ? close[i] : apart[i];
        const Box box = movedTo(to, between(apart[i].centre(), to.centre(), joined ? part : 1));
        const int said = step > all ? step - all : step;
        const bool sounds = said == static_cast<int>(i) + 1;
        drawTile(painter, i % 4 + 1, example_->parts[i], box,
                 sounds ? Stand::lifted : Stand::resting);
        if (sounds && telling_.isSounding(now)) painter.speaking(box);
    }
    if (step == all + 1) drawTouched(painter, apart.front().centre(), now);
    if (step <= 2 * all) return;
    const Box card = layout_.stones(1).front();
    painter.pictureCard(pictureOf(example_->subject), card, Stand::lifted);
    painter.leafMark(card);
    drawTouched(painter, card.centre(), now);
}

void JoinScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, *step, now);
    drawTiles(painter, now);
    if (round_.isJoined()) drawChoices(painter, now);
}

void JoinScene::drawExplained(Painter& painter, Millis now) const {
    const auto& item = question().item();
    const Show show = telling_.show(now);
    for (int pair = 0; pair < 2; ++pair) {
        const bool reached = show.kind == Show::Kind::pair ? show.pair >= pair : pair == 0;
        if (!reached && !telling_.isOver(now)) continue;
        const std::uint8_t choice =
            pair == 0 ? question().wrongChoice().value_or(item.answer) : item.answer;
        const auto& word = item.choices[choice].id;
        const auto parts = pair == 1 ? item.parts : prompts_.partsOf(item.skill, word);
        const bool speaks =
            show.kind == Show::Kind::pair && show.pair == pair && telling_.isSounding(now);

        const Box row = explainRow(pair);
        const float side = std::min(row.h - layout_.px(48), layout_.px(170));
        const float small = side * 0.62f;
        const float all = side + layout_.px(48) + small * static_cast<float>(parts.size());
        const float y = row.y + (row.h - layout_.px(30)) / 2;
        float x = row.centre().x - all / 2;
        for (std::size_t i = 0; i < parts.size(); ++i, x += small) {
            const Box box = {x, y - small / 2, small, small};
            const bool sounds = speaks && show.part && show.index == static_cast<int>(i);
            // Its mark is that of the asked tile where they sound alike, else another one.
            const auto same = std::find(item.parts.begin(), item.parts.end(), parts[i]);
            const auto mark = same != item.parts.end()
                                  ? static_cast<std::size_t>(same - item.parts.begin()) % 4
                                  : 3 - i % 4;
            drawTile(painter, mark + 1, parts[i], box, sounds ? Stand::lifted : Stand::resting);
            if (sounds) painter.bracket(box);
        }
        const Box card = {x + layout_.px(48), y - side / 2, side, side};
        const bool sounds = speaks && !show.part;
        painter.pictureCard(pictureOf(word), card, sounds ? Stand::lifted : Stand::resting);
        if (sounds) painter.speaking(card);
        if (pair == 1) painter.leafMark(card);
    }
}

}  // namespace wrenlet::game
