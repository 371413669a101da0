#include "game/rounds/change_round.hpp"

#include <utility>

namespace wrenlet::game {

ChangeRound::ChangeRound(Question question, exercise::ChangeTiles tiles,
                         std::vector<std::string> chain)
    : question_(std::move(question)), tiles_(std::move(tiles)), chain_(std::move(chain)) {
    chain_.push_back(question_.item().subject);
    if (question_.tryNumber() == 1) return;
    taken_ = tiles_.takes;
    put_ = tiles_.puts;
}

Outcome ChangeRound::take() {
    if (!canTake()) return {};
    taken_ = true;
    return {Outcome::Kind::settled};
}

Outcome ChangeRound::put() {
    if (!canPut()) return {};
    put_ = true;
    taken_ = tiles_.takes;
    return {Outcome::Kind::settled};
}

bool ChangeRound::canPick(std::size_t place) const {
    return isChanged() && place < question_.places() &&
           question_.canAnswer(question_.choiceAt(place));
}

Outcome ChangeRound::pick(std::size_t place) {
    if (!canPick(place)) return {};
    const Outcome outcome = question_.answer(question_.choiceAt(place));
    if (outcome.right) chain_.push_back(question_.item().choices[outcome.choice].id);
    return outcome;
}

bool ChangeRound::goesOnWith(const Question& next) const {
    return question_.phase() == Question::Phase::right && !isClosed() &&
           exercise::followsInChain(question_.item(), next.item());
}

void ChangeRound::goOn(Question next, exercise::ChangeTiles tiles) {
    question_ = std::move(next);
    tiles_ = std::move(tiles);
    taken_ = put_ = false;
}

}  // namespace wrenlet::game
