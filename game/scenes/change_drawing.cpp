#include <algorithm>

#include "game/scenes/change_scene.hpp"

// How a change looks, asked, done and explained; what it does stands in change_scene.cpp.

namespace wrenlet::game {
namespace {

using Kind = Show::Kind;

/// A place in the row where a tile is to come.
void drawGap(Painter& painter, const Box& box) {
    const float w = box.w * 1.2f, h = w * 110 / 150;
    painter.art("pad", {box.centre().x - w / 2, box.centre().y - h * 0.4f, w, h});
}

}  // namespace

void ChangeScene::drawSubject(Painter& painter, Millis now) const {
    const Box seat = layout_.subject();
    const auto& chain = round_.chain();
    const std::size_t earlier = chain.size() - (isRight() ? 2 : 1);
    const float side = std::min(seat.w * 0.46f, layout_.px(84));
    for (std::size_t i = 0; i < earlier; ++i) {
        const float x = seat.x - layout_.gap() - side * 1.08f * static_cast<float>(earlier - i);
        const Box box = {x, seat.y + seat.h - side, side, side};
        painter.pictureCard(pictureOf(chain[i]), box, Stand::resting);
        if (round_.isClosed() && i == 0) painter.leafMark(box);
    }
    const Box box = movedTo(seat, glides_.at("subject", seat.centre(), now));
    drawSubjectCard(painter, box, round_.isChanged() ? Stand::past : Stand::resting, now);
}

void ChangeScene::drawRow(Painter& painter, Millis now) const {
    const auto seats = row();
    const Show show = telling_.show(now);
    const bool sounding = telling_.isSounding(now);
    painter.joinedPad(seats.front().box, seats.back().box);
    for (std::size_t i = 0; i < seats.size(); ++i) {
        const Seat& seat = seats[i];
        if (seat.name == "gap") {
            drawGap(painter, seat.box);
            continue;
        }
        const bool loose = seat.name == "loose";
        Box box = loose ? placed(seat.name, seat.box, now)
                        : movedTo(seat.box, glides_.at(seat.name, seat.box.centre(), now));
        const bool alone = loose && !round_.tiles().puts && isOpen();
        if (loose) box.y += (alone ? hint(now) * layout_.px(40) : 0) + layout_.px(8);
        const bool sounds =
            sounding &&
            ((show.kind == Kind::loose && loose) ||
             (show.kind == Kind::tile && round_.isChanged() && show.index == static_cast<int>(i)));
        if (alone && !holds("loose")) painter.sunBelow(box, 20);
        painter.tile(seat.mark, box, sounds || holds(seat.name) ? Stand::lifted : Stand::resting);
        if (sounds) painter.speaking(box);
    }
}

void ChangeScene::drawOutside(Painter& painter, Millis now) const {
    if (round_.isChanged()) return;
    const Show show = telling_.show(now);
    if (round_.tiles().takes && round_.isTaken()) {
        const Box seat = outside("loose");
        painter.tile(round_.tiles().at % 4 + 1,
                     movedTo(seat, glides_.at("loose", seat.centre(), now)), Stand::done);
    }
    if (!round_.tiles().puts) return;
    Box box = placed("new", outside("new"), now);
    box.y -= hint(now) * layout_.px(46);
    const bool sounds = show.kind == Kind::fresh && telling_.isSounding(now);
    if (isOpen() && !holds("new")) painter.sunBelow(box, 20);
    painter.tile(markOfNew(round_.tiles()), box,
                 sounds || holds("new") ? Stand::lifted : Stand::resting);
    if (sounds) painter.speaking(box);
}

void ChangeScene::drawExample(Painter& painter, ChangeStep step, Millis now) const {
    const auto tiles = exercise::changeTiles(*example_, setting_.pack.vocabulary);
    const bool done = step >= ChangeStep::changed;
    const float part = step == ChangeStep::come_out ? 1 : exampleMotion(now);
    painter.pictureCard(pictureOf(example_->subject), layout_.subject(),
                        step == ChangeStep::begin ? Stand::lifted
                        : done                    ? Stand::done
                                                  : Stand::resting);
    const auto asked = row(tiles, false, false);
    painter.joinedPad(asked.front().box, asked.back().box);
    const auto seats = done ? row(tiles, tiles.takes, tiles.puts) : asked;
    if (tiles.puts && !done) {
        Box box = layout_.waiting();
        const bool acts = step == ChangeStep::put;
        if (acts) box.y -= layout_.px(46) * part;
        painter.tile(markOfNew(tiles), box, acts ? Stand::lifted : Stand::resting);
    }
    for (const Seat& seat : seats) {
        if (seat.name == "gap") {
            drawGap(painter, seat.box);
            continue;
        }
        // Where it lay before this step.
        Point from = seat.name == "new" ? layout_.waiting().centre() : seat.box.centre();
        for (const Seat& before : asked)
            if (before.name == seat.name) from = before.box.centre();
        Box box = movedTo(seat.box, between(from, seat.box.centre(), part));
        const bool taken = seat.name == "loose" && step >= ChangeStep::take;
        if (taken) box.y += box.h * 0.45f * (step == ChangeStep::take ? part : 1);
        const bool acts = taken || (seat.name == "new" && step == ChangeStep::changed);
        painter.tile(seat.mark, box, acts ? Stand::lifted : Stand::resting);
    }
    const bool takes = step == ChangeStep::take && !tiles.puts;
    for (const Seat& seat : asked)
        if (takes && seat.name == "loose") drawTouched(painter, seat.box.centre(), now);
    if (step == ChangeStep::put) drawTouched(painter, layout_.waiting().centre(), now);
    if (step != ChangeStep::come_out) return;
    const Box card = layout_.stones(1).front();
    painter.pictureCard(pictureOf(example_->choices[example_->answer].id), card, Stand::lifted);
    painter.leafMark(card);
    drawTouched(painter, card.centre(), now);
}

void ChangeScene::drawRound(Painter& painter, Millis now) const {
    if (const auto step = exampleStep(now); step && example_ != nullptr)
        return drawExample(painter, static_cast<ChangeStep>(*step), now);
    drawSubject(painter, now);
    if (!round_.isChanged() && !round_.tiles().puts) drawGap(painter, outside("loose"));
    drawRow(painter, now);
    drawOutside(painter, now);
    if (round_.isChanged()) drawChoices(painter, now);
}

std::vector<ChangeScene::Told> ChangeScene::explainedTiles(int pair) const {
    const auto& item = question().item();
    const auto& tiles = round_.tiles();
    const auto wrong = question().wrongChoice().value_or(item.answer);
    const bool unchanged = pair == 0 && item.choices[wrong].id == item.subject;
    std::vector<Told> told;
    if (unchanged || (pair == 1 && !tiles.puts)) {
        // The row as it was: what decides stayed in it, or went.
        for (std::size_t i = 0; i < tiles.before.size(); ++i)
            told.push_back({i % 4 + 1, tiles.takes && i == tiles.at, pair == 1 && i == tiles.at});
        if (told.size() < 2) told.clear();
        return told;
    }
    const auto parts = pair == 1 ? tiles.after : prompts_.changeParts(item, item.choices[wrong].id);
    if (parts.size() < 2) return told;
    std::size_t decides = tiles.at;
    if (pair == 0) {
        decides = 0;
        while (decides < parts.size() && decides < tiles.after.size() &&
               parts[decides].clip == tiles.after[decides].clip)
            ++decides;
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const bool is_new = pair == 1 && i == tiles.at;
        told.push_back({is_new ? markOfNew(tiles) : markOf(parts[i]), i == decides, false});
    }
    // Parts that the asked words lack get the marks that are left.
    for (Told& tile : told) {
        if (tile.mark != 0) continue;
        tile.mark = 1;
        while (tile.mark < 4 && std::any_of(told.begin(), told.end(), [&](const Told& other) {
                   return &other != &tile && other.mark == tile.mark;
               }))
            ++tile.mark;
    }
    return told;
}

void ChangeScene::drawExplainedRow(Painter& painter, int pair, Millis now) const {
    const auto& item = question().item();
    const Show show = telling_.show(now);
    const bool over = telling_.isOver(now);
    const bool speaks = show.kind == Kind::pair && show.pair == pair && telling_.isSounding(now);
    const auto choice = pair == 0 ? question().wrongChoice().value_or(item.answer) : item.answer;
    const auto told = explainedTiles(pair);

    const Box row = explainRow(pair);
    const float side = std::min(row.h - layout_.px(48), layout_.px(170));
    const float gap = layout_.px(48);
    const auto tiles = static_cast<float>(told.size());
    const float small =
        told.empty() ? 0 : std::min(side * 0.62f, (row.w - side - gap) / (tiles + 1));
    const float y = row.y + (row.h - layout_.px(30)) / 2;
    float x = row.centre().x - (side + gap + small * tiles) / 2;
    int sounding = 0;  // counts the tiles that are said
    for (const Told& tile : told) {
        const Box box = {x, tile.gone ? y - small * 0.2f : y - small / 2, small, small};
        const bool sounds = speaks && show.part && !tile.gone && show.index == sounding;
        if (!tile.gone) ++sounding;
        painter.tile(tile.mark, box,
                     tile.gone ? Stand::done
                     : sounds  ? Stand::lifted
                               : Stand::resting);
        if (sounds || (over && tile.decides)) painter.bracket(box);
        x += small;
    }
    const Box card = {x + gap, y - side / 2, side, side};
    const bool sounds = speaks && !show.part;
    painter.pictureCard(pictureOf(item.choices[choice].id), card,
                        sounds ? Stand::lifted : Stand::resting);
    if (sounds) painter.speaking(card);
    if (pair == 1) painter.leafMark(card);
}

std::size_t ChangeScene::markOf(const exercise::Part& part) const {
    const auto& before = round_.tiles().before;
    const auto& after = round_.tiles().after;
    for (std::size_t i = 0; i < before.size(); ++i)
        if (before[i].clip == part.clip) return i % 4 + 1;
    if (round_.tiles().puts && after[round_.tiles().at].clip == part.clip)
        return markOfNew(round_.tiles());
    return 0;
}

void ChangeScene::drawExplained(Painter& painter, Millis now) const {
    const Show show = telling_.show(now);
    drawExplainedRow(painter, 0, now);
    const bool reached = show.kind == Kind::pair && show.pair == 1;
    if (reached || telling_.isOver(now)) drawExplainedRow(painter, 1, now);
}

}  // namespace wrenlet::game
