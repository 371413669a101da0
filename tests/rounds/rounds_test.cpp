#include <doctest/doctest.h>

#include "game/rounds/count_round.hpp"
#include "game/rounds/join_round.hpp"
#include "game/rounds/sort_round.hpp"
#include "tests/fixtures/small_pack.hpp"

using namespace wrenlet;
using namespace wrenlet::game;
using Phase = Question::Phase;
using Kind = Outcome::Kind;

namespace {

Question ask(const char* id, std::vector<std::uint8_t> order, int tries_before = 0) {
    const auto pack = fixtures::smallPack();
    return Question(pack.items[fixtures::itemAt(pack, id)], std::move(order), tries_before);
}

JoinRound joined(JoinRound round) {
    for (std::size_t i = 1; i < round.tiles(); ++i) round.bring(i - 1, i);
    return round;
}

}  // namespace

TEST_CASE("a right answer at once settles the question") {
    SortRound round(ask("sort:cat", {1, 0}));
    CHECK(round.head(0) == "bee");
    CHECK(round.question().rightPlace() == 1);
    CHECK(round.put(1) == Outcome{Kind::answered, 0, true});
    CHECK(round.question().phase() == Phase::right);
    CHECK(round.sorted(1) == std::vector<std::string>{"cat"});
    CHECK_MESSAGE(!round.canPut(0), "nothing more to put");
}

TEST_CASE("a wrong answer is explained, and nothing can be done meanwhile") {
    SortRound round(ask("sort:cat", {0, 1}));
    CHECK(round.put(1) == Outcome{Kind::answered, 1, false});
    CHECK(round.question().phase() == Phase::explain);
    CHECK(round.question().wrongChoice() == 1);
    CHECK(round.sorted(1).empty());
    const auto before = round;
    CHECK(round.put(0).kind == Kind::nothing);
    CHECK(round == before);
}

TEST_CASE("after a wrong answer the same question is asked again, as a second try") {
    SortRound round(ask("sort:cat", {0, 1}));
    round.put(1);
    round.explained();
    CHECK(round.question().phase() == Phase::asked);
    CHECK(round.question().tryNumber() == 2);
    CHECK(round.put(0).right);
}

TEST_CASE("after two wrong answers it is done together: only the right choice can be made") {
    SortRound round(ask("sort:cat", {0, 1}));
    for (int i = 0; i < 2; ++i) {
        CHECK_FALSE(round.put(1).right);
        round.explained();
    }
    CHECK(round.question().phase() == Phase::together);
    CHECK(round.put(1).kind == Kind::nothing);
    CHECK(round.question().tryNumber() == 3);
    CHECK(round.put(0).right);
    CHECK(round.question().phase() == Phase::right);
}

TEST_CASE("a question that was broken off goes on with the next try") {
    CHECK(ask("sort:cat", {0, 1}, 1).tryNumber() == 2);
    CHECK(ask("sort:cat", {0, 1}, 1).phase() == Phase::asked);
    CHECK(ask("sort:cat", {0, 1}, 2).phase() == Phase::together);
}

TEST_CASE("cards for the same homes follow in the same sort and stay in sight") {
    SortRound round(ask("sort:cat", {0, 1}));
    round.put(0);
    CHECK(round.goesOnWith(ask("sort:tree", {0, 1})));
    CHECK_MESSAGE(!round.goesOnWith(ask("sort:tree", {1, 0})), "homes never change places");
    CHECK_FALSE(round.goesOnWith(ask("join:cat", {0, 1, 2})));
    round.goOn(ask("sort:tree", {0, 1}));
    CHECK(round.sorted(0) == std::vector<std::string>{"cat"});
    round.put(1);
    CHECK(round.sorted(1) == std::vector<std::string>{"tree"});
}

TEST_CASE("tiles come together with their neighbours only, from either side") {
    JoinRound round(ask("join:sun", {0, 1, 2}));
    CHECK(round.tiles() == 3);
    CHECK_FALSE(round.canBring(0, 2));
    CHECK_FALSE(round.canBring(1, 1));
    CHECK_FALSE(round.canBring(0, 7));
    CHECK(round.bring(2, 1).kind == Kind::settled);
    CHECK(round.runOf(2) == std::pair<std::size_t, std::size_t>{1, 2});
    CHECK_FALSE(round.isJoined());
    CHECK_MESSAGE(round.canBring(0, 2), "by any tile of the run");
    CHECK(round.bring(0, 2).kind == Kind::settled);
    CHECK(round.isJoined());
    CHECK(round.bring(0, 1).kind == Kind::nothing);
}

TEST_CASE("a picture can be picked only when all the tiles lean together") {
    JoinRound round(ask("join:sun", {2, 0, 1}));
    CHECK(round.pick(1).kind == Kind::nothing);
    round = joined(round);
    CHECK_FALSE(round.canPick(3));
    CHECK(round.pick(1) == Outcome{Kind::answered, 0, true});
}

TEST_CASE("the tiles stay together when the picture is picked again") {
    auto round = joined(JoinRound(ask("join:cat", {0, 1, 2})));
    CHECK_FALSE(round.pick(2).right);
    round.explained();
    CHECK(round.isJoined());
    CHECK(round.pick(0).right);
    CHECK_MESSAGE(JoinRound(ask("join:cat", {0, 1, 2}, 1)).isJoined(), "and after a restart");
}

TEST_CASE("a count is answered by saying that is all") {
    CountRound round(ask("count:s-1", {0, 1, 2, 3, 4, 5, 6, 7}));
    CHECK(round.pads() == 8);
    CHECK_MESSAGE(!round.canFinish(), "not with nothing laid");
    CHECK(round.finish().kind == Kind::nothing);
    for (int i = 0; i < 4; ++i) CHECK(round.lay().kind == Kind::settled);
    CHECK(round.take().kind == Kind::settled);
    CHECK(round.laid() == 3);
    CHECK(round.finish() == Outcome{Kind::answered, 2, true});
    CHECK_FALSE(round.canLay());
    CHECK_FALSE(round.canTake());
}

TEST_CASE("no more acorns than pads can be laid") {
    CountRound round(ask("count:s-2", {0, 1, 2, 3, 4, 5, 6, 7}));
    for (int i = 0; i < 20; ++i) round.lay();
    CHECK(round.laid() == 8);
    for (int i = 0; i < 20; ++i) round.take();
    CHECK(round.laid() == 0);
}

TEST_CASE("a wrong count is explained, then the pads are empty again") {
    CountRound round(ask("count:s-1", {0, 1, 2, 3, 4, 5, 6, 7}));
    round.lay();
    CHECK(round.finish() == Outcome{Kind::answered, 0, false});
    CHECK(round.laid() == 1);
    round.explained();
    CHECK(round.laid() == 0);
    CHECK(round.question().tryNumber() == 2);
}

TEST_CASE("together, the count can only be the right one") {
    CountRound round(ask("count:s-1", {0, 1, 2, 3, 4, 5, 6, 7}, 2));
    for (int i = 0; i < 2; ++i) round.lay();
    CHECK_FALSE(round.canFinish());
    for (int i = 0; i < 5; ++i) round.lay();
    CHECK(round.laid() == 3);
    CHECK(round.finish().right);
}
