#include "game/rounds/question.hpp"

#include <algorithm>
#include <utility>

namespace wrenlet::game {
namespace {

constexpr int kTriesAlone = 2;

}  // namespace

Question::Question(exercise::Item item, std::vector<std::uint8_t> order, int tries_before)
    : item_(std::move(item)), order_(std::move(order)), tries_(tries_before) {
    if (tries_ >= kTriesAlone) phase_ = Phase::together;
}

std::size_t Question::placeOf(std::uint8_t choice) const {
    const auto found = std::find(order_.begin(), order_.end(), choice);
    return static_cast<std::size_t>(found - order_.begin());
}

bool Question::canAnswer(std::uint8_t choice) const {
    if (choice >= item_.choices.size()) return false;
    if (phase_ == Phase::asked) return true;
    return phase_ == Phase::together && choice == item_.answer;
}

Outcome Question::answer(std::uint8_t choice) {
    if (!canAnswer(choice)) return {};
    ++tries_;
    const bool right = choice == item_.answer;
    wrong_ = right ? std::nullopt : std::optional(choice);
    phase_ = right ? Phase::right : Phase::explain;
    return {Outcome::Kind::answered, choice, right};
}

void Question::explained() {
    if (phase_ != Phase::explain) return;
    phase_ = tries_ >= kTriesAlone ? Phase::together : Phase::asked;
}

}  // namespace wrenlet::game
