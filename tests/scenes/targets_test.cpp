// How large is what a child touches, on the screens of every skill as they come.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using practice::samples::Folder;

namespace {

/// The least side of each thing and the least gaps, in px, over a while of playing every skill on
/// one screen.
struct Least {
    std::map<std::string, float> sides;
    std::map<std::string, float> gaps;  // between two things that do not lie together by design
};

/// Tiles of one word lean together; what is held may be dropped on the place for it.
bool lieTogether(const std::string& a, const std::string& b) {
    const auto is_tile = [](const std::string& name) {
        return name == "tile" || name == "loose" || name == "new" || name == "gap";
    };
    const auto is_place = [](const std::string& name) {
        return name == "example" || name == "stage";
    };
    return (is_tile(a) && is_tile(b)) || is_place(a) || is_place(b);
}

float gapBetween(const game::Box& a, const game::Box& b) {
    const float across = std::max(b.x - a.x - a.w, a.x - b.x - b.w);
    const float down = std::max(b.y - a.y - a.h, a.y - b.y - b.h);
    return std::max(across, down);
}

Least leastOf(game::ScreenSize screen) {
    Least least;
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        const pack::Pack pack = fixtures::pondPack(row.skill);
        if (pack.items.empty()) continue;
        const Folder folder;
        Player player(folder / "store.db", 3, 7, screen, 3, pack);
        for (int touches = 0; touches < 24;) {
            const auto names = player.app().touchables();
            for (std::size_t i = 0; i < names.size(); ++i) {
                const game::Box box = *player.app().boxOf(names[i]);
                const std::string kind = names[i].substr(0, names[i].find(':'));
                const std::string of = std::string(row.id) + " " + kind;
                const auto side = least.sides.emplace(of, 9'999.0f).first;
                side->second = std::min({side->second, box.w, box.h});
                for (std::size_t j = 0; j < i; ++j) {
                    const std::string other = names[j].substr(0, names[j].find(':'));
                    if (lieTogether(kind, other)) continue;
                    const auto gap = least.gaps.emplace(of + ", " + other, 9'999.0f).first;
                    gap->second =
                        std::min(gap->second, gapBetween(box, *player.app().boxOf(names[j])));
                }
            }
            if (!player.app().rightTouch()) {
                player.wait(96);
                continue;
            }
            player.tap(*player.app().rightTouch());
            ++touches;
        }
    }
    return least;
}

}  // namespace

TEST_CASE(
    "Targets: nothing a child touches is smaller than 88 px at 1280x800, nor close to another") {
    const Least least = leastOf({1280, 800, 0});
    CHECK(least.sides.size() > 100);
    for (const auto& [thing, side] : least.sides) {
        CAPTURE(thing);
        CHECK(side >= 88);
    }
    for (const auto& [things, gap] : least.gaps) {
        CAPTURE(things);
        CHECK(gap >= 16);
    }
}

TEST_CASE("Targets: on a tablet of 8 inches they are 20 mm or more, and 5 mm apart") {
    constexpr float kMmPerPx = 0.135f;
    for (const game::ScreenSize screen :
         {game::ScreenSize{1280, 800, kMmPerPx}, {800, 1280, kMmPerPx}}) {
        CAPTURE(screen.w);
        const Least least = leastOf(screen);
        for (const auto& [thing, side] : least.sides) {
            CAPTURE(thing);
            CHECK(side * kMmPerPx >= 19.9f);
        }
        for (const auto& [things, gap] : least.gaps) {
            CAPTURE(things);
            CHECK(gap * kMmPerPx >= 4.9f);
        }
    }
}
