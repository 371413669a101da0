#include "game/app.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "content/common/random.hpp"
#include "tests/scenes/player.hpp"

using namespace wrenlet;
using fixtures::Player;
using practice::samples::Folder;

namespace {

bool shows(const game::Frame& frame, const std::string& text) {
    return std::any_of(frame.begin(), frame.end(), [&](const game::Blit& blit) {
        return blit.sprite.kind == game::Sprite::Kind::text &&
               blit.sprite.name.find(text) != std::string::npos;
    });
}

}  // namespace

TEST_CASE("App: a child who knows plays a whole session, and the next child is one touch away") {
    const Folder folder;
    Player player(folder / "store.db", 2);
    CHECK(player.app().place() == "badges");
    player.tap("badge:c-01");
    player.playRightUntil("ending");
    const auto rows = player.store().all();
    CHECK(rows.size() > 8);
    for (const auto& row : rows) {
        CHECK(row.isRight());
        CHECK(row.try_number == 1);
        CHECK(row.child == "c-01");
    }
    CHECK(player.store().endedSessions("c-01") == 1);
    player.tap("nest");
    CHECK(player.app().place() == "badges");
    CHECK(player.app().rightTouch() == "badge:c-02");
}

TEST_CASE("App: after a wrong answer both are heard, then the same is asked again as practice") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    player.answerWrong();
    CHECK(player.app().place().find("explain") != std::string::npos);
    CHECK_FALSE(player.app().rightTouch().has_value());
    const auto first = player.store().all().back();
    CHECK_FALSE(first.isRight());
    CHECK_FALSE(first.means.empty());
    // What was chosen and what was asked are both named.
    const auto& heard = player.voice().said.back();
    const auto hears = [&](const std::string& clip) {
        return std::any_of(heard.begin(), heard.end(),
                           [&](const game::Spoken& spoken) { return spoken.clip == clip; });
    };
    CHECK(hears("word:" + first.chosen.string()));
    CHECK(hears("word:" + first.right.string()));

    player.answerWrong();
    CHECK(player.store().all().back().try_number == 2);
    CHECK(player.store().all().back().item == first.item);
    // After two wrong ones running it is done together: the wrong choice can't be made.
    REQUIRE(player.waitForTouch());
    CHECK(player.app().place().find("together") != std::string::npos);
    const auto tries = player.store().all().size();
    for (int i = 0; i < 20 && player.store().all().size() == tries; ++i)
        if (player.waitForTouch()) player.tap(*player.app().rightTouch());
    CHECK(player.store().all().back().isRight());
    CHECK(player.store().all().back().try_number == 3);
}

TEST_CASE("App: a child who touches without listening hears that it is worth listening again") {
    const Folder folder;
    Player player(folder / "store.db", 1, 7, {}, 8);
    player.tap("badge:c-01");
    const auto reminders = [&player] {
        const auto& said = player.voice().said;
        return std::count_if(said.begin(), said.end(), [](const game::Utterance& one) {
            return !one.empty() && one.front().clip == "phrase:listen.again";
        });
    };
    const auto firstTries = [&player] {
        const auto rows = player.store().all();
        return std::count_if(rows.begin(), rows.end(),
                             [](const auto& row) { return row.isEvidence(); });
    };
    while (firstTries() < 5) {
        REQUIRE(player.waitForTouch());
        player.wait(4'000);
        if (player.app().rightTouch()) player.tap(*player.app().rightTouch());
    }
    CHECK(reminders() == 0);
    // Wrong at once, then put right, so that nothing is done together.
    while (player.app().place() != "ending" && firstTries() < 30) {
        player.answerWrong();
        while (!player.store().all().back().isRight() && player.waitForTouch())
            player.tap(*player.app().rightTouch());
        while (!player.app().rightTouch() && player.app().place() != "ending") player.wait(48);
    }
    CHECK(player.app().place() == "ending");
    CHECK(firstTries() < 20);
    CHECK(reminders() > 0);
}

TEST_CASE("App: an answer is in the store before anything of it is heard") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    for (int i = 0; i < 6; ++i) {
        std::size_t rows_when_heard = 0;
        const std::size_t before = player.store().all().size();
        while (player.store().all().size() == before) {
            REQUIRE(player.waitForTouch());
            player.voice().on_say = [&] { rows_when_heard = player.store().all().size(); };
            player.tap(*player.app().rightTouch());
        }
        CHECK(rows_when_heard == before + 1);
        player.voice().on_say = [] {};
        player.wait(3000);
    }
}

TEST_CASE("App: cut short anywhere, the session goes on where it stood") {
    // The same seed played without a cut tells what must come.
    const Folder whole_folder;
    Player whole(whole_folder / "store.db", 1, 11);
    whole.tap("badge:c-01");
    whole.playRightUntil("ending");
    std::vector<std::string> expected;
    for (const auto& row : whole.store().all()) expected.push_back(row.item);

    const Folder folder;
    std::vector<std::string> played;
    for (int run = 0; run < 4; ++run) {
        Player player(folder / "store.db", 1, run == 0 ? 11 : 999);
        player.tap("badge:c-01");
        for (int i = 0;
             i < 60 && player.store().all().size() < static_cast<std::size_t>(run * 2 + 2); ++i)
            if (player.waitForTouch()) player.tap(*player.app().rightTouch());
        played.clear();
        for (const auto& row : player.store().all()) played.push_back(row.item);
        CHECK(player.store().all().back().session == player.store().all().front().session);
    }
    REQUIRE(played.size() == 8);
    REQUIRE(expected.size() >= 8);
    CHECK(std::equal(played.begin(), played.end(), expected.begin()));
}

TEST_CASE("App: cut off after a wrong answer, the same is asked again as the next try") {
    const Folder folder;
    std::string item;
    std::size_t rows = 0;
    {
        Player player(folder / "store.db", 1);
        player.tap("badge:c-01");
        player.answerWrong();
        rows = player.store().all().size();
        item = player.store().all().back().item;
    }
    Player player(folder / "store.db", 1, 5);
    player.tap("badge:c-01");
    for (int i = 0; i < 20 && player.store().all().size() == rows; ++i)
        if (player.waitForTouch()) player.tap(*player.app().rightTouch());
    REQUIRE(player.store().all().size() == rows + 1);
    CHECK(player.store().all().back().item == item);
    CHECK(player.store().all().back().try_number == 2);
}

TEST_CASE("App: a resting palm and a second finger change nothing") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    REQUIRE(player.waitForTouch());
    const auto rows = player.store().all().size();
    const std::string place = player.app().place();
    player.contact({game::Contact::Kind::down, 70, {640, 797}, 0});   // at the lower edge
    player.contact({game::Contact::Kind::down, 71, {600, 500}, 45});  // as large as a palm
    player.wait(400);
    player.contact({game::Contact::Kind::up, 71, {600, 500}, 45});
    CHECK(player.store().all().size() == rows);
    CHECK(player.app().place() == place);
    player.contact({game::Contact::Kind::up, 70, {640, 797}, 0});
    for (int i = 0; i < 20 && player.store().all().size() == rows; ++i)
        if (player.waitForTouch()) player.tap(*player.app().rightTouch());
    CHECK(player.store().all().size() == rows + 1);
}

TEST_CASE("App: a card can be dragged home, and one dropped in the water comes back") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    player.playRightUntil("sort: asked");
    REQUIRE(player.waitForTouch());
    const auto rows = player.store().all().size();
    const auto card = player.app().boxOf("card");
    REQUIRE(card.has_value());
    player.contact({game::Contact::Kind::down, 1, card->centre(), 0});
    const std::string home = *player.app().rightTouch();
    player.contact({game::Contact::Kind::move, 1, {60, 780}, 0});
    player.contact({game::Contact::Kind::up, 1, {60, 780}, 0});
    player.wait(500);
    CHECK(player.store().all().size() == rows);
    CHECK(player.app().boxOf("card").has_value());
    player.drag("card", home);
    CHECK(player.store().all().size() == rows + 1);
    CHECK(player.store().all().back().isRight());
}

TEST_CASE("App: a missing sound device is told on the adult's page, and play goes on") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.voice().trouble_text = "No loudspeaker was found.";
    player.toAdultPage();
    CHECK(shows(player.app().frame(player.now()), "No loudspeaker was found."));
    player.tap("back");
    CHECK(player.app().place() == "badges");
    player.tap("badge:c-01");
    CHECK(player.waitForTouch());
}

TEST_CASE("App: the adult's page lies over a round, which goes on behind it") {
    const Folder folder;
    Player player(folder / "store.db", 1);
    player.tap("badge:c-01");
    REQUIRE(player.waitForTouch());
    const std::string place = player.app().place();
    player.toAdultPage();
    player.tap("motion");
    player.tap("back");
    CHECK_FALSE(player.app().settings().motion);
    CHECK(player.app().place() == place);
    CHECK(player.waitForTouch());
    player.toAdultPage();
    player.tap("badges");
    CHECK(player.app().place() == "badges");
    CHECK(player.store().endedSessions("c-01") == 0);
}

TEST_CASE("App: twenty thousand random touches record no answer that nobody gave") {
    const Folder folder;
    Player player(folder / "store.db", 3);
    Random random(2026);
    const game::ScreenSize sizes[] = {
        {1280, 800, 0}, {800, 1280, 0}, {1024, 600, 0}, {2732, 2048, 0}};
    game::ScreenSize size = sizes[0];
    for (int i = 0; i < 20'000; ++i) {
        const auto kind = static_cast<game::Contact::Kind>(random.below(4));
        const game::Point at{static_cast<float>(random.below(static_cast<std::uint32_t>(size.w))),
                             static_cast<float>(random.below(static_cast<std::uint32_t>(size.h)))};
        player.contact({kind, random.below(3), at, 0});
        if (random.below(4) == 0) player.wait(random.below(120));
        if (random.below(500) == 0) {
            size = sizes[random.below(4)];
            player.app().resize(size, player.now());
        }
    }
    for (const auto& row : player.store().all()) {
        CHECK(std::count(row.choices.begin(), row.choices.end(), row.chosen) == 1);
        CHECK(std::count(row.choices.begin(), row.choices.end(), row.right) == 1);
        CHECK(row.took_ms >= 0);
        CHECK(row.hearings >= 1);
    }
    CHECK_FALSE(player.app().touchables().empty());
}
