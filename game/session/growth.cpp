#include "game/session/growth.hpp"

#include <algorithm>

#include "content/exercise/skill.hpp"

namespace wrenlet::game {
namespace {

constexpr int kRoundsForAFlower = 4;

bool isSort(const practice::Response& response) {
    const auto skill = exercise::skillFromId(response.skill);
    return skill && exercise::rowOf(*skill).mechanic == exercise::Mechanic::sort;
}

/// The right answers: each is an item brought to its end.
std::vector<const practice::Response*> finished(std::span<const practice::Response> responses) {
    std::vector<const practice::Response*> ends;
    for (const auto& response : responses)
        if (response.isRight()) ends.push_back(&response);
    return ends;
}

bool inOneSort(const practice::Response& a, const practice::Response& b) {
    return a.session == b.session && a.tablet == b.tablet && a.skill == b.skill &&
           a.choices == b.choices && isSort(a);
}

}  // namespace

int roundsDone(std::span<const practice::Response> responses) {
    const auto ends = finished(responses);
    int rounds = 0, cards = 0;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const bool goes_on = i > 0 && cards < kCardsInASort && inOneSort(*ends[i - 1], *ends[i]);
        cards = goes_on ? cards + 1 : 1;
        if (!goes_on) ++rounds;
    }
    return rounds;
}

std::size_t runningSort(std::span<const practice::Response> responses) {
    const auto ends = finished(responses);
    std::size_t cards = 0;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const bool goes_on = i > 0 && cards < kCardsInASort && inOneSort(*ends[i - 1], *ends[i]);
        cards = !isSort(*ends[i]) ? 0 : goes_on ? cards + 1 : 1;
    }
    return cards < kCardsInASort ? cards : 0;
}

Growth growthAfter(int rounds, int sessions) {
    return {std::min(4, sessions), std::min(3, (sessions + 1) / 3),
            std::min(12, rounds / kRoundsForAFlower)};
}

}  // namespace wrenlet::game
