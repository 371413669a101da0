#include "content/practice/hard_rules.hpp"

#include <algorithm>
#include <iterator>

#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

/// Which rules hold, from all of them to none: see scheduler.hpp.
struct Step {
    int items_apart;
    bool skill, sound, place;
};
constexpr Step kSteps[] = {
    {kPolicy.items_apart, true, true, true},
    {40, true, true, true},
    {20, true, true, true},
    {10, true, true, true},
    {20, false, true, true},
    {10, false, true, true},
    {5, false, true, true},
    {2, false, true, true},
    {1, false, true, true},
    {1, false, false, true},
    {1, false, false, false},
    {0, false, false, false},
};

std::optional<std::size_t> placeOfRight(const Response& response) {
    const auto& choices = response.choices;
    const auto found = std::find(choices.begin(), choices.end(), response.right);
    if (found == choices.end()) return std::nullopt;
    return static_cast<std::size_t>(found - choices.begin());
}

/// What the last `most` tries share, so that one more would be too many.
template <class Of>
auto sharedByLast(const std::vector<const Response*>& tries, int most, const Of& of)
    -> std::optional<decltype(of(*tries[0]))> {
    if (tries.size() < static_cast<std::size_t>(most)) return std::nullopt;
    const auto shared = of(*tries.back());
    for (int i = 1; i < most; ++i)
        if (of(*tries[tries.size() - 1 - static_cast<std::size_t>(i)]) != shared)
            return std::nullopt;
    return shared;
}

}  // namespace

std::vector<const Response*> triesToday(const Situation& situation) {
    std::vector<const Response*> tries;
    const auto& history = situation.history;
    for (auto it = history.rbegin(); it != history.rend() && it->session == situation.session; ++it)
        if (it->isEvidence()) tries.push_back(&*it);
    std::reverse(tries.begin(), tries.end());
    return tries;
}

HardRules::HardRules(const Situation& situation) {
    const auto today = triesToday(situation);
    if (const auto place = sharedByLast(today, kPolicy.places_running, placeOfRight))
        barred_place_ = *place;
    barred_sound_ = sharedByLast(today, kPolicy.sounds_running, [](const Response& response) {
        return std::string_view(response.turns_on.sound);
    });
    const auto skill = sharedByLast(today, kPolicy.skills_running, [](const Response& response) {
        return std::string_view(response.skill);
    });
    if (skill) barred_skill_ = exercise::skillFromId(*skill);

    int ago = 0;
    const auto& history = situation.history;
    for (auto it = history.rbegin(); it != history.rend() && ago < kPolicy.items_apart; ++it)
        if (it->isEvidence()) asked_ago_.try_emplace(QuestionBank::keyOf(it->item), ++ago);
}

int HardRules::stepsToAllow(const exercise::Item& item, std::uint64_t key,
                            std::optional<std::size_t> place) const {
    const auto asked = asked_ago_.find(key);
    const int ago = asked == asked_ago_.end() ? kPolicy.items_apart + 1 : asked->second;
    const bool skill_barred = barred_skill_ == item.skill;
    const bool sound_barred = barred_sound_ == item.turns_on.sound;
    const bool place_barred = place && barred_place_ == place;
    int steps = 0;
    for (const Step& step : kSteps) {
        if (ago > step.items_apart && !(step.skill && skill_barred) &&
            !(step.sound && sound_barred) && !(step.place && place_barred))
            return steps;
        ++steps;
    }
    return steps;
}

}  // namespace wrenlet::practice
