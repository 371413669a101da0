#include "game/scenes/prompts.hpp"

#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

namespace say = exercise::phrase;

void Prompts::add(Script& script, const std::string& clip, Millis gap, Show show) const {
    if (pack_.clip(clip) == nullptr) return;
    script.push_back({clip, script.empty() ? 0 : gap, show});
}

void Prompts::addPhrase(Script& script, std::string_view id, Millis gap, Show show) const {
    add(script, exercise::phraseClip(id), gap, show);
}

Script Prompts::phrase(std::string_view id) const {
    Script script;
    addPhrase(script, id, 0);
    return script;
}

Script Prompts::listenAgain(const Script& then) const {
    Script script = phrase(say::kListenAgain);
    const bool is_said = !script.empty();
    for (const Line& line : then) {
        script.push_back(line);
        if (is_said && script.size() == 2) script.back().gap_before = kRest;
    }
    return script;
}

}  // namespace wrenlet::game
