#include "game/rounds/pick_round.hpp"

#include <doctest/doctest.h>

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Item;
using exercise::Task;
using exercise::Unit;

namespace {

Item wordItem() {
    Item item;
    item.skill = {Unit::onset_rime, Task::rhyme_pick};
    item.subject = "cat";
    item.parts = {{"word:cat", "cat"}};
    item.choices = {{"bee", "took /i/ for /æt/"}, {"hat", ""}, {"moon", "took /un/ for /æt/"}};
    item.answer = 1;
    return item;
}

Item soundItem() {
    Item item;
    item.skill = {Unit::letter, Task::sound};
    item.subject = "letter:b";
    item.choices = {{"sound:b", ""}, {"sound:h", "took /h/ for /b/"}};
    return item;
}

}  // namespace

TEST_CASE("Pick: a touch answers, wherever the choice lies") {
    PickRound round({wordItem(), {2, 1, 0}});
    CHECK(round.choiceAt(0) == "moon");
    CHECK_FALSE(round.picksSounds());
    const Outcome outcome = round.touch(1);
    CHECK(outcome == Outcome{Outcome::Kind::answered, 1, true});
    CHECK(round.question().phase() == Question::Phase::right);
    CHECK_MESSAGE(round.touch(0) == Outcome{}, "all is said");
}

TEST_CASE("Pick: a wrong touch is explained, and after two only the right one can be touched") {
    PickRound round({wordItem(), {0, 1, 2}});
    CHECK(round.touch(0) == Outcome{Outcome::Kind::answered, 0, false});
    CHECK_FALSE(round.canTouch(1));
    round.explained();
    CHECK(round.touch(2) == Outcome{Outcome::Kind::answered, 2, false});
    round.explained();
    CHECK(round.question().phase() == Question::Phase::together);
    CHECK_FALSE(round.canTouch(0));
    CHECK(round.touch(2) == Outcome{});
    CHECK(round.touch(1).right);
    CHECK_FALSE(round.canTouch(3));
}

TEST_CASE("Pick: a sound is heard at the first touch and answers at the second of the same") {
    PickRound round({soundItem(), {1, 0}});
    CHECK(round.picksSounds());
    CHECK(round.touch(0) == Outcome{Outcome::Kind::settled});
    CHECK(round.chosen() == 0);
    CHECK(round.touch(1) == Outcome{Outcome::Kind::settled});
    CHECK(round.chosen() == 1);
    CHECK(round.question().phase() == Question::Phase::asked);
    CHECK(round.touch(1) == Outcome{Outcome::Kind::answered, 0, true});
    CHECK_FALSE(round.chosen().has_value());
}

TEST_CASE("Pick: a sound brought to the stage answers at once") {
    PickRound round({soundItem(), {1, 0}});
    CHECK(round.touch(1) == Outcome{Outcome::Kind::settled});
    CHECK(round.bring(0) == Outcome{Outcome::Kind::answered, 1, false});
    round.explained();
    CHECK_FALSE(round.chosen().has_value());
    CHECK(round.bring(1).right);
}
