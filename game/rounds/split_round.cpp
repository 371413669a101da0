#include "game/rounds/split_round.hpp"

namespace wrenlet::game {

bool SplitRound::isOpen() const {
    return question_.phase() == Question::Phase::asked ||
           question_.phase() == Question::Phase::together;
}

bool SplitRound::canPart() const {
    const int most = question_.phase() == Question::Phase::together
                         ? right()
                         : kFewest - 1 + static_cast<int>(question_.places());
    return isOpen() && boxes_ < most;
}

Outcome SplitRound::part() {
    if (!canPart()) return {};
    ++boxes_;
    return {Outcome::Kind::settled};
}

Outcome SplitRound::join() {
    if (!canJoin()) return {};
    --boxes_;
    return {Outcome::Kind::settled};
}

Outcome SplitRound::makeWhole() {
    if (!canJoin()) return {};
    boxes_ = 1;
    return {Outcome::Kind::settled};
}

bool SplitRound::canFinish() const {
    return boxes_ >= kFewest && question_.canAnswer(static_cast<std::uint8_t>(boxes_ - kFewest));
}

Outcome SplitRound::finish() {
    if (!canFinish()) return {};
    return question_.answer(static_cast<std::uint8_t>(boxes_ - kFewest));
}

void SplitRound::explained() {
    if (question_.phase() != Question::Phase::explain) return;
    question_.explained();
    boxes_ = 1;
}

}  // namespace wrenlet::game
