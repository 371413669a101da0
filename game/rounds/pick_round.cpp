#include "game/rounds/pick_round.hpp"

namespace wrenlet::game {

const std::string& PickRound::choiceAt(std::size_t place) const {
    return question_.item().choices[question_.choiceAt(place)].id;
}

bool PickRound::picksSounds() const {
    return question_.item().skill.task == exercise::Task::sound;
}

bool PickRound::canTouch(std::size_t place) const {
    return place < places() && question_.canAnswer(question_.choiceAt(place));
}

Outcome PickRound::touch(std::size_t place) {
    if (!canTouch(place)) return {};
    if (!picksSounds() || chosen_ == place) return bring(place);
    chosen_ = place;
    return {Outcome::Kind::settled};
}

Outcome PickRound::bring(std::size_t place) {
    if (!canTouch(place)) return {};
    chosen_.reset();
    return question_.answer(question_.choiceAt(place));
}

void PickRound::explained() {
    question_.explained();
    chosen_.reset();
}

}  // namespace wrenlet::game
