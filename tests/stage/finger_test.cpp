#include "game/stage/finger.hpp"

#include <doctest/doctest.h>

#include <vector>

#include "content/common/random.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using Kind = Touch::Kind;

namespace {

constexpr ScreenSize kUnknownSize{1280, 800, 0};
constexpr ScreenSize kTablet{1280, 800, 0.17f};  // 10.1 inches

Contact down(std::int64_t id, float x, float y, float size_mm = 0) {
    return {Contact::Kind::down, id, {x, y}, size_mm};
}
Contact move(std::int64_t id, float x, float y, float size_mm = 0) {
    return {Contact::Kind::move, id, {x, y}, size_mm};
}
Contact up(std::int64_t id, float x, float y) {
    return {Contact::Kind::up, id, {x, y}, 0};
}

std::vector<Kind> kinds(const std::vector<Touch>& touches) {
    std::vector<Kind> out;
    for (const Touch& touch : touches) out.push_back(touch.kind);
    return out;
}

}  // namespace

TEST_CASE("finger: one finger's down, move and up come through as they are") {
    FingerFilter filter(kUnknownSize);
    CHECK(kinds(filter.feed(down(7, 400, 300), 0)) == std::vector{Kind::down});
    const auto moved = filter.feed(move(7, 500, 310), 40);
    REQUIRE(kinds(moved) == std::vector{Kind::move});
    CHECK(moved[0].at == Point{500, 310});
    CHECK(kinds(filter.feed(up(7, 500, 320), 80)) == std::vector{Kind::up});
    CHECK(filter.feed(move(7, 500, 330), 90).empty());
}

TEST_CASE("finger: a second finger does nothing until it is lifted") {
    FingerFilter filter(kUnknownSize);
    filter.feed(down(1, 400, 300), 0);
    CHECK(filter.feed(down(2, 600, 300), 50).empty());
    CHECK(filter.feed(move(2, 640, 300), 60).empty());
    CHECK(kinds(filter.feed(up(1, 400, 300), 90)) == std::vector{Kind::up});
    CHECK(filter.feed(move(2, 650, 300), 95).empty());
    CHECK(filter.feed(up(2, 650, 300), 99).empty());
    CHECK(kinds(filter.feed(down(2, 650, 300), 120)) == std::vector{Kind::down});
}

TEST_CASE("finger: a palm is ignored by its width, also when it spreads later") {
    FingerFilter filter(kTablet);
    CHECK(filter.feed(down(1, 600, 700, 42), 0).empty());
    CHECK(kinds(filter.feed(down(2, 300, 300, 9), 10)) == std::vector{Kind::down});
    CHECK(kinds(filter.feed(up(2, 300, 300), 60)) == std::vector{Kind::up});

    CHECK(kinds(filter.feed(down(3, 600, 500, 12), 100)) == std::vector{Kind::down});
    CHECK(kinds(filter.feed(move(3, 602, 501, 35), 120)) == std::vector{Kind::cancel});
    CHECK(filter.feed(move(3, 602, 501, 14), 140).empty());
    CHECK(filter.feed(up(3, 602, 501), 160).empty());
}

TEST_CASE("finger: a contact that begins at an edge never plays, one that ends there does") {
    struct Case {
        ScreenSize screen;
        Point at;
        bool plays;
    };
    // 4 mm at 0.17 mm a pixel are 23.5 px; 12 px where the size is not known.
    const Case cases[] = {
        {kUnknownSize, {11, 400}, false},  {kUnknownSize, {13, 400}, true},
        {kUnknownSize, {640, 3}, false},   {kUnknownSize, {1269, 400}, false},
        {kUnknownSize, {640, 795}, false}, {kTablet, {22, 400}, false},
        {kTablet, {25, 400}, true},        {kTablet, {640, 778}, false},
    };
    for (const Case& c : cases) {
        CAPTURE(c.at.x);
        CAPTURE(c.at.y);
        FingerFilter filter(c.screen);
        CHECK(filter.feed(down(1, c.at.x, c.at.y), 0).empty() != c.plays);
    }
    FingerFilter filter(kUnknownSize);
    CHECK(filter.feed(down(1, 2, 400), 0).empty());
    CHECK(filter.feed(move(1, 300, 400), 30).empty());  // a swipe from outside
    CHECK(kinds(filter.feed(down(2, 500, 400), 40)) == std::vector{Kind::down});
    CHECK(kinds(filter.feed(up(2, 1279, 400), 80)) == std::vector{Kind::up});
}

TEST_CASE("finger: a lost up becomes a cancel before the next down") {
    FingerFilter filter(kUnknownSize);
    filter.feed(down(1, 400, 300), 0);
    filter.feed(move(1, 450, 300), 20);
    const auto touches = filter.feed(down(1, 700, 500), 900);
    REQUIRE(kinds(touches) == std::vector{Kind::cancel, Kind::down});
    CHECK(touches[0].at == Point{450, 300});
    CHECK(touches[1].at == Point{700, 500});
}

TEST_CASE("finger: a thumb that only rests gives way, a finger that dragged does not") {
    FingerFilter filter(kUnknownSize);
    filter.feed(down(1, 60, 400), 0);
    filter.feed(move(1, 63, 404), 500);  // within 12 px: still
    CHECK(filter.feed(down(2, 600, 300), 1400).empty());
    filter.feed(up(2, 600, 300), 1450);
    CHECK(kinds(filter.feed(down(2, 600, 300), 1600)) == std::vector{Kind::cancel, Kind::down});
    CHECK(filter.feed(move(1, 300, 400), 1650).empty());
    CHECK(kinds(filter.feed(up(2, 600, 300), 1700)) == std::vector{Kind::up});

    filter.feed(up(1, 300, 400), 1800);
    filter.feed(down(3, 400, 300), 2000);
    filter.feed(move(3, 440, 300), 2100);
    CHECK(filter.feed(down(4, 600, 300), 6000).empty());
    CHECK(kinds(filter.feed(up(3, 440, 300), 6100)) == std::vector{Kind::up});
}

TEST_CASE("finger: one that dragged and was not heard of for long keeps no other out") {
    FingerFilter filter(kUnknownSize);
    filter.feed(down(1, 400, 300), 0);
    filter.feed(move(1, 440, 300), 100);
    CHECK(filter.feed(down(2, 600, 300), 5000).empty());
    filter.feed(up(2, 600, 300), 5050);
    const auto touches = filter.feed(down(3, 600, 300), 5100);
    REQUIRE(kinds(touches) == std::vector{Kind::cancel, Kind::down});
    CHECK(touches[0].at == Point{440, 300});
    CHECK(filter.feed(up(1, 440, 300), 5200).empty());
    CHECK(kinds(filter.feed(up(3, 600, 300), 5300)) == std::vector{Kind::up});
}

TEST_CASE("finger: a rotation or a pause cancels what is held") {
    FingerFilter filter(kUnknownSize);
    CHECK_FALSE(filter.reset(kUnknownSize).has_value());
    filter.feed(down(1, 400, 300), 0);
    const auto touch = filter.reset({800, 1280, 0});
    REQUIRE(touch.has_value());
    CHECK(touch->kind == Kind::cancel);
    CHECK(filter.feed(up(1, 400, 300), 50).empty());
    CHECK(filter.feed(down(1, 400, 1275), 60).empty());  // the new screen's edge
    CHECK(kinds(filter.feed(down(2, 400, 1200), 70)) == std::vector{Kind::down});
}

TEST_CASE("finger: whatever the contacts, each down is ended once before the next") {
    Random random(20240607);
    FingerFilter filter(kTablet);
    bool held = false;
    int downs = 0;
    for (Millis now = 0; now < 400'000; now += 7) {
        Contact contact;
        contact.kind = static_cast<Contact::Kind>(random.below(4));
        contact.id = random.below(5);
        contact.at = {static_cast<float>(random.below(1280)),
                      static_cast<float>(random.below(800))};
        contact.size_mm = static_cast<float>(random.below(34));
        for (const Touch& touch : filter.feed(contact, now)) {
            REQUIRE((touch.kind == Kind::down) == !held);
            held = touch.kind == Kind::down || touch.kind == Kind::move;
            downs += touch.kind == Kind::down;
        }
    }
    CHECK(downs > 1000);
}
