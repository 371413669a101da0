#include <doctest/doctest.h>

#include <set>

#include "tests/fixtures/pond_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using exercise::Skill;
using exercise::Task;
using exercise::Unit;
using game::Key;
using practice::samples::Folder;

namespace {

constexpr Skill kOneOfEachMechanic[] = {
    {Unit::onset_rime, Task::rhyme_sort}, {Unit::compound, Task::blend},
    {Unit::phoneme, Task::segment},       {Unit::syllable, Task::count},
    {Unit::onset_rime, Task::rhyme_pick}, {Unit::compound, Task::remove}};

void press(fixtures::Player& player, Key key) {
    player.app().key(key, true, player.now());
    player.wait(48);
    player.app().key(key, false, player.now());
    player.wait(16);
}

/// Plays until the ending; `reach` brings the mark to a thing. What was played, and in how many
/// touches.
std::set<std::string> playToTheEnd(fixtures::Player& player,
                                   const std::function<void(const std::string&)>& reach,
                                   const std::function<void()>& touch) {
    std::set<std::string> places;
    for (int moves = 0; moves < 4000 && player.app().place() != "ending"; ++moves) {
        const auto right = player.app().rightTouch();
        if (!right) {
            player.wait(96);
            continue;
        }
        places.insert(player.app().place());
        reach(*right);
        if (player.app().marked() == right) touch();
    }
    REQUIRE(player.app().place() == "ending");
    return places;
}

}  // namespace

TEST_CASE("Keys: a whole session of each mechanic is played by the keyboard alone") {
    for (const Skill skill : kOneOfEachMechanic) {
        CAPTURE(exercise::rowOf(skill).id);
        const Folder folder;
        fixtures::Player player(folder / "store.db", 1, 7, {}, 3, fixtures::pondPack(skill));
        const auto places = playToTheEnd(
            player,
            [&](const std::string& thing) {
                for (int i = 0; i < 40 && player.app().marked() != thing; ++i)
                    press(player, Key::next);
            },
            [&] { press(player, Key::touch); });
        CHECK(places.size() >= 2);
        REQUIRE(player.store().all().size() > 3);
        for (const auto& response : player.store().all()) CHECK(response.isRight());
    }
}

TEST_CASE("Keys: a whole session of each mechanic is played by one switch alone") {
    for (const Skill skill : kOneOfEachMechanic) {
        CAPTURE(exercise::rowOf(skill).id);
        const Folder folder;
        game::AppOptions options;
        options.tablet.scan_pace = 1'500;
        fixtures::Player player(folder / "store.db", 1, 7, {}, 3, fixtures::pondPack(skill),
                                options);
        bool told = false;
        playToTheEnd(
            player,
            [&](const std::string& thing) {
                for (int i = 0; i < 1500 && player.app().marked() != thing; ++i) {
                    CHECK(player.app().marked() != "leave");
                    player.wait(48);
                    if (player.app().rightTouch() != thing) return;
                }
                told = true;
            },
            [&] {
                // A touch anywhere is the switch.
                player.contact({game::Contact::Kind::down, 1, {640, 20}, 0});
                player.wait(32);
                player.contact({game::Contact::Kind::up, 1, {640, 20}, 0});
            });
        CHECK(told);
        REQUIRE(player.store().all().size() > 3);
        for (const auto& response : player.store().all()) CHECK(response.isRight());
    }
}

TEST_CASE("Keys: the mark waits while something is told, and a finger hides it") {
    const Folder folder;
    game::AppOptions options;
    options.tablet.scan_pace = 1'000;
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3,
                            fixtures::pondPack({Unit::onset_rime, Task::rhyme_pick}), options);
    player.waitForTouch();
    while (!player.app().marked()) player.wait(16);
    const auto first = player.app().marked();
    press(player, Key::replay);
    CHECK(player.app().marked() == first);

    fixtures::Player by_finger(folder / "other.db", 1, 7, {}, 3,
                               fixtures::pondPack({Unit::onset_rime, Task::rhyme_pick}));
    by_finger.waitForTouch();
    press(by_finger, Key::next);
    CHECK(by_finger.app().marked().has_value());
    by_finger.contact({game::Contact::Kind::down, 1, {640, 20}, 0});
    CHECK_FALSE(by_finger.app().marked().has_value());
}

TEST_CASE("Keys: Escape held is the way out") {
    const Folder folder;
    fixtures::Player player(folder / "store.db", 1, 7);
    player.playRightUntil("sort: asked");
    player.app().key(Key::leave, true, player.now());
    player.wait(500);
    CHECK(player.app().place() != "question");
    player.wait(1500);
    CHECK(player.app().place() == "question");
    player.app().key(Key::leave, false, player.now());
    player.wait(32);
    CHECK(player.app().place() == "question");
}

namespace {

/// At a pick that is asked, with a choice to touch.
std::string toAPick(fixtures::Player& player) {
    player.playRightUntil("pick: asked");
    REQUIRE(player.waitForTouch());
    return *player.app().rightTouch();
}

game::Contact contact(game::Contact::Kind kind, std::int64_t id, game::Point at) {
    return {kind, id, at, 0};
}

}  // namespace

TEST_CASE("Keys: what a finger holds no key lets go, and what a key holds no finger") {
    using Kind = game::Contact::Kind;
    const Folder folder;
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3,
                            fixtures::pondPack({Unit::onset_rime, Task::rhyme_pick}));
    const std::string choice = toAPick(player);
    const game::Point on = player.app().boxOf(choice)->centre();
    const auto rows = player.store().newest();

    player.contact(contact(Kind::down, 1, on));
    player.app().key(Key::next, true, player.now());
    press(player, Key::touch);
    press(player, Key::replay);
    CHECK(player.store().newest() == rows);
    player.contact(contact(Kind::cancel, 1, on));

    while (player.app().marked() != choice) press(player, Key::next);
    player.app().key(Key::touch, true, player.now());
    player.contact(contact(Kind::down, 2, on));
    player.contact(contact(Kind::up, 2, on));
    player.app().key(Key::leave, false, player.now());
    CHECK(player.store().newest() == rows);
    player.app().key(Key::touch, false, player.now());
    CHECK(player.store().newest() == rows + 1);
}

TEST_CASE("Keys: a switch that is cancelled or pressed anew without an up answers nothing") {
    using Kind = game::Contact::Kind;
    const Folder folder;
    game::AppOptions options;
    options.tablet.scan_pace = 1'000;
    fixtures::Player player(folder / "store.db", 1, 7, {}, 3,
                            fixtures::pondPack({Unit::onset_rime, Task::rhyme_pick}), options);
    const game::Point water{640, 20};
    const auto waitForChoice = [&player] {
        for (int i = 0; i < 2000; ++i, player.wait(48)) {
            const std::string marked = player.app().marked().value_or("");
            if (marked.rfind(player.app().place() == "badges" ? "badge:" : "choice:", 0) == 0)
                return marked;
        }
        return std::string();
    };
    waitForChoice();
    player.contact(contact(Kind::down, 1, water));
    player.contact(contact(Kind::up, 1, water));
    const std::string first = waitForChoice();
    REQUIRE(first.rfind("choice:", 0) == 0);
    const auto rows = player.store().newest();

    player.contact(contact(Kind::down, 1, water));
    player.contact(contact(Kind::cancel, 1, water));
    CHECK(player.store().newest() == rows);

    // The up of the contact was lost, and the mark has gone on.
    REQUIRE_FALSE(waitForChoice().empty());
    player.contact(contact(Kind::down, 1, water));
    player.app().key(Key::next, true, player.now());
    while (player.app().marked().value_or("").rfind("choice:", 0) != 0)
        player.app().key(Key::next, true, player.now());
    const std::string second = *player.app().marked();
    player.contact(contact(Kind::down, 1, water));
    player.contact(contact(Kind::up, 1, water));
    REQUIRE(player.store().newest() == rows + 1);
    CHECK("choice:" + player.store().all().back().chosen.string() == second);
}
