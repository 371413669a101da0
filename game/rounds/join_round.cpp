#include "game/rounds/join_round.hpp"

#include <algorithm>

namespace wrenlet::game {

JoinRound::JoinRound(Question question)
    : question_(std::move(question)),
      leaning_(question_.item().parts.empty() ? 0 : question_.item().parts.size() - 1,
               question_.tryNumber() > 1) {}

std::pair<std::size_t, std::size_t> JoinRound::runOf(std::size_t tile) const {
    std::size_t first = tile, last = tile;
    while (first > 0 && leaning_[first - 1]) --first;
    while (last < leaning_.size() && leaning_[last]) ++last;
    return {first, last};
}

bool JoinRound::isJoined() const {
    return std::all_of(leaning_.begin(), leaning_.end(), [](bool leans) { return leans; });
}

bool JoinRound::canBring(std::size_t tile, std::size_t other) const {
    if (tile >= tiles() || other >= tiles()) return false;
    const auto a = runOf(std::min(tile, other)), b = runOf(std::max(tile, other));
    return a.second + 1 == b.first;
}

Outcome JoinRound::bring(std::size_t tile, std::size_t other) {
    if (!canBring(tile, other)) return {};
    leaning_[runOf(std::min(tile, other)).second] = true;
    return {Outcome::Kind::settled};
}

bool JoinRound::canPick(std::size_t place) const {
    return isJoined() && place < question_.places() &&
           question_.canAnswer(question_.choiceAt(place));
}

Outcome JoinRound::pick(std::size_t place) {
    if (!canPick(place)) return {};
    return question_.answer(question_.choiceAt(place));
}

}  // namespace wrenlet::game
