#include "game/scenes/layout.hpp"

#include <algorithm>
#include <cmath>

namespace wrenlet::game {
namespace {

constexpr float kTouchMm = 20, kGapMm = 5, kEdgeMm = 4.5f;
constexpr float kControl = 96, kWren = 190, kCard = 176, kStoneBelow = 10, kTile = 124,
                kLeafBox = 156;
constexpr float kHomeW = 360, kHomeH = 260, kHeadOverlap = 44;
constexpr std::size_t kMostBadges = 24;
constexpr float kCaptionLines = 6, kCaptionLinesBeside = 4;
constexpr float kWithPerch = 1.3f;  // the wren and what she sits on, of her own height

Box centred(Point centre, float w, float h) {
    return {centre.x - w / 2, centre.y - h / 2, w, h};
}

}  // namespace

std::vector<Box> rowIn(const Box& area, std::size_t count, float w, float h, float gap) {
    const auto n = static_cast<float>(count);
    const float fits = (area.w - gap * (n - 1)) / n;
    const float side = std::min(w, fits);
    const float height = w > 0 ? h * side / w : h;
    const float all = side * n + gap * (n - 1);
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i)
        boxes.push_back({area.x + (area.w - all) / 2 + static_cast<float>(i) * (side + gap),
                         area.y + (area.h - height) / 2, side, height});
    return boxes;
}

Box HomeBox::sorted(std::size_t index) const {
    const float step = small * 0.86f;
    const float first = art.centre().x - step * 1.5f;
    const float foot = art.y + art.h * 163 / kHomeH;
    const float x = first + step * static_cast<float>(index % 4);
    return {x - small / 2, foot - small, small, small};
}

Layout::Layout(ScreenSize screen, LaidOutFor whom) : screen_(screen), for_(whom) {
    const float w = width(), h = height();
    u_ = isPortrait() ? std::min(w / 800, h / 1280) : std::min(w / 1280, h / 800);
    const float mm = screen_.mm_per_px > 0 ? 1 / screen_.mm_per_px : 0;
    gap_ = std::max(24 * u_, kGapMm * mm);
    margin_ = std::max(16 * u_, kEdgeMm * mm);
}

float Layout::touchPx(float length) const {
    const float least = screen_.mm_per_px > 0 ? kTouchMm / screen_.mm_per_px : 0;
    // On a screen too small for 20 mm, a sixth of its short side is the best there is.
    const float most = std::min(width(), height()) / 4.6f;
    return std::max(px(length), std::min(least, most));
}

float Layout::linePx(float length) const {
    return std::max(px(length), kLeastLine);
}

Box Layout::sided(const Box& box) const {
    return for_.left_hand ? Box{width() - box.x - box.w, box.y, box.w, box.h} : box;
}

Box Layout::replay() const {
    const float side = touchPx(kControl);
    return sided({margin_, margin_, side, side});
}

Box Layout::leave() const {
    const float side = touchPx(kControl);
    return sided({width() - margin_ - side, margin_, side, side});
}

Box Layout::wren() const {
    const float side = touchPx(kWren);
    if (isPortrait()) return centred({width() / 2, margin_ + side / 2}, side, side);
    const float top = replay().y + replay().h + gap_;
    float y = height() * 0.42f;
    if (for_.captions)
        y = std::min(
            y, height() - margin_ / 2 - kCaptionLines * captionLine() - px(16) - side * kWithPerch);
    y = std::max(top, y);
    return sided({margin_, std::min(y, height() - margin_ - side), side, side});
}

Box Layout::captions() const {
    const Box bird = wren();
    if (isPortrait()) {
        const float y = replay().y + replay().h + gap_ / 2;
        const float right = bird.centre().x - bird.w * 0.62f - gap_ / 2;
        return sided(
            {margin_ / 2, y, right - margin_ / 2, kCaptionLinesBeside * captionLine() + px(16)});
    }
    const float y = bird.y + bird.h * kWithPerch;
    const float right = margin_ + bird.w + gap_ / 2;
    return sided({margin_ / 2, y, right - margin_ / 2, height() - margin_ / 2 - y});
}

Box Layout::main() const {
    if (isPortrait()) {
        float top = std::max(wren().y + wren().h, replay().y + replay().h) + gap_;
        if (for_.captions) top = std::max(top, captions().y + captions().h + gap_ / 2);
        return {margin_, top, width() - 2 * margin_, height() - margin_ - top};
    }
    const float x = margin_ + wren().w + gap_;
    return sided({x, margin_, width() - margin_ - x, height() - 2 * margin_});
}

Box Layout::pieces() const {
    const Box all = main();
    const float h = std::max(touchPx(kCard), isPortrait() ? height() * 0.24f : 0);
    return {all.x, all.y + all.h - h, all.w, h};
}

Box Layout::stage() const {
    Box all = main();
    all.h = pieces().y - gap_ - all.y;
    if (isPortrait()) return all;
    const float aside = leave().w + gap_;
    return {all.x + (for_.left_hand ? aside : 0), all.y, all.w - aside, all.h};
}

std::vector<HomeBox> Layout::homes(std::size_t count) const {
    const Box area = stage();
    const auto n = static_cast<float>(count);
    const float head = touchPx(kCard - 8);
    const float across = (area.w - gap_ * (n - 1)) / n;
    const float down = (area.h - head) / (kHomeH - kHeadOverlap);
    const float scale = std::min({across / kHomeW, down, u_ * 1.25f});
    const float w = std::max(kHomeW * scale, head), h = kHomeH * scale;
    const float art_top = head - kHeadOverlap * scale;
    std::vector<HomeBox> boxes;
    for (const Box& all : rowIn(area, count, w, art_top + h, gap_)) {
        HomeBox home;
        home.all = all;
        home.head = {all.centre().x - head / 2, all.y, head, head};
        home.art = {all.x, all.y + all.h - h, all.w, h};
        home.small = 78 * scale;
        boxes.push_back(home);
    }
    return boxes;
}

Box Layout::card() const {
    const float side = touchPx(kCard);
    const Box area = stage();
    return centred({area.centre().x, pieces().centre().y}, side, side);
}

std::vector<Box> Layout::tiles(const std::vector<bool>& leaning) const {
    const Box area = stage();
    const auto count = static_cast<float>(leaning.size() + 1);
    const float wide = std::max(gap_, (leaning.size() > 2 ? 56 : 84) * u_);
    const float side = std::min(touchPx(kTile), (area.w - gap_ * (count - 1)) / count);
    const float open = std::min(wide, (area.w - side * count) / (count - 1));
    float all = side * count;
    for (const bool leans : leaning) all += leans ? 0 : open;
    float x = area.centre().x - all / 2;
    const float y = area.y + area.h * (isPortrait() ? 0.5f : 0.55f) - side / 2;
    std::vector<Box> boxes;
    for (std::size_t i = 0; i <= leaning.size(); ++i) {
        boxes.push_back({x, y, side, side});
        x += side + (i < leaning.size() && leaning[i] ? 0 : open);
    }
    return boxes;
}

Box Layout::subject() const {
    const Box area = stage();
    const float side = std::min(touchPx(kCard), area.h * 0.5f);
    const float rest = area.h - side - gap_ - std::min(touchPx(kLeafBox), area.h - side - gap_);
    return {area.centre().x - side / 2, area.y + rest * 0.4f, side, side};
}

Box Layout::belowSubject() const {
    const Box area = stage(), card = subject();
    const float top = card.y + card.h + gap_;
    const float room = area.y + area.h - top;
    return {area.x, top, area.w, std::min(room, touchPx(kLeafBox) * 1.25f)};
}

std::vector<Box> Layout::leaf(std::size_t boxes) const {
    const Box area = belowSubject();
    const float h = std::min(touchPx(kLeafBox), area.h);
    if (boxes > 1) return rowIn(area, boxes, h * 160 / 156, h, gap_);
    constexpr float kShape = 480.0f / 130;
    const float w = std::min(area.w, std::max(h * 3.4f, touchPx(0) * kShape));
    return {centred(area.centre(), w, w / kShape)};
}

std::vector<Box> Layout::row(const std::vector<float>& open) const {
    const Box area = belowSubject();
    float tiles = 0;
    for (const float before : open) tiles += 1 + before;
    const float side = std::min({touchPx(kTile), area.w / std::max(1.0f, tiles), area.h});
    float x = area.centre().x - tiles * side / 2;
    std::vector<Box> boxes;
    for (const float before : open) {
        x += before * side;
        boxes.push_back({x, area.centre().y - side / 2, side, side});
        x += side;
    }
    return boxes;
}

Box Layout::waiting() const {
    const float side = touchPx(kTile);
    return centred({stage().centre().x, pieces().centre().y}, side, side);
}

std::vector<Box> Layout::stones(std::size_t count) const {
    Box area = pieces();
    if (!isPortrait()) {
        area.x = stage().x;
        area.w = stage().w;
    }
    const float side = touchPx(kCard);
    if (!isPortrait()) area.y -= px(kStoneBelow);
    return rowIn(area, count, side, side, std::max(gap_, px(count > 3 ? 24 : 48)));
}

std::vector<Box> Layout::pads(std::size_t count) const {
    Box area = main();
    const Box below = pieces();
    const float top = isPortrait() ? area.y : std::max(area.y, leave().y + leave().h + gap_);
    area = {area.x, top, area.w, below.y - gap_ - top};
    const float side = touchPx(112), least = touchPx(96);
    if (fitsInARow(area, count, least))
        return rowIn({area.x, area.y, area.w, area.h * 0.9f}, count, side, side, gap_);
    return inTwoRows(area, count);
}

bool Layout::fitsInARow(const Box& area, std::size_t count, float side) const {
    const float n = static_cast<float>(count);
    return (area.w - gap_ * (n - 1)) / n >= side;
}

std::vector<Box> Layout::inTwoRows(const Box& area, std::size_t count) const {
    const std::size_t columns = (count + 1) / 2;
    const float room =
        (area.w - gap_ * static_cast<float>(columns - 1)) / static_cast<float>(columns);
    const float in_two = std::min({touchPx(128), room, (area.h - gap_) / 2});
    const auto grid = rowIn({area.x, area.y, area.w, area.h}, columns, in_two, in_two, gap_);
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i) {
        Box box = grid[i % columns];
        box.y = area.centre().y + (i < columns ? -gap_ / 2 - box.h : gap_ / 2);
        boxes.push_back(box);
    }
    return boxes;
}

std::vector<Box> Layout::padsBelowSubject(std::size_t count) const {
    const float side = touchPx(112), least = touchPx(96);
    Box area = belowSubject();
    if (fitsInARow(area, count, least)) return rowIn(area, count, side, side, gap_);
    // The way out is above: beside it there is room.
    if (area.y >= leave().y + leave().h + gap_) {
        area.x = main().x;
        area.w = main().w;
    }
    if (fitsInARow(area, count, least)) return rowIn(area, count, side, side, gap_);
    area.h = acorns().y - gap_ - area.y;
    return inTwoRows(area, count);
}

Box Layout::acorns() const {
    const Box area = pieces();
    const float middle = isPortrait() ? area.centre().x : stage().centre().x;
    const float h = touchPx(132), w = std::max(px(300), touchPx(kControl));
    return {middle - gap_ - w, area.centre().y - h / 2, w, h};
}

Box Layout::done() const {
    const Box heap = acorns();
    const float w = touchPx(165), h = touchPx(132);
    return {heap.x + heap.w + gap_ * 2, heap.y, w, h};
}

std::vector<Box> Layout::compared(std::size_t count) const {
    const Box area = stage();
    const float side = std::min(px(230), area.h * 0.52f);
    const float aside = px(16);  // for the mark at a card's corner
    return rowIn({area.x + aside, area.y, area.w - 2 * aside, area.h * 0.9f}, count, side, side,
                 px(40));
}

std::vector<Box> Layout::table(std::size_t rows, std::size_t columns) const {
    const Box area = stage();
    const float across = area.w / static_cast<float>(columns);
    const float down = area.h / static_cast<float>(rows);
    const float side = std::min({across, down * 0.8f, px(96)});
    std::vector<Box> boxes;
    for (std::size_t row = 0; row < rows; ++row)
        for (std::size_t column = 0; column < columns; ++column)
            boxes.push_back(
                {area.centre().x - side * static_cast<float>(columns) / 2 +
                     side * static_cast<float>(column),
                 area.centre().y +
                     (static_cast<float>(row) - static_cast<float>(rows) / 2) * side * 1.5f,
                 side, side});
    return boxes;
}

Layout::BadgeGrid Layout::badgeGrid(std::size_t children) const {
    const Box area = main();
    const float top = std::max(area.y, leave().y + leave().h + gap_);
    BadgeGrid grid;
    for (const float length : {150.0f, 120.0f, 100.0f}) {
        grid.side = touchPx(length);
        grid.row_height = grid.side + px(26) + gap_;
        const auto across = static_cast<std::size_t>((area.w + gap_) / (grid.side + gap_));
        grid.columns = std::clamp<std::size_t>(across, 2, isPortrait() ? 5 : 8);
        const auto rowsIn = [&](float room) {
            return static_cast<std::size_t>(std::max(1.0f, (room + gap_) / grid.row_height));
        };
        grid.top = top;
        grid.room = area.y + area.h - top;
        grid.most = std::min(kMostBadges, rowsIn(grid.room) * grid.columns);
        if (children <= grid.most) return grid;
        grid.room -= touchPx(kControl) + gap_;  // of the leaf that turns the page
        grid.most = std::min(kMostBadges, rowsIn(grid.room) * grid.columns);
    }
    return grid;
}

std::size_t Layout::badgesPerPage(std::size_t children) const {
    return badgeGrid(children).most;
}

std::vector<Box> Layout::badges(std::size_t count) const {
    const Box area = main();
    const BadgeGrid grid = badgeGrid(count);
    const std::size_t rows = (count + grid.columns - 1) / grid.columns;
    const std::size_t columns = rows == 0 ? 1 : (count + rows - 1) / rows;  // rows alike
    const float spare = grid.room - grid.row_height * static_cast<float>(rows);
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t row = i / columns;
        const std::size_t in_row = std::min(columns, count - row * columns);
        const float y =
            grid.top + std::max(0.0f, spare / 2) + grid.row_height * static_cast<float>(row);
        boxes.push_back(
            rowIn({area.x, y, area.w, grid.side}, in_row, grid.side, grid.side, gap_)[i % columns]);
    }
    return boxes;
}

Box Layout::nextPage() const {
    const float side = touchPx(kControl);
    return sided({width() - margin_ - side, height() - margin_ - side, side, side});
}

Box Layout::nest() const {
    const Box area = main();
    const float w = std::min(px(460), area.w), h = w * 0.7f;
    return centred({area.centre().x, height() * 0.56f}, w, h);
}

std::vector<Box> Layout::buttons(std::size_t count) const {
    const float w = std::min(std::max(touchPx(280), 230.0f), width() - 2 * margin_);
    const float h = std::max(touchPx(96), 88.0f);
    const auto columns = std::clamp<std::size_t>(
        static_cast<std::size_t>((width() - 2 * margin_ + gap_) / (w + gap_)), 1, count);
    const std::size_t rows = (count + columns - 1) / columns;
    std::vector<Box> boxes;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t row = i / columns;
        const std::size_t in_row = std::min(columns, count - row * columns);
        const float y =
            height() - margin_ - gap_ - static_cast<float>(rows - row) * (h + gap_) + gap_;
        boxes.push_back(
            rowIn({margin_, y, width() - 2 * margin_, h}, in_row, w, h, gap_)[i % columns]);
    }
    return boxes;
}

}  // namespace wrenlet::game
