#include "game/session/growth.hpp"

#include <doctest/doctest.h>

#include <utility>

using namespace wrenlet;
using game::roundsDone;
using game::runningChain;
using Words = std::vector<std::string>;

namespace {

using Steps = std::vector<std::pair<const char*, const char*>>;

/// Right answers of one session: each word, and what came out of it.
std::vector<practice::Response> changes(const Steps& steps,
                                        const char* skill = "compound.substitute") {
    std::vector<practice::Response> rows;
    for (const auto& [from, to] : steps) {
        practice::Response row;
        row.skill = skill;
        row.asked = from;
        row.chosen = row.right = to;
        row.choices = {to, "teapot"};
        rows.push_back(row);
    }
    return rows;
}

}  // namespace

TEST_CASE("Growth: changes that follow one another are one round, until back at the first word") {
    auto rows = changes({{"sunflower", "sunrise"}, {"sunrise", "sunglasses"}});
    CHECK(roundsDone(rows) == 1);
    CHECK(runningChain(rows) == Words{"sunflower", "sunrise", "sunglasses"});

    rows = changes({{"sunflower", "sunrise"},
                    {"sunrise", "sunglasses"},
                    {"sunglasses", "sunflower"},
                    {"sunflower", "sunrise"}});
    CHECK(roundsDone(rows) == 2);
    CHECK(runningChain(rows) == Words{"sunflower", "sunrise"});
    rows.pop_back();
    CHECK_MESSAGE(runningChain(rows).empty(), "it is closed");
}

TEST_CASE("Growth: a word that did not come out, another skill or day begins a round") {
    CHECK(runningChain({}).empty());
    CHECK(roundsDone(changes({{"rowboat", "sailboat"}, {"sunrise", "sunflower"}})) == 2);
    CHECK(roundsDone(changes({{"rain", "train"}, {"train", "strain"}}, "phoneme.add")) == 2);
    CHECK(runningChain(changes({{"rain", "train"}}, "phoneme.add")).empty());
    auto rows = changes({{"rowboat", "sailboat"}, {"sailboat", "speedboat"}});
    rows.back().session = 2;
    CHECK(roundsDone(rows) == 2);
    CHECK(runningChain(rows) == Words{"sailboat", "speedboat"});
}

TEST_CASE("Growth: a wrong answer between two changes does not break their chain") {
    auto rows = changes({{"rowboat", "sailboat"}, {"sailboat", "speedboat"}});
    auto slip = rows.back();
    slip.chosen = "teapot";
    rows.insert(rows.begin() + 1, slip);
    CHECK(runningChain(rows) == Words{"rowboat", "sailboat", "speedboat"});
}

TEST_CASE("Growth: a chain that does not close ends by itself") {
    Steps steps;
    const char* words[] = {"a", "b", "c", "d", "e", "f", "g", "h"};
    for (int i = 0; i < 7; ++i) steps.push_back({words[i], words[i + 1]});
    CHECK(roundsDone(changes(steps)) == 2);
    CHECK(runningChain(changes(steps)) == Words{"g", "h"});
    steps.pop_back();
    CHECK(runningChain(changes(steps)).empty());
}

TEST_CASE("Growth: cards sorted by a sound are one round too, and a pick among them is another") {
    const auto placed = [](const char* card, const char* home) {
        practice::Response row;
        row.skill = "phoneme.first";
        row.asked = card;
        row.chosen = row.right = home;
        row.choices = {"cat", "bee"};
        return row;
    };
    std::vector rows = {placed("cup", "cat"), placed("boat", "bee")};
    CHECK(roundsDone(rows) == 1);
    CHECK(game::runningSort(rows) == 2);
    rows.push_back(placed("sound:b", "bee"));
    CHECK(roundsDone(rows) == 2);
    CHECK(game::runningSort(rows) == 0);
}
