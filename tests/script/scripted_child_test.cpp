#include "game/script/scripted_child.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "tests/scenes/player.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using fixtures::Player;
using practice::samples::Folder;

namespace {

struct Played {
    std::vector<Contact> contacts;
    std::vector<practice::Response> rows;
    bool done = false;
};

/// A scripted child at an app that nobody sees.
Played play(const Tape& tape, Millis most = 20 * 60'000) {
    const Folder folder;
    Player player(folder / "store.db", 2);
    ScriptedChild child(tape);
    Played played;
    while (player.now() < most && !played.done) {
        for (const Contact& contact : child.tick(player.app(), player.now())) {
            played.contacts.push_back(contact);
            player.contact(contact);
        }
        player.wait(16);
        played.done = child.isDone(player.app());
    }
    played.rows = player.store().all();
    return played;
}

Tape plain() {
    Tape tape;
    tape.child = "c-01";
    tape.palm_share = tape.replay_share = 0;
    return tape;
}

long count(const Played& played, Contact::Kind kind) {
    return std::count_if(played.contacts.begin(), played.contacts.end(),
                         [&](const Contact& contact) { return contact.kind == kind; });
}

}  // namespace

TEST_CASE("Scripted child: who knows answers rightly, by tapping as by dragging") {
    for (const double drags : {0.0, 1.0}) {
        CAPTURE(drags);
        Tape tape = plain();
        tape.right_share = 1;
        tape.drag_share = drags;
        const Played played = play(tape);
        REQUIRE(played.done);
        CHECK(played.rows.size() > 5);
        for (const auto& row : played.rows) {
            CHECK(row.child == "c-01");
            CHECK(row.isRight());
        }
        CHECK((count(played, Contact::Kind::move) > 0) == (drags == 1.0));
    }
}

TEST_CASE("Scripted child: who knows nothing is never right at the first try") {
    Tape tape = plain();
    tape.right_share = 0;
    const Played played = play(tape, 3 * 60'000);
    const auto first = std::count_if(played.rows.begin(), played.rows.end(),
                                     [](const auto& row) { return row.isEvidence(); });
    CHECK(first > 0);
    for (const auto& row : played.rows)
        if (row.isEvidence()) CHECK_FALSE(row.isRight());
}

TEST_CASE("Scripted child: each finger that comes down goes up again, palms too") {
    Tape tape = plain();
    tape.palm_share = 0.5;
    tape.replay_share = 0.2;
    const Played played = play(tape);
    REQUIRE(played.done);
    std::vector<std::int64_t> down;
    std::size_t most = 0;
    for (const Contact& contact : played.contacts) {
        const auto at = std::find(down.begin(), down.end(), contact.id);
        if (contact.kind == Contact::Kind::down) {
            CHECK(at == down.end());
            down.push_back(contact.id);
        } else {
            REQUIRE(at != down.end());
            if (contact.kind == Contact::Kind::up) down.erase(at);
        }
        most = std::max(most, down.size());
    }
    CHECK(down.empty());
    CHECK(most == 3);  // a finger, a palm and a second finger
}

TEST_CASE("Scripted child: the same tape gives the same contacts, another seed gives others") {
    const auto told = [](const Tape& tape) {
        std::vector<std::pair<std::int64_t, Point>> all;
        for (const Contact& contact : play(tape).contacts) all.push_back({contact.id, contact.at});
        return all;
    };
    Tape tape = plain();
    tape.palm_share = 0.2;
    const auto once = told(tape);
    CHECK(once.size() > 20);
    CHECK(once == told(tape));
    tape.seed = 2;
    CHECK(once != told(tape));
}

TEST_CASE("Scripted child: who only asks to hear it again never ends, and is not done") {
    Tape tape = plain();
    tape.replay_share = 1;
    const Played played = play(tape, 60'000);
    CHECK_FALSE(played.done);
    CHECK(played.rows.empty());
}
