#include "game/scenes/split_scene.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

std::string boxName(std::size_t box) {
    return "box:" + std::to_string(box);
}

/// A box with its part's tile on it, once that has been told.
void drawBox(Painter& painter, const Box& box, std::size_t index, bool told, bool sounds) {
    painter.art("leaf-box", sounds ? box.grown(box.w * 0.02f) : box);
    if (!told) return;
    const float side = box.w * 0.54f;
    const Box tile = {box.centre().x - side / 2, box.y + box.h * 0.48f - side / 2, side, side};
    painter.tile(index % 4 + 1, tile, sounds ? Stand::lifted : Stand::resting);
    if (sounds) painter.bracket({tile.x, tile.y, tile.w, tile.h - tile.h * 0.1f});
}

}  // namespace

SplitScene::SplitScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question()),
      example_(prompts_.exampleFor(turn.question().item())) {}

Script SplitScene::askScript(Asking asking) const {
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

std::optional<std::size_t> SplitScene::heldBox() const {
    return carries() ? indexIn(hand_->thing.name, "box") : std::nullopt;
}

std::vector<Thing> SplitScene::pieces() const {
    std::vector<Thing> all = {{"word", layout_.subject()}};
    const auto seats = boxes();
    for (std::size_t i = 0; i < seats.size(); ++i) all.push_back({boxName(i), seats[i], true});
    if (const auto held = heldBox(); held && *held < seats.size()) {
        const Box& seat = seats[*held];
        all.push_back({"apart", {seat.x, seat.y + seat.h + layout_.gap(), seat.w, seat.h * 0.5f}});
    }
    if (round_.canJoin()) all.push_back({"whole", layout_.acorns()});
    if (round_.canFinish()) all.push_back({"done", layout_.done()});
    return all;
}

std::optional<std::string> SplitScene::rightPiece() const {
    if (round_.boxes() == round_.right()) return "done";
    if (round_.boxes() > round_.right()) return "whole";
    if (heldBox()) return "apart";
    return boxName(static_cast<std::size_t>(round_.boxes() - 1));
}

void SplitScene::pressed(const std::string& piece, Millis) {
    if (indexIn(piece, "box")) setting_.voice.cue("lift");
}

void SplitScene::tapPiece(const std::string& piece, Millis now) {
    if (piece == "done") {
        answered(round_.finish(), now);
    } else if (piece == "word") {
        murmur(prompts_.word(round_.question()), now);
    } else if (piece == "whole") {
        makeWhole(now);
    } else if (const auto box = indexIn(piece, "box")) {
        if (round_.canPart())
            part(*box, boxes()[*box].centre(), now);
        else if (isTogether())
            murmur(prompts_.part(round_, *box), now);
    }
}

void SplitScene::dropped(const Hand& hand, Millis now) {
    const auto held = indexIn(hand.thing.name, "box");
    if (!held) return;
    turn_.beat(now);
    const auto seats = boxes();
    for (std::size_t i = 0; i < seats.size(); ++i) {
        if (!seats[i].contains(hand.at)) continue;
        if (i != *held) join(std::min(i, *held), now);
        return;
    }
    if (round_.canPart()) part(*held, hand.at, now);
}

void SplitScene::part(std::size_t box, Point from, Millis now) {
    const auto before = boxes();
    if (round_.part().kind == Outcome::Kind::nothing) return;
    setting_.voice.cue("leaf");
    for (std::size_t i = 0; i <= before.size(); ++i)
        glides_.begin(boxName(i), i == box + 1 ? from : before[i <= box ? i : i - 1].centre(),
                      kMove, now);
}

void SplitScene::join(std::size_t box, Millis now) {
    const auto before = boxes();
    if (round_.join().kind == Outcome::Kind::nothing) return;
    setting_.voice.cue("join");
    for (std::size_t i = 0; i + 1 < before.size(); ++i)
        glides_.begin(boxName(i), before[i <= box ? i : i + 1].centre(), kMove, now);
}

void SplitScene::makeWhole(Millis now) {
    if (round_.makeWhole().kind == Outcome::Kind::nothing) return;
    setting_.voice.cue("join");
    glides_.begin(boxName(0), layout_.acorns().centre(), kMove, now);
}

void SplitScene::drawLeaf(Painter& painter, Millis now) const {
    const auto seats = boxes();
    const Show show = telling_.show(now);
    const bool tells = show.kind == Show::Kind::tile;
    for (std::size_t i = 0; i < seats.size(); ++i) {
        Box box = movedTo(seats[i], glides_.at(boxName(i), seats[i].centre(), now));
        if (seats.size() == 1) {
            box.w += hint(now) * layout_.px(40);
            box.x -= hint(now) * layout_.px(20);
            if (isOpen()) painter.art("leaf-whole-sun", box.grown(box.w * 0.05f));
            painter.art("leaf-whole", holds(boxName(0)) ? box.grown(box.w * 0.02f) : box);
            continue;
        }
        const bool sounds = tells && show.index == static_cast<int>(i) && telling_.isSounding(now);
        const bool told = isRight() ? !tells || show.index >= static_cast<int>(i) : sounds;
        if (isTogether() && round_.canPart() && i + 1 == seats.size()) painter.sunBelow(box, 24);
        drawBox(painter, holds(boxName(i)) ? box.grown(box.w * 0.02f) : box, i, told, sounds);
    }
    if (isRight() && seats.size() > 1) painter.leafMark(seats.back());
}

void SplitScene::drawPulled(Painter& painter) const {
    if (!heldBox() || !hand_->drags || !(round_.canPart() || round_.canJoin())) return;
    const Box seat = layout_.leaf(static_cast<std::size_t>(std::max(2, round_.boxes())))[0];
    painter.art("leaf-box", movedTo(seat, hand_->at).grown(seat.w * 0.02f), 0.9f);
}

void SplitScene::drawControls(Painter& painter) const {
    const Box heap = layout_.acorns(), done = layout_.done();
    const float h = std::min(heap.h, heap.w * 96 / 240), w = h * 240 / 96;
    const Box whole = {heap.centre().x - w / 2, heap.centre().y - h / 2, w, h};
    painter.art("ctl-whole", holds("whole") ? whole.grown(w * 0.02f) : whole,
                round_.canJoin() ? 1 : 0.35f);
    painter.art("ctl-done", holds("done") ? done.grown(done.w * 0.02f) : done,
                round_.canFinish() ? 1 : 0.35f);
}

void SplitScene::drawExample(Painter& painter, int step, Millis now) const {
    const auto parts = static_cast<int>(example_->parts.size());
    painter.pictureCard(pictureOf(example_->subject), layout_.subject(),
                        step == 0 || step > parts ? Stand::lifted : Stand::resting);
    if (step == 0) {
        painter.art("leaf-whole", layout_.leaf(1).front());
    } else {
        const auto seats = layout_.leaf(static_cast<std::size_t>(std::min(step + 1, parts)));
        const auto before = layout_.leaf(static_cast<std::size_t>(std::min(step, parts)));
        for (std::size_t i = 0; i < seats.size(); ++i)
            drawBox(painter,
                    movedTo(seats[i], between(before[std::min(i, before.size() - 1)].centre(),
                                              seats[i].centre(), exampleMotion(now))),
                    i, static_cast<int>(i) < step, static_cast<int>(i) + 1 == step);
    }
    const Box done = layout_.done();
    painter.art("ctl-done", step > parts ? done.grown(done.w * 0.08f) : done,
                step > parts ? 1 : 0.35f);
    if (step > parts)
        drawTouched(painter, done.centre(), now);
    else if (step > 0 && step < parts)
        drawTouched(painter, layout_.leaf(static_cast<std::size_t>(step)).back().centre(), now);
}

void SplitScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, *step, now);
    drawSubjectCard(painter, layout_.subject(), Stand::resting, now);
    drawLeaf(painter, now);
    if (isRight() || isExplaining()) return;
    drawControls(painter);
    drawPulled(painter);
}

void SplitScene::drawExplained(Painter& painter, Millis now) const {
    const Show show = telling_.show(now);
    const int right = round_.right(), chosen = round_.boxes();
    const bool over = telling_.isOver(now);
    const bool speaks = show.kind == Show::Kind::pair && telling_.isSounding(now);
    const int told = over ? right : show.kind == Show::Kind::pair ? show.index + 1 : 0;
    const Box paper = explainPaper().grown(-layout_.px(28));
    const float side = std::min(layout_.px(150), paper.w * 0.2f);
    const Box card = {paper.x, paper.centre().y - side / 2, side, side};
    const bool named = show.kind == Show::Kind::subject && telling_.isSounding(now);
    painter.pictureCard(pictureOf(question().item().subject), card,
                        named ? Stand::lifted : Stand::resting);
    if (named) painter.speaking(card);

    const auto columns = static_cast<std::size_t>(std::max(right, chosen));
    const float left = card.x + card.w + layout_.px(24);
    for (int pair = 0; pair < 2; ++pair) {
        const Box row = explainRow(pair);
        const auto seats = rowIn({left, row.y, paper.x + paper.w - left, row.h - layout_.px(30)},
                                 columns, layout_.px(128), layout_.px(125), layout_.px(10));
        for (std::size_t i = 0; i < columns; ++i) {
            const int number = static_cast<int>(i);
            const bool sounds = speaks && number + 1 == told;
            if (number < (pair == 0 ? chosen : right))
                drawBox(painter, seats[i], i, number < std::min(told, right), false);
            // The part that found no box, or the box that found no part.
            if ((over && number >= std::min(right, chosen)) || sounds)
                painter.bracket({seats[i].x, seats[i].y, seats[i].w, seats[i].h - layout_.px(4)});
        }
        if (pair == 1 && over) painter.leafMark(seats[static_cast<std::size_t>(right - 1)]);
    }
}

}  // namespace wrenlet::game
