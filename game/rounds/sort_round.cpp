#include "game/rounds/sort_round.hpp"

#include <utility>

namespace wrenlet::game {

SortRound::SortRound(Question question, std::vector<std::vector<std::string>> sorted)
    : question_(std::move(question)), sorted_(std::move(sorted)) {
    sorted_.resize(question_.places());
}

const std::string& SortRound::head(std::size_t home) const {
    return question_.item().choices[question_.choiceAt(home)].id;
}

bool SortRound::canPut(std::size_t home) const {
    return home < homes() && question_.canAnswer(question_.choiceAt(home));
}

Outcome SortRound::put(std::size_t home) {
    if (!canPut(home)) return {};
    const Outcome outcome = question_.answer(question_.choiceAt(home));
    if (outcome.right) sorted_[home].push_back(question_.item().subject);
    return outcome;
}

bool SortRound::goesOnWith(const Question& next) const {
    return question_.phase() == Question::Phase::right && sameHomes(question_, next);
}

bool sameHomes(const Question& a, const Question& b) {
    if (a.item().skill != b.item().skill || a.places() != b.places() ||
        exercise::mechanicOf(a.item()) != exercise::mechanicOf(b.item()))
        return false;
    for (std::size_t place = 0; place < a.places(); ++place)
        if (a.item().choices[a.choiceAt(place)].id != b.item().choices[b.choiceAt(place)].id)
            return false;
    return true;
}

}  // namespace wrenlet::game
