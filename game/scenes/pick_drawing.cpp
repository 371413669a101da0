#include <algorithm>
#include <cmath>

#include "game/scenes/pick_scene.hpp"

namespace wrenlet::game {
namespace {

using exercise::Task;

/// A sound that is asked about stands where it is in the word: on one of three pads.
bool isPlaced(const exercise::Item& item) {
    const Task task = item.skill.task;
    return task == Task::first || task == Task::middle || task == Task::last;
}

/// A card that goes from its stone to `seat`, with its middle at `centre`: it takes on the size of
/// its seat as it comes.
Box onItsWay(const Box& stone, const Box& seat, Point centre) {
    const auto away = [&seat](Point from) {
        return std::hypot(from.x - seat.centre().x, from.y - seat.centre().y);
    };
    const float part = std::min(1.0f, away(centre) / std::max(1.0f, away(stone.centre())));
    const float side = seat.w + (stone.w - seat.w) * part;
    return {centre.x - side / 2, centre.y - side / 2, side, side};
}

std::size_t padOf(const exercise::Item& item) {
    return item.skill.task == Task::first ? 0 : item.skill.task == Task::middle ? 1 : 2;
}

}  // namespace

PickScene::Table PickScene::table() const {
    const auto& item = question().item();
    const Pieces pieces(setting_.pack, item);
    Table table{item, pieces.heard(), {}, question().rightPlace()};
    for (std::size_t place = 0; place < round_.places(); ++place)
        table.choices.push_back(pieces.choice(question().choiceAt(place)));
    return table;
}

PickScene::Table PickScene::exampleTable() const {
    const Pieces pieces(setting_.pack, *example_);
    Table table{*example_, pieces.heard(), {}, example_->answer};
    for (std::size_t i = 0; i < example_->choices.size(); ++i)
        table.choices.push_back(pieces.choice(i));
    return table;
}

std::vector<Box> PickScene::heardBoxes(const Table& table) const {
    if (table.heard.empty()) return {};
    if (isPlaced(table.item)) return {layout_.tiles({false, false})[padOf(table.item)]};
    return layout_.compared(table.heard.size());
}

std::vector<Box> PickScene::besideBoxes(const Table& table) const {
    if (isPlaced(table.item) || table.heard.empty()) return heardBoxes(table);
    auto boxes = layout_.compared(table.heard.size() + 1);
    boxes.pop_back();
    return boxes;
}

Box PickScene::mateBox(const Table& table, std::size_t mate) const {
    const Box home = layout_.homes(1).front().art;
    const float side = home.h * 0.56f;
    const float from_middle =
        static_cast<float>(mate) - 0.5f * static_cast<float>(table.choices.size() - 2);
    return {home.centre().x + from_middle * side * 1.08f - side / 2, home.y + home.h * 0.62f - side,
            side, side};
}

Box PickScene::foundBox(const Table& table) const {
    const Box stage = layout_.stage();
    if (table.heard.empty() || isPlaced(table.item)) {
        const float side = layout_.touchPx(176);
        const float above = layout_.tiles({false, false}).front().y - layout_.gap() - side;
        return {stage.centre().x - side / 2, std::max(stage.y, above), side, side};
    }
    const auto boxes = layout_.compared(table.heard.size() + 1);
    return boxes.back();
}

void PickScene::drawStage(Painter& painter, const Table& table) const {
    if (table.isOddOne()) painter.art("home-nest", layout_.homes(1).front().art);
    if (!isPlaced(table.item)) return;
    for (const Box& seat : layout_.tiles({false, false})) {
        const float w = seat.w * 1.34f, h = w * 110 / 150;
        painter.art("pad", {seat.centre().x - w / 2, seat.y + seat.h - h * 0.62f, w, h});
    }
}

void PickScene::drawStone(Painter& painter, const Box& box) const {
    const float w = box.w * 1.24f, h = w * 70 / 220;
    painter.art("stone", {box.centre().x - w / 2, box.y + box.h - h * 0.58f, w, h});
}

void PickScene::drawHeard(Painter& painter, Millis now) const {
    const Table all = table();
    const Show show = telling_.show(now);
    drawStage(painter, all);
    // What is asked makes room for what belongs to it.
    const auto boxes = isRight() ? besideBoxes(all) : heardBoxes(all);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const bool shown = (show.kind == Show::Kind::tile && show.index == static_cast<int>(i)) ||
                           (show.kind == Show::Kind::subject && all.heard[i].clip.empty());
        const bool held = holds("heard:" + std::to_string(i));
        paint(painter, all.heard[i], boxes[i], shown || held ? Stand::lifted : Stand::resting);
        if (shown && telling_.isSounding(now)) painter.speaking(boxes[i]);
    }
    if (!isRight() || !all.isOddOne()) return;
    // The ones that rhyme live together.
    const auto stones = layout_.stones(all.choices.size());
    std::size_t mate = 0;
    for (std::size_t place = 0; place < all.choices.size(); ++place) {
        if (place == all.right) continue;
        const Box seat = mateBox(all, mate);
        const bool shown = show.kind == Show::Kind::tile && show.index == static_cast<int>(mate);
        const Point centre = glides_.at(nameAt(place), seat.centre(), now);
        paint(painter, all.choices[place], onItsWay(stones[place], seat, centre),
              shown ? Stand::lifted : Stand::resting);
        ++mate;
    }
    painter.art("home-nest-front", layout_.homes(1).front().art);
}

void PickScene::drawChoices(Painter& painter, Millis now) const {
    const Table all = table();
    const Show show = telling_.show(now);
    const auto stones = layout_.stones(round_.places());
    const bool gathers = isRight() && all.isOddOne();
    for (std::size_t place = 0; place < stones.size(); ++place) {
        drawStone(painter, stones[place]);
        const bool is_it = place == all.right;
        if (gathers && !is_it) continue;
        const std::string name = nameAt(place);
        Box box = stones[place];
        if (isRight() && is_it && !gathers) {
            const Box seat = foundBox(all);
            box = onItsWay(box, seat, glides_.at(name, seat.centre(), now));
        } else {
            box = placed(name, box, now);
        }
        const bool shown = show.kind == Show::Kind::place && show.index == static_cast<int>(place);
        const bool chosen = round_.chosen() == place;
        if (!hand_) box.y -= hint(now) * layout_.px(30);
        const bool off = (isTogether() || isRight()) && !is_it;
        if (isOpen() && (chosen || (isTogether() && is_it))) painter.sunBelow(box, 24);
        paint(painter, all.choices[place], box,
              off                              ? Stand::done
              : shown || chosen || holds(name) ? Stand::lifted
                                               : Stand::resting);
        if (shown && telling_.isSounding(now)) painter.speaking(box);
        if (isRight() && is_it) painter.leafMark(box);
    }
}

void PickScene::drawExample(Painter& painter, int step, Millis now) const {
    const Table all = exampleTable();
    drawStage(painter, all);
    const bool found = step >= SolvedStep::found;
    const auto boxes = found ? besideBoxes(all) : heardBoxes(all);
    for (std::size_t i = 0; i < boxes.size(); ++i) {
        const Box& box = boxes[i];
        const bool part = step == SolvedStep::heard_part;
        const bool sounds = step == SolvedStep::heard + static_cast<int>(i) || part;
        paint(painter, all.heard[i], box, sounds ? Stand::lifted : Stand::resting);
        if (sounds && telling_.isSounding(now)) painter.speaking(box);
        if (part) painter.bracket(partOf(all.heard[i], box));
    }
    const auto stones = layout_.stones(all.choices.size());
    for (std::size_t place = 0; place < stones.size(); ++place) {
        drawStone(painter, stones[place]);
        if (found && (place == all.right) != all.isOddOne()) continue;
        const bool told = found && step == SolvedStep::found_part;
        const bool named = told || step == SolvedStep::named + static_cast<int>(place);
        paint(painter, all.choices[place], stones[place], named ? Stand::lifted : Stand::resting);
        if (named && telling_.isSounding(now)) painter.speaking(stones[place]);
    }
    if (found) drawFound(painter, all, step, now);
}

void PickScene::drawFound(Painter& painter, const Table& table, int step, Millis now) const {
    const auto stones = layout_.stones(table.choices.size());
    const float way = step == SolvedStep::found ? exampleMotion(now) : 1;
    const auto boxOf = [&](std::size_t place, const Box& seat) {
        return onItsWay(stones[place], seat, between(stones[place].centre(), seat.centre(), way));
    };
    if (!table.isOddOne()) {
        const Piece& right = table.choices[table.right];
        const Box box = boxOf(table.right, foundBox(table));
        const bool part = step == SolvedStep::found_part;
        paint(painter, right, box, Stand::lifted);
        if ((step == SolvedStep::found || part) && telling_.isSounding(now)) painter.speaking(box);
        if (part) painter.bracket(partOf(right, box));
        return;
    }
    std::size_t mate = 0;
    for (std::size_t place = 0; place < table.choices.size(); ++place) {
        if (place == table.right) continue;
        const bool told = step == (mate == 0 ? SolvedStep::found : SolvedStep::heard_part);
        paint(painter, table.choices[place], boxOf(place, mateBox(table, mate)),
              told ? Stand::lifted : Stand::resting);
        ++mate;
    }
    painter.art("home-nest-front", layout_.homes(1).front().art);
}

void PickScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, *step, now);
    drawHeard(painter, now);
    drawChoices(painter, now);
}

void PickScene::drawExplained(Painter& painter, Millis now) const {
    const auto chosen = question().wrongChoice().value_or(question().item().answer);
    paintCompared(painter, layout_, Pieces(setting_.pack, question().item()).compared(chosen),
                  {explainRow(0), explainRow(1)}, telling_, now);
}

}  // namespace wrenlet::game
