#include <doctest/doctest.h>

#include "game/rounds/change_round.hpp"
#include "game/rounds/split_round.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using exercise::Item;
using exercise::Task;
using exercise::Unit;
using Phase = Question::Phase;
using Kind = Outcome::Kind;

namespace {

/// "cat", in its three sounds.
SplitRound split(int tries_before = 0) {
    Item item;
    item.skill = {Unit::phoneme, Task::segment};
    item.subject = "cat";
    item.parts = {{"sound:k", "k"}, {"sound:æ", "æ"}, {"sound:t", "t"}};
    item.choices = {{"2", "one sound fewer"}, {"3", ""}, {"4", "one more"}, {"5", "2 more"}};
    item.answer = 1;
    return SplitRound(Question(item, {0, 1, 2, 3}, tries_before));
}

/// From one compound with "sun" to another.
Question swap(const std::string& from, const std::string& to, int tries_before = 0) {
    Item item;
    item.skill = {Unit::compound, Task::substitute};
    item.subject = from;
    item.choices = {{to, ""}, {"teapot", "took teapot"}};
    return Question(item, {0, 1}, tries_before);
}

exercise::ChangeTiles tiles(bool takes, bool puts) {
    const exercise::Part sun{"word:sun", "sun"}, flower{"word:flower", "flower"},
        hat{"word:hat", "hat"};
    if (takes && puts) return {{sun, flower}, {sun, hat}, 1, true, true};
    if (takes) return {{sun, flower}, {sun}, 1, true, false};
    return {{sun}, {sun, hat}, 1, false, true};
}

}  // namespace

TEST_CASE("a word of three sounds is shown as three boxes, or as two by who hears two") {
    SplitRound round = split();
    CHECK(round.right() == 3);
    CHECK(round.boxes() == 1);
    CHECK_MESSAGE(!round.canFinish(), "a whole leaf is no answer");
    CHECK(round.part().kind == Kind::settled);
    CHECK(round.canFinish());
    SplitRound hears_two = round;
    CHECK(hears_two.finish() == Outcome{Kind::answered, 0, false});
    CHECK(hears_two.question().wrongChoice() == 0);
    round.part();
    CHECK(round.finish() == Outcome{Kind::answered, 1, true});
    CHECK_FALSE(round.canPart());
    CHECK_FALSE(round.canJoin());
}

TEST_CASE("a leaf parts into no more than five, and goes together again") {
    SplitRound round = split();
    for (int i = 0; i < 20; ++i) round.part();
    CHECK(round.boxes() == 5);
    CHECK(round.part().kind == Kind::nothing);
    CHECK(round.join().kind == Kind::settled);
    CHECK(round.boxes() == 4);
    CHECK(round.makeWhole().kind == Kind::settled);
    CHECK(round.boxes() == 1);
    CHECK(round.join().kind == Kind::nothing);
    CHECK(round.makeWhole().kind == Kind::nothing);
}

TEST_CASE("a wrong number of boxes is explained, then the leaf is whole again") {
    SplitRound round = split();
    for (int i = 0; i < 3; ++i) round.part();
    CHECK_FALSE(round.finish().right);
    CHECK(round.question().phase() == Phase::explain);
    CHECK(round.boxes() == 4);
    CHECK(round.part().kind == Kind::nothing);
    round.explained();
    CHECK(round.boxes() == 1);
    CHECK(round.question().tryNumber() == 2);
}

TEST_CASE("together, a leaf parts into the right number of boxes and no more") {
    SplitRound round = split(2);
    round.part();
    CHECK_MESSAGE(!round.canFinish(), "two are not all");
    for (int i = 0; i < 9; ++i) round.part();
    CHECK(round.boxes() == 3);
    CHECK(round.finish().right);
}

TEST_CASE("the picture is picked when the tile has been taken out, put in, or swapped") {
    for (const auto& [takes, puts] : {std::pair{true, false}, {false, true}, {true, true}}) {
        CAPTURE(takes);
        CAPTURE(puts);
        ChangeRound round(swap("sunflower", "sunhat"), tiles(takes, puts));
        CHECK(round.pick(0).kind == Kind::nothing);
        CHECK(round.canTake() == takes);
        CHECK(round.canPut() == puts);
        if (puts)
            CHECK(round.put().kind == Kind::settled);
        else
            CHECK(round.take().kind == Kind::settled);
        CHECK(round.isChanged());
        CHECK(round.take().kind == Kind::nothing);
        CHECK(round.put().kind == Kind::nothing);
        CHECK_FALSE(round.canPick(2));
        CHECK(round.pick(0) == Outcome{Kind::answered, 0, true});
    }
}

TEST_CASE("a tile can be taken out before the new one is put in") {
    ChangeRound round(swap("sunflower", "sunhat"), tiles(true, true));
    CHECK(round.take().kind == Kind::settled);
    CHECK_FALSE(round.isChanged());
    CHECK(round.put().kind == Kind::settled);
    CHECK(round.isChanged());
}

TEST_CASE("after a wrong picture the tiles stay as they are, after a restart too") {
    ChangeRound round(swap("sunflower", "sunhat"), tiles(true, true));
    round.put();
    CHECK_FALSE(round.pick(1).right);
    round.explained();
    CHECK(round.isChanged());
    CHECK(round.pick(0).right);
    CHECK(ChangeRound(swap("sunflower", "sunhat", 1), tiles(true, true)).isChanged());
}

TEST_CASE("changes follow one another until they are back at the first word") {
    ChangeRound round(swap("sunflower", "sunhat"), tiles(true, true));
    const auto next = swap("sunhat", "suntan");
    CHECK_MESSAGE(!round.goesOnWith(next), "not before the picture is picked");
    const auto play = [&] {
        round.put();
        round.pick(0);
    };
    play();
    CHECK_FALSE(round.goesOnWith(swap("suntan", "sunflower")));
    REQUIRE(round.goesOnWith(next));
    round.goOn(next, tiles(true, true));
    CHECK_FALSE(round.isChanged());
    play();
    CHECK_FALSE(round.isClosed());
    REQUIRE(round.goesOnWith(swap("suntan", "sunflower")));
    round.goOn(swap("suntan", "sunflower"), tiles(true, true));
    play();
    CHECK(round.chain() == std::vector<std::string>{"sunflower", "sunhat", "suntan", "sunflower"});
    CHECK(round.isClosed());
    CHECK_FALSE(round.goesOnWith(swap("sunflower", "sunhat")));
}

TEST_CASE("a chain that was broken off goes on with the words it had") {
    const ChangeRound round(swap("sunhat", "suntan"), tiles(true, true), {"sunflower"});
    CHECK(round.chain() == std::vector<std::string>{"sunflower", "sunhat"});
}
