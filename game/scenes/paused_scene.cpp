#include "game/scenes/paused_scene.hpp"


namespace wrenlet::game {

void PausedScene::drawGround(Painter& painter, Millis) const {
    painter.pond({});
    drawWren(painter, "wren-blink");
}

void PausedScene::drawPieces(Painter& painter, Millis now) const {
    const float side = layout_.px(150), line = layout_.linePx(34);
    const Point middle = layout_.stage().centre();
    painter.art("set-pause", {middle.x - side / 2, middle.y - side / 2, side, side});
    const float w = line * 14.5f, h = line * 1.6f;
    const Box note = {middle.x - w / 2, middle.y + side / 2 + layout_.gap(), w, h};
    painter.panel(note, palette::kPaper, palette::kInk);
    painter.text("Adults: hold the little door to go on.", note.centre(), line);
    drawLeave(painter, now);
}

}  // namespace wrenlet::game
