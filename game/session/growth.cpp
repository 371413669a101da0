#include "game/session/growth.hpp"

#include <algorithm>

#include "content/exercise/change_tiles.hpp"
#include "content/exercise/item.hpp"
#include "content/exercise/skill.hpp"

namespace wrenlet::game {
namespace {

constexpr int kRoundsForAFlower = 4;

bool isSort(const practice::Response& response) {
    const auto skill = exercise::skillFromId(response.skill);
    return skill && exercise::mechanicOf(*skill, response.asked) == exercise::Mechanic::sort;
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
           a.choices == b.choices && isSort(a) && isSort(b);
}

/// Follows a chain of changes from answer to answer.
class ChainWalk {
  public:
    /// True iff `end` goes on with the chain of the one before it.
    bool goesOn(const practice::Response& end) {
        const auto skill = exercise::skillFromId(end.skill);
        const bool is_link = skill && exercise::makesChains(*skill);
        const bool goes_on = is_link && last_ != nullptr && last_->skill == end.skill &&
                             last_->session == end.session && last_->tablet == end.tablet &&
                             !words_.empty() && words_.back() == end.asked && !isDone();
        if (!goes_on) words_.clear();
        if (is_link && !goes_on) words_ = {end.asked};
        if (is_link) words_.push_back(end.right);
        last_ = &end;
        return goes_on;
    }
    std::vector<std::string> running() const {
        return isDone() ? std::vector<std::string>{} : words_;
    }

  private:
    bool isDone() const {
        return words_.size() > kChangesInAChain ||
               (words_.size() > 2 && words_.front() == words_.back());
    }

    const practice::Response* last_ = nullptr;
    std::vector<std::string> words_;
};

}  // namespace

int roundsDone(std::span<const practice::Response> responses) {
    const auto ends = finished(responses);
    int rounds = 0, cards = 0;
    ChainWalk chain;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        const bool goes_on = i > 0 && cards < kCardsInASort && inOneSort(*ends[i - 1], *ends[i]);
        cards = goes_on ? cards + 1 : 1;
        const bool is_linked = chain.goesOn(*ends[i]);
        if (!goes_on && !is_linked) ++rounds;
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

std::vector<std::string> runningChain(std::span<const practice::Response> responses) {
    ChainWalk chain;
    for (const auto* end : finished(responses)) chain.goesOn(*end);
    return chain.running();
}

Growth growthAfter(int rounds, int sessions) {
    return {std::min(4, sessions), std::min(3, (sessions + 1) / 3),
            std::min(12, rounds / kRoundsForAFlower)};
}

}  // namespace wrenlet::game
