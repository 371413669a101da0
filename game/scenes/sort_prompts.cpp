#include "content/exercise/phrases.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using Kind = Show::Kind;
namespace say = exercise::phrase;

Script Prompts::ask(const SortRound& round, Asking asking, const exercise::Item* example) const {
    const auto& question = round.question();
    const Pieces pieces(pack_, question.item());
    const bool is_rhyme = question.item().skill.task == exercise::Task::rhyme_sort;
    Script script;
    if (is_rhyme && asking == Asking::first_time && example == nullptr)
        addPhrase(script, say::kSortShow, 0);
    if (example != nullptr) addSolved(script, *example, true);
    if (example != nullptr || asking == Asking::again) addPhrase(script, say::kNowYou, kRest);
    const bool moves = asking == Asking::first_time || asking == Asking::again;
    addQuestion(script, question.item(), at(Kind::subject, 0, moves),
                [](std::size_t) { return at(Kind::subject); });
    for (std::size_t home = 0; home < round.homes(); ++home)
        add(script, pieces.choice(question.choiceAt(home)).clip, kBeat + 100,
            at(Kind::place, home));
    return script;
}

Script Prompts::together(const SortRound& round) const {
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    const Script then = right(round);
    script.insert(script.end(), then.begin(), then.end());
    if (script.size() > then.size() && !then.empty()) script[1].gap_before = kBeat;
    return script;
}

Script Prompts::explain(const SortRound& round) const {
    const auto& question = round.question();
    return compared(Pieces(pack_, question.item())
                        .compared(question.wrongChoice().value_or(question.item().answer)));
}

Script Prompts::right(const SortRound& round) const {
    const auto& question = round.question();
    const Pieces pieces(pack_, question.item());
    Script script;
    add(script, pieces.heard().front().clip, 0, at(Kind::subject));
    add(script, pieces.answer().clip, kBeat, at(Kind::place, question.rightPlace()));
    return script;
}

}  // namespace wrenlet::game
