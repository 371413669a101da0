#include "game/scenes/prompts.hpp"

#include <algorithm>

#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

namespace say = exercise::phrase;

namespace {

/// Yes or no, long or short, asking or telling.
bool answersBySign(exercise::Task task) {
    using exercise::Task;
    return task == Task::rhyme_judge || task == Task::long_short || task == Task::tune;
}

bool shareAPart(const exercise::Item& a, const exercise::Item& b) {
    return std::any_of(a.parts.begin(), a.parts.end(), [&](const exercise::Part& part) {
        return std::find(b.parts.begin(), b.parts.end(), part) != b.parts.end();
    });
}

}  // namespace

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

Script Prompts::word(const Question& question) const {
    Script script;
    add(script, exercise::wordClip(question.item().subject), 0, at(Show::Kind::subject));
    return script;
}

const exercise::Item* Prompts::exampleFor(const exercise::Item& asked) const {
    const auto isIn = [&asked](const std::string& word) {
        return word == asked.subject ||
               std::any_of(asked.choices.begin(), asked.choices.end(),
                           [&](const auto& choice) { return choice.id == word; });
    };
    // With other words where there are such; where a number is asked, with another number. Of two
    // signs either may be the example's, or it would tell the answer.
    const bool signs = answersBySign(asked.skill.task);
    const bool counts = exercise::keepsOrder(asked) && !signs;
    const exercise::Item* found = nullptr;
    for (const auto& item : pack_.items) {
        const auto& answer = item.choices[item.answer].id;
        if (item.skill != asked.skill || item.subject == asked.subject ||
            item.parts.empty() != asked.parts.empty() ||
            exercise::mechanicOf(item) != exercise::mechanicOf(asked))
            continue;
        if (!counts && !signs && answer == asked.choices[asked.answer].id) continue;
        if (found == nullptr) found = &item;
        const bool is_other = signs    ? !shareAPart(item, asked)
                              : counts ? item.answer != asked.answer
                                       : !isIn(answer);
        if (is_other && !isIn(item.subject)) return &item;
    }
    return found;
}

}  // namespace wrenlet::game
