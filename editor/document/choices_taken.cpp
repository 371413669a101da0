#include "editor/document/choices_taken.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "editor/look/wording.hpp"

namespace wrenlet::desk {

namespace {

using practice::Response;

std::vector<const Response*> firstTries(const OpenedClass& opened, const std::string& child,
                                        const std::string& skill) {
    std::vector<const Response*> tries;
    for (const Response& response : opened.responses)
        if (response.isEvidence() && response.skill == skill && response.child == child &&
            isCounted(opened, response))
            tries.push_back(&response);
    return tries;
}

// Which sound each choice stands for, from every answer of the class; a choice that was right for
// two sounds, or that is the asked word itself, stands for none.
std::map<std::string, std::string> soundOfChoice(const OpenedClass& opened,
                                                 const std::string& skill) {
    std::map<std::string, std::string> sounds;
    std::set<std::string> unclear;
    for (const Response& response : opened.responses) {
        if (response.skill != skill) continue;
        const std::string label = wording::placeShort(response.turns_on);
        const auto [at, is_new] = sounds.emplace(response.right, label);
        if ((!is_new && at->second != label) || response.right == response.asked)
            unclear.insert(response.right);
    }
    for (const std::string& choice : unclear) sounds.erase(choice);
    return sounds;
}

bool inReadingOrder(const std::string& a, const std::string& b) {
    return a.size() != b.size() ? a.size() < b.size() : a < b;
}

std::optional<ConfusionTable> tableOf(const std::vector<const Response*>& tries,
                                      std::map<std::string, std::string> sounds,
                                      std::size_t most_labels) {
    std::set<std::string> labels;
    for (const Response* response : tries) {
        const exercise::Position position = response->turns_on.position;
        if (position == exercise::Position::word_count || position == exercise::Position::count)
            sounds.emplace(response->chosen, response->chosen);
        const auto chosen = sounds.find(response->chosen);
        if (chosen == sounds.end()) return std::nullopt;
        labels.insert(chosen->second);
        labels.insert(wording::placeShort(response->turns_on));
    }
    if (labels.empty() || labels.size() > most_labels) return std::nullopt;

    ConfusionTable table;
    table.labels.assign(labels.begin(), labels.end());
    std::sort(table.labels.begin(), table.labels.end(), inReadingOrder);
    const auto indexOf = [&](const std::string& label) {
        return static_cast<std::size_t>(std::find(table.labels.begin(), table.labels.end(), label) -
                                        table.labels.begin());
    };
    table.times.assign(table.labels.size(), std::vector<int>(table.labels.size(), 0));
    for (const Response* response : tries)
        ++table.times[indexOf(wording::placeShort(response->turns_on))]
                     [indexOf(sounds.at(response->chosen))];
    return table;
}

}  // namespace

ChoicesTaken choicesTaken(const OpenedClass& opened, const std::string& child,
                          const std::string& skill, std::size_t most_labels) {
    ChoicesTaken taken;
    taken.heading = wording::skill(skill);
    const auto tries = firstTries(opened, child, skill);
    taken.answers = static_cast<int>(tries.size());
    taken.table = tableOf(tries, soundOfChoice(opened, skill), most_labels);

    std::map<std::string, int> asked;
    std::map<std::pair<std::string, std::string>, FoilTaken> foils;
    for (const Response* response : tries) {
        ++asked[response->asked];
        if (response->isRight()) continue;
        FoilTaken& foil = foils[{response->asked, response->chosen}];
        foil.asked = wording::word(response->asked);
        foil.chosen = wording::word(response->chosen);
        foil.means = response->means;
        ++foil.times;
    }
    for (auto& [ids, foil] : foils) {
        foil.of = asked[ids.first];
        taken.foils.push_back(std::move(foil));
    }
    std::stable_sort(taken.foils.begin(), taken.foils.end(),
                     [](const FoilTaken& a, const FoilTaken& b) { return a.times > b.times; });
    return taken;
}

}  // namespace wrenlet::desk
