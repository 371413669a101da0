#include "game/scenes/count_scene.hpp"

#include <algorithm>

namespace wrenlet::game {
namespace {

constexpr float kReach = 60;  // how far from the pads an acorn may be dropped, in the look's px
constexpr float kAcornTall = 110.0f / 96;

std::string acornOn(std::size_t pad) {
    return "acorn-on:" + std::to_string(pad);
}

Box padArt(const Box& pad) {
    const float w = pad.w * 1.06f, h = w * 70 / 110;
    return {pad.centre().x - w / 2, pad.y + pad.h * 0.78f - h * 0.57f, w, h};
}

}  // namespace

CountScene::CountScene(Setting setting, const Layout& layout, Turn& turn, bool first_time)
    : RoundScene(setting, layout, turn, first_time),
      round_(turn.question()),
      example_(prompts_.exampleFor(turn.question().item())) {}

Script CountScene::askScript(Asking asking) const {
    const bool shows = asking == Asking::first_time && needsExample();
    return prompts_.ask(round_, asking, shows ? example_ : nullptr);
}

std::vector<Box> CountScene::padBoxes() const {
    const auto pads = static_cast<std::size_t>(round_.pads());
    return isOfWord() ? layout_.padsBelowSubject(pads) : layout_.pads(pads);
}

Box CountScene::onPad(std::size_t pad) const {
    const Box box = padBoxes()[pad];
    const float w = box.w * 0.62f, h = w * kAcornTall;
    return {box.centre().x - w / 2, box.y + box.h * 0.78f - h, w, h};
}

Box CountScene::inHeap(std::size_t index) const {
    const Box heap = layout_.acorns();
    const float w = std::min(heap.w / 4.4f, heap.h * 0.52f), h = w * kAcornTall;
    const std::size_t below = 4;
    const bool upper = index >= below;
    const std::size_t column = upper ? index - below : index;
    const float columns = upper ? 3 : 4;
    const float shift = (static_cast<float>(column) - (columns - 1) / 2) * w * 1.02f;
    // The eighth acorn tops the heap.
    if (index == 7) return {heap.centre().x - w / 2, heap.y + heap.h - h * 2.3f, w, h};
    return {heap.centre().x + shift - w / 2, heap.y + heap.h - h * (upper ? 1.72f : 1.0f), w, h};
}

std::size_t CountScene::nextInHeap() const {
    return static_cast<std::size_t>(std::clamp(round_.pads() - round_.laid() - 1, 0, 7));
}

std::vector<Thing> CountScene::pieces() const {
    std::vector<Thing> all;
    if (isOfWord()) all.push_back({"word", layout_.subject()});
    const auto pads = padBoxes();
    for (std::size_t i = 0; i < pads.size(); ++i)
        all.push_back({"pad:" + std::to_string(i), pads[i]});
    if (round_.canLay()) all.push_back({"acorn", layout_.acorns(), true});
    if (round_.canFinish()) all.push_back({"done", layout_.done()});
    return all;
}

std::optional<std::string> CountScene::rightPiece() const {
    if (round_.laid() == round_.right()) return "done";
    if (round_.laid() > round_.right()) return "pad:" + std::to_string(round_.laid() - 1);
    return holds("acorn") && carries() ? "pad:" + std::to_string(round_.laid()) : "acorn";
}

void CountScene::pressed(const std::string& piece, Millis) {
    if (piece == "acorn") setting_.voice.cue("lift");
}

void CountScene::tapPiece(const std::string& piece, Millis now) {
    if (piece == "acorn")
        lay(inHeap(nextInHeap()).centre(), now);
    else if (piece == "word")
        murmur(prompts_.word(question()), now);
    else if (piece == "done")
        answered(round_.finish(), now);
    else if (const auto pad = indexIn(piece, "pad")) {
        if (static_cast<int>(*pad) < round_.laid())
            take(now);
        else
            lay(inHeap(nextInHeap()).centre(), now);
    }
}

void CountScene::dropped(const Hand& hand, Millis now) {
    if (hand.thing.name != "acorn") return;
    turn_.beat(now);
    const auto pads = padBoxes();
    const bool near = std::any_of(pads.begin(), pads.end(), [&](const Box& pad) {
        return pad.grown(layout_.px(kReach)).contains(hand.at);
    });
    if (near && round_.canLay())
        lay(hand.at, now);
    else
        released(hand, now);
}

void CountScene::released(const Hand& hand, Millis now) {
    if (hand.thing.name == "acorn") glides_.begin("acorn", hand.at, kMove, now);
}

void CountScene::lay(Point from, Millis now) {
    const auto pad = static_cast<std::size_t>(round_.laid());
    if (round_.lay().kind == Outcome::Kind::nothing) return;
    glides_.begin(acornOn(pad), from, kMove, now);
    setting_.voice.cue("settle");
}

void CountScene::take(Millis now) {
    const auto pad = static_cast<std::size_t>(round_.laid() - 1);
    if (round_.take().kind == Outcome::Kind::nothing) return;
    glides_.begin("acorn", onPad(pad).centre(), kMove, now);
    setting_.voice.cue("lift");
}

void CountScene::drawPads(Painter& painter, Millis now) const {
    const auto pads = padBoxes();
    const Show show = telling_.show(now);
    for (std::size_t i = 0; i < pads.size(); ++i) {
        const Box art = padArt(pads[i]);
        const bool spare = isTogether() && static_cast<int>(i) >= round_.right();
        const bool told = show.kind == Show::Kind::place && show.index == static_cast<int>(i);
        painter.art("pad-small", art, spare ? 0.5f : 1);
        if (told) painter.bracket({art.x, art.y, art.w, art.h * 0.9f});
    }
    for (int i = 0; i < round_.laid(); ++i) {
        const auto pad = static_cast<std::size_t>(i);
        const Box seat = onPad(pad);
        painter.art("acorn", movedTo(seat, glides_.at(acornOn(pad), seat.centre(), now)));
    }
    if (isRight()) painter.leafMark(onPad(static_cast<std::size_t>(round_.laid() - 1)));
}

void CountScene::drawHeap(Painter& painter, Millis now) const {
    const int left = round_.pads() - round_.laid();
    for (int i = 0; i + 1 < left; ++i) painter.art("acorn", inHeap(static_cast<std::size_t>(i)));
    if (left <= 0) return;
    const Box seat = inHeap(nextInHeap());
    // One acorn of the heap follows the finger, wherever the heap was touched.
    const bool follows = holds("acorn") && carries();
    Box box = movedTo(seat, follows ? hand_->at : glides_.at("acorn", seat.centre(), now));
    box.y -= hint(now) * layout_.px(60);
    painter.art("acorn", holds("acorn") ? box.grown(box.w * 0.06f) : box,
                round_.canLay() ? 1 : 0.5f);
}

void CountScene::drawExample(Painter& painter, int step, Millis now) const {
    const auto beats = static_cast<int>(example_->parts.size());
    if (isOfWord())
        painter.pictureCard(pictureOf(example_->subject), layout_.subject(),
                            step == 0 ? Stand::lifted : Stand::resting);
    const auto pads = padBoxes();
    for (std::size_t i = 0; i < pads.size(); ++i) {
        painter.art("pad-small", padArt(pads[i]));
        const int number = static_cast<int>(i);
        const Box seat = onPad(i);
        const Point from = number + 1 == step ? layout_.acorns().centre() : seat.centre();
        if (number < std::min(step, beats))
            painter.art("acorn", movedTo(seat, between(from, seat.centre(), exampleMotion(now))));
        if (number + 1 == step && step <= beats) painter.bracket(padArt(pads[i]));
    }
    const Box done = layout_.done();
    painter.art("ctl-done", step > beats ? done.grown(done.w * 0.08f) : done,
                step > beats ? 1 : 0.35f);
    const std::size_t left = pads.size() - static_cast<std::size_t>(std::min(step, beats));
    for (std::size_t i = 0; i < left; ++i) painter.art("acorn", inHeap(i));
    if (step > beats)
        drawTouched(painter, done.centre(), now);
    else if (step > 0)
        drawTouched(painter, inHeap(left).centre(), now);
}

void CountScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, *step, now);
    if (isOfWord()) drawSubjectCard(painter, layout_.subject(), Stand::resting, now);
    drawPads(painter, now);
    if (isRight() || isExplaining()) return;
    const Box done = layout_.done();
    painter.art("ctl-done", holds("done") ? done.grown(done.w * 0.02f) : done,
                round_.canFinish() ? 1 : 0.35f);
    drawHeap(painter, now);
}

void CountScene::drawExplained(Painter& painter, Millis now) const {
    const Show show = telling_.show(now);
    const int right = round_.right(), chosen = round_.laid();
    const auto columns = static_cast<std::size_t>(std::max(right, chosen));
    const bool over = telling_.isOver(now);
    if (isOfWord()) {
        const Box paper = explainPaper();
        const float side = layout_.px(130);
        painter.pictureCard(pictureOf(question().item().subject),
                            {paper.x + layout_.px(28), paper.centre().y - side / 2, side, side},
                            Stand::resting);
    }
    const int told = over ? right : show.kind == Show::Kind::pair ? show.index + 1 : 0;
    for (int pair = 0; pair < 2; ++pair) {
        const Box row = explainRow(pair);
        const float side = std::min(layout_.px(104), row.w / 9);
        const auto boxes = rowIn(row, columns, side * 0.8f, side * 0.8f * kAcornTall, side * 0.2f);
        for (std::size_t i = 0; i < columns; ++i) {
            const Box& box = boxes[i];
            const float w = side, h = w * 70 / 110;
            painter.art("pad-small", {box.centre().x - w / 2, box.y + box.h - h * 0.57f, w, h},
                        0.8f);
            const int number = static_cast<int>(i);
            if (number < (pair == 0 ? chosen : told)) painter.art("acorn", box);
            // The words that found no acorn, or the acorns that found no word.
            const bool decides = over && number >= std::min(right, chosen);
            const bool sounds = number == told - 1 && !over;
            if (decides || sounds) painter.bracket({box.x, box.y, box.w, box.h + side * 0.28f});
        }
        if (pair == 1 && over) painter.leafMark(boxes[static_cast<std::size_t>(right - 1)]);
    }
}

}  // namespace wrenlet::game
