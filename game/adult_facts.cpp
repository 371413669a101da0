#include "game/adult_facts.hpp"

#include <utility>

#include "game/session/turn.hpp"

namespace wrenlet::game {
namespace {

void tell(std::vector<std::string>& words, const std::vector<Problem>& problems) {
    const std::size_t first = words.size();
    for (const Problem& problem : problems) {
        std::string text = sentence(problem);
        if (words.size() == first || words.back() != text) words.push_back(std::move(text));
    }
}

}  // namespace

std::string titleOf(const pack::ClassList& list) {
    return list.title.empty() ? "Wrenlet" : list.title;
}

std::vector<std::string> toLookAt(const Voice& voice, const std::vector<Problem>& problems,
                                  const Turn* turn) {
    std::vector<std::string> words;
    const std::string trouble = voice.trouble();
    if (!trouble.empty()) words.push_back(trouble);
    tell(words, problems);
    if (turn != nullptr) tell(words, turn->problems());
    return words;
}

AdultFacts factsOf(const AppParts& parts) {
    AdultFacts facts;
    facts.title = titleOf(parts.list);
    facts.facts = {"Pack: " + parts.pack.title + " (" + parts.pack.name() + ")",
                   "Tablet: " + parts.store.tablet() + ", " +
                       std::to_string(parts.store.all().size()) + " answers kept"};
    if (!parts.data.empty()) facts.facts.push_back("Kept in: " + parts.data.string());
    if (!parts.snapshot.empty()) facts.facts.push_back("Brought to: " + parts.snapshot.string());
    facts.facts.push_back("This is practice, and no diagnosis.");
    return facts;
}

}  // namespace wrenlet::game
