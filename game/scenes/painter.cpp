#include "game/scenes/painter.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace wrenlet::game {
namespace {

int whole(float length) {
    return std::max(1, static_cast<int>(std::lround(length)));
}

Sprite artSprite(std::string_view name, const Box& box) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::art;
    sprite.name = name;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    return sprite;
}

Sprite textSprite(std::string_view text, float height, Colour colour, bool bold) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::text;
    sprite.name = text;
    sprite.height = whole(height);
    sprite.colour = colour;
    sprite.bold = bold;
    return sprite;
}

constexpr float kCardRadius = 24, kTileRadius = 20, kLine = 3;
constexpr float kLiftedScale = 1.04f;
constexpr float kLetterTall = 0.8f;  // its line height, of a tile's

}  // namespace

void Painter::put(Sprite sprite, Point centre, float alpha) {
    const float there = std::clamp(alpha * presence_, 0.0f, 1.0f);
    const auto byte = static_cast<std::uint8_t>(std::lround(there * 255));
    if (byte > 0) frame_.push_back({std::move(sprite), centre, byte});
}

void Painter::art(std::string_view name, const Box& box, float alpha) {
    put(artSprite(name, box), box.centre(), alpha);
}

void Painter::facingArt(std::string_view name, const Box& box) {
    Sprite sprite = artSprite(name, box);
    sprite.flipped = layout_.isLeftHanded();
    put(std::move(sprite), box.centre(), 1);
}

void Painter::picture(std::string_view name, const Box& box, float alpha) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::picture;
    sprite.name = name;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    put(std::move(sprite), box.centre(), alpha);
}

void Painter::text(std::string_view text, Point centre, float height, Colour colour, bool bold) {
    if (!text.empty()) put(textSprite(text, height, colour, bold), centre, 1);
}

void Painter::textWithin(std::string_view text, const Box& box, Colour colour, bool bold) {
    if (text.empty()) return;
    Sprite sprite = textSprite(text, box.h, colour, bold);
    sprite.width = whole(box.w);
    put(std::move(sprite), box.centre(), 1);
}

void Painter::textFromLeft(std::string_view text, const Box& box, Colour colour, bool bold) {
    if (text.empty()) return;
    Sprite sprite = textSprite(text, box.h, colour, bold);
    sprite.width = whole(box.w);
    sprite.from_left = true;
    put(std::move(sprite), box.centre(), 1);
}

void Painter::fill(const Box& box, Colour colour, float alpha) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::fill;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    sprite.colour = colour;
    put(std::move(sprite), box.centre(), alpha);
}

void Painter::card(const Box& box, Stand stand, float radius) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::card;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    sprite.colour = palette::kCard;
    sprite.edge_colour = palette::kInk;  // deep would not stand out from the water
    sprite.radius = whole(radius);
    sprite.edge_px = whole(layout_.px(kLine));
    const bool lies = stand == Stand::done || stand == Stand::past;
    sprite.shadow_px = lies ? 0 : whole(layout_.px(stand == Stand::lifted ? 16 : 6));
    put(std::move(sprite), box.centre(), stand == Stand::done ? 0.5f : 1);
    // Deep, within the ink that stands out from the water.
    if (stand == Stand::lifted) {
        const float in = layout_.px(kLine);
        panel(box.grown(-in), palette::kCard, palette::kDeep, radius / layout_.px(1) - kLine);
    }
}

void Painter::panel(const Box& box, Colour colour, Colour edge, float radius) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::card;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    sprite.colour = colour;
    sprite.edge_colour = edge;
    sprite.radius = whole(layout_.px(radius));
    sprite.edge_px = whole(layout_.px(kLine));
    put(std::move(sprite), box.centre(), 1);
}

void Painter::ring(const Box& box, int part, Colour colour) {
    Sprite sprite;
    sprite.kind = Sprite::Kind::ring;
    sprite.width = whole(box.w);
    sprite.height = whole(box.h);
    sprite.colour = colour;
    sprite.edge_px = whole(layout_.px(8));
    sprite.part = std::clamp(part, 0, 24);
    put(std::move(sprite), box.centre(), 1);
}

void Painter::pip(const Box& box, bool full) {
    panel(box, full ? palette::kInk : palette::kCard, palette::kInk, 5);
}

void Painter::pictureCard(std::string_view picture_name, const Box& box, Stand stand) {
    const Box shown = stand == Stand::lifted ? box.grown(box.w * (kLiftedScale - 1) / 2) : box;
    card(shown, stand, std::min(layout_.px(kCardRadius), shown.w / 6));
    const float alpha = stand == Stand::done || stand == Stand::past ? 0.5f : 1;
    if (picture_name.empty())
        art("mark-speaking", shown.grown(-shown.w * 0.3f), alpha);
    else
        picture(picture_name, shown.grown(-shown.w * 0.12f), alpha);
}

void Painter::tile(std::size_t mark, const Box& box, Stand stand) {
    const Box shown = stand == Stand::lifted ? box.grown(box.w * (kLiftedScale - 1) / 2) : box;
    card(shown, stand, std::min(layout_.px(kTileRadius), shown.w / 6));
    art("tile-mark-" + std::to_string(mark), shown.grown(-shown.w * 0.19f),
        stand == Stand::done ? 0.5f : 1);
}

void Painter::signCard(std::string_view sign, const Box& box, Stand stand) {
    const Box shown = stand == Stand::lifted ? box.grown(box.w * (kLiftedScale - 1) / 2) : box;
    card(shown, stand, std::min(layout_.px(kCardRadius), shown.w / 6));
    art(sign, shown.grown(-shown.w * 0.06f), stand == Stand::done ? 0.5f : 1);
}

void Painter::letterTile(std::string_view letter, const Box& box, Stand stand) {
    const Box shown = stand == Stand::lifted ? box.grown(box.w * (kLiftedScale - 1) / 2) : box;
    card(shown, stand, std::min(layout_.px(kTileRadius), shown.w / 6));
    text(letter, shown.centre(), shown.h * kLetterTall);
}

void Painter::joinedPad(const Box& first, const Box& last) {
    const float w = (last.x + last.w - first.x) * 1.22f, h = first.h * 0.95f;
    art("pad-joined", {(first.x + last.x + last.w - w) / 2, first.y + first.h - h * 0.62f, w, h});
}

void Painter::sunBelow(const Box& box, float radius) {
    const Box halo = box.grown(layout_.px(9));
    Sprite sprite;
    sprite.kind = Sprite::Kind::card;
    sprite.width = whole(halo.w);
    sprite.height = whole(halo.h);
    sprite.colour = palette::kSun;
    sprite.edge_colour = palette::kInk;
    sprite.radius = whole(layout_.px(radius + 8));
    sprite.edge_px = whole(layout_.px(2));
    put(std::move(sprite), halo.centre(), 1);
}

void Painter::bracket(const Box& box, Colour colour) {
    const float line = layout_.px(8), tall = layout_.px(18);
    const float y = box.y + box.h + layout_.px(10);
    fill({box.x, y + tall - line, box.w, line}, colour);
    fill({box.x, y, line, tall}, colour);
    fill({box.x + box.w - line, y, line, tall}, colour);
}

void Painter::speaking(const Box& box) {
    const float side = layout_.px(56);
    art("mark-speaking", {box.x + box.w - side * 0.55f, box.y - side * 0.45f, side, side});
}

void Painter::leafMark(const Box& box) {
    const float side = layout_.px(64);
    art("leaf-mark", {box.x + box.w - side * 0.7f, box.y - side * 0.3f, side, side});
}

void Painter::markFrame(const Box& box) {
    const float out = layout_.px(10), thick = layout_.px(7), rim = layout_.px(3);
    const Box all = box.grown(out);
    const float corner = layout_.px(18);
    const auto bar = [&](const Box& at) {
        fill(at.grown(rim), palette::kPaper);
        fill(at, palette::kInk);
    };
    bar({all.x + corner, all.y, all.w - 2 * corner, thick});
    bar({all.x + corner, all.y + all.h - thick, all.w - 2 * corner, thick});
    bar({all.x, all.y + corner, thick, all.h - 2 * corner});
    bar({all.x + all.w - thick, all.y + corner, thick, all.h - 2 * corner});
}

void Painter::pond(const Growth& growth) {
    const float w = layout_.width(), h = layout_.height();
    const bool tall = layout_.isPortrait();
    fill({0, 0, w, h}, palette::kWater);
    const float far = std::max(w / 1280, h * (tall ? 0.34f : 0.5f) / 420);
    art("bg-far", {(w - 1280 * far) / 2, 0, 1280 * far, 420 * far});
    art("bg-water-rings",
        {(w - 1280 * far) / 2, 420 * far + (h - 620 * far) * 0.1f, 1280 * far, 260 * far});

    static constexpr std::array<Point, 12> kFlowers = {{{.33f, .58f},
                                                        {.93f, .55f},
                                                        {.62f, .55f},
                                                        {.81f, .64f},
                                                        {.22f, .66f},
                                                        {.47f, .62f},
                                                        {.71f, .69f},
                                                        {.97f, .66f},
                                                        {.38f, .68f},
                                                        {.56f, .70f},
                                                        {.88f, .71f},
                                                        {.27f, .73f}}};
    for (int i = 0; i < std::min<int>(growth.flowers, kFlowers.size()); ++i) {
        const float side = layout_.px(44);
        const Point at = kFlowers[static_cast<std::size_t>(i)];
        art("lily-flower", {at.x * w - side / 2, at.y * h - side / 2, side, side * 0.9f});
    }
    const float near = std::max(w / 1280, h / 800 * (tall ? 1.1f : 1.0f));
    art("bg-near-bank", {(w - 1280 * near) / 2, h - 200 * near, 1280 * near, 200 * near});
}

void Painter::grownNest(const Box& box, const Growth& growth) {
    const float reed_w = box.w * 0.36f, reed_h = reed_w * 1.9f;
    const std::string reed = "reed-" + std::to_string(std::clamp(growth.reeds, 0, 3));
    art(reed, {box.x - reed_w * 0.5f, box.y + box.h - reed_h, reed_w, reed_h});
    art(reed, {box.x + box.w - reed_w * 0.5f, box.y + box.h - reed_h, reed_w, reed_h});
    art("nest-" + std::to_string(std::clamp(growth.nest, 0, 4)), box);
}

void Painter::reedsInFront() {
    const float w = layout_.px(150), h = w * 420 / 220;
    // Never where the wren sits; in portrait she is above, and pieces wait at the left.
    const bool at_left = layout_.isLeftHanded() && !layout_.isPortrait();
    const float x = at_left ? -w * 0.18f : layout_.width() - w * 0.82f;
    art("bg-reeds", {x, layout_.height() - h, w, h});
}

}  // namespace wrenlet::game
