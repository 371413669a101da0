#include "game/scenes/layout.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace wrenlet::game;

namespace {

bool overlap(const Box& a, const Box& b) {
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

const std::vector<ScreenSize> kScreens = {{1280, 800, 0},  {1024, 600, 0},  {800, 1280, 0},
                                          {1920, 1080, 0}, {2732, 2048, 0}, {2048, 2732, 0},
                                          {1024, 768, 0},  {768, 1024, 0},  {1366, 768, 0}};

/// Everything that can be touched together in one round, on this screen.
std::vector<std::vector<Box>> together(const Layout& layout) {
    std::vector<std::vector<Box>> rounds;
    std::vector<Box> sort{layout.card()};
    for (const HomeBox& home : layout.homes(2)) sort.push_back(home.all);
    std::vector<Box> join = layout.tiles({false, false, false});
    std::vector<Box> pick = layout.stones(3);
    std::vector<Box> count = layout.pads(8);
    count.push_back(layout.acorns());
    count.push_back(layout.done());
    std::vector<Box> whole = layout.leaf(1), split = layout.leaf(5);
    std::vector<Box> beats = layout.padsBelowSubject(5);
    for (auto* round : {&whole, &split, &beats}) {
        round->push_back(layout.acorns());
        round->push_back(layout.done());
    }
    // A loose tile in the middle of five, and the new one or the pictures below.
    std::vector<Box> change = layout.row({0, 0, 0.2f, 0.2f, 0}), changed = change;
    change.push_back(layout.waiting());
    for (const Box& stone : layout.stones(3)) changed.push_back(stone);
    for (auto* round : {&whole, &split, &beats, &change, &changed})
        round->push_back(layout.subject());
    for (auto* round : {&sort, &join, &pick, &count, &whole, &split, &beats, &change, &changed}) {
        round->push_back(layout.replay());
        round->push_back(layout.leave());
        rounds.push_back(*round);
    }
    return rounds;
}

}  // namespace

TEST_CASE("Layout: what can be touched lies on the screen and apart, at every size") {
    for (const ScreenSize& screen : kScreens) {
        CAPTURE(screen.w);
        CAPTURE(screen.h);
        const Layout layout(screen);
        for (const auto& boxes : together(layout))
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                CAPTURE(i);
                const Box& box = boxes[i];
                CHECK(box.x >= 0);
                CHECK(box.y >= 0);
                CHECK(box.x + box.w <= layout.width() + 0.5f);
                CHECK(box.y + box.h <= layout.height() + 0.5f);
                for (std::size_t j = 0; j < i; ++j) CHECK_FALSE(overlap(box, boxes[j]));
            }
    }
}

TEST_CASE("Layout: pieces keep the look's sizes at 1280x800") {
    const Layout layout({1280, 800, 0});
    CHECK(layout.card().w >= 160);
    for (const Box& tile : layout.tiles({false, false})) CHECK(tile.w >= 112);
    for (const Box& box : layout.leaf(5)) CHECK(box.w >= 112);
    for (const Box& tile : layout.row({0, 0, 0.2f, 0.2f, 0})) CHECK(tile.w >= 112);
    CHECK(layout.subject().w >= 160);
    CHECK(layout.waiting().w >= 112);
    CHECK(layout.replay().w >= 96);
    CHECK(layout.leave().w >= 96);
    CHECK(layout.gap() >= 24);
}

TEST_CASE("Layout: where the display tells its size, cards and controls are 20 mm or more") {
    // A tablet of 8 inches, 1280x800: 0.135 mm a pixel.
    const ScreenSize screen{1280, 800, 0.135f};
    const Layout layout(screen);
    for (const Box& box : {layout.card(), layout.replay(), layout.leave(), layout.acorns(),
                           layout.done(), layout.stones(3)[1], layout.subject(), layout.waiting(),
                           layout.leaf(1)[0], layout.leaf(3)[1], layout.row({0, 0.2f})[1]})
        CHECK(box.w * screen.mm_per_px >= 19.9f);
}
