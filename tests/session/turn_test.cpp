#include "game/session/turn.hpp"

#include <doctest/doctest.h>

#include "tests/fixtures/small_pack.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using practice::samples::Folder;

namespace {

/// A child's sessions on one tablet, answered by calls.
class Sitting {
  public:
    explicit Sitting(const std::filesystem::path& store)
        : store_(std::move(practice::Store::open(store, "t-test").value())) {}

    game::Turn begin() {
        practice::SessionPlan plan;
        plan.length_ms = 60 * 60'000;
        return {{pack_, store_, scheduler_, clock_, plan, {}}, "c-01", 5};
    }
    void nextDay() { clock_.at += 86'400'000; }

    /// Answers the present question; when wrongly, puts it right as children do. On to the next.
    static void answer(game::Turn& turn, bool right, game::Millis took_ms) {
        const game::Question& question = turn.question();
        const std::size_t place = question.rightPlace();
        const auto wrong = question.choiceAt((place + 1) % question.places());
        turn.record({right ? question.item().answer : wrong, 1, took_ms});
        if (!right) turn.record({turn.question().item().answer, 1, took_ms});
        turn.goOn();
    }
    /// A session of right answers in an ordinary child's time.
    void listens() {
        game::Turn turn = begin();
        for (int i = 0; !turn.isOver(); ++i) answer(turn, true, 3'000 + i % 5 * 600);
        turn.end();
        nextDay();
    }

    practice::Store& store() { return store_; }

  private:
    pack::Pack pack_ = fixtures::smallPack();
    practice::Store store_;
    practice::PracticeScheduler scheduler_;
    fixtures::FixedClock clock_;
};

int firstTriesIn(const practice::Store& store) {
    int tries = 0;
    for (const auto& row : store.all()) tries += row.isEvidence();
    return tries;
}

}  // namespace

TEST_CASE("Turn: a child who listens is not reminded, and plays the whole session") {
    const Folder folder;
    Sitting sitting(folder / "store.db");
    sitting.listens();
    const int first = firstTriesIn(sitting.store());
    CHECK(first == practice::SessionPlan{}.most_items);
    game::Turn turn = sitting.begin();
    for (int i = 0; !turn.isOver(); ++i) {
        CHECK_FALSE(turn.remindsToListen());
        Sitting::answer(turn, i % 8 != 5, 3'000 + i % 5 * 600);
    }
    CHECK(firstTriesIn(sitting.store()) - first >= practice::SessionPlan{}.most_items);
}

TEST_CASE("Turn: one who touches without listening is reminded, and the session ends soon") {
    const Folder folder;
    Sitting sitting(folder / "store.db");
    sitting.listens();
    sitting.listens();
    const int before = firstTriesIn(sitting.store());
    game::Turn turn = sitting.begin();
    for (int i = 0; i < 8; ++i) Sitting::answer(turn, true, 3'500);
    int reminded = 0, touches = 0;
    for (; !turn.isOver() && touches < 40; ++touches) {
        reminded += turn.remindsToListen();
        Sitting::answer(turn, touches % 4 == 1, 650);
    }
    CHECK(turn.isOver());
    CHECK(reminded >= 1);
    CHECK(touches <= 12);
    turn.end();
    CHECK(sitting.store().endedSessions("c-01") == 3);
    // Nothing is lost: every answer is kept as it was given.
    CHECK(firstTriesIn(sitting.store()) == before + 8 + touches);
}

TEST_CASE("Turn: cut short while it winds down, it winds down still") {
    const Folder folder;
    Sitting sitting(folder / "store.db");
    sitting.listens();
    sitting.listens();
    int whole = 0, cut = 0;
    for (int* touches : {&whole, &cut}) {
        auto turn = std::make_unique<game::Turn>(sitting.begin());
        for (int i = 0; i < 8; ++i) Sitting::answer(*turn, true, 3'500);
        for (; !turn->isOver() && *touches < 40; ++*touches) {
            Sitting::answer(*turn, false, 650);
            if (touches == &cut) turn = std::make_unique<game::Turn>(sitting.begin());
        }
        CHECK(turn->isOver());
        turn->end();
        sitting.nextDay();
    }
    CHECK(cut <= 12);
    CHECK(whole <= 12);
}
