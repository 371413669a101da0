#include "game/rounds/count_round.hpp"

#include <utility>

namespace wrenlet::game {

CountRound::CountRound(Question question) : question_(std::move(question)) {}

bool CountRound::isOpen() const {
    return question_.phase() == Question::Phase::asked ||
           question_.phase() == Question::Phase::together;
}

bool CountRound::canLay() const {
    const int most = question_.phase() == Question::Phase::together ? right() : pads();
    return isOpen() && laid_ < most;
}

Outcome CountRound::lay() {
    if (!canLay()) return {};
    ++laid_;
    return {Outcome::Kind::settled};
}

Outcome CountRound::take() {
    if (!canTake()) return {};
    --laid_;
    return {Outcome::Kind::settled};
}

bool CountRound::canFinish() const {
    return laid_ > 0 && question_.canAnswer(static_cast<std::uint8_t>(laid_ - 1));
}

Outcome CountRound::finish() {
    if (!canFinish()) return {};
    return question_.answer(static_cast<std::uint8_t>(laid_ - 1));
}

void CountRound::explained() {
    if (question_.phase() != Question::Phase::explain) return;
    question_.explained();
    laid_ = 0;
}

}  // namespace wrenlet::game
