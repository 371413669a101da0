#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using Kind = Show::Kind;
namespace say = exercise::phrase;

Script Prompts::ask(const CountRound& round, Asking asking) const {
    Script script;
    if (asking == Asking::again)
        addPhrase(script, say::kNowYou, 0, at(Kind::nothing, 0, true));
    else
        addPhrase(script, say::kCountAsk, 0, at(Kind::nothing, 0, asking == Asking::first_time));
    add(script, exercise::sentenceClip(round.question().item().subject), kApart, at(Kind::subject));
    if (asking == Asking::first_time) addPhrase(script, say::kCountDone, kRest);
    return script;
}

Script Prompts::together(const CountRound& round) const {
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    const auto& parts = round.question().item().parts;
    for (std::size_t i = 0; i < parts.size(); ++i)
        add(script, parts[i].clip, kBeat, at(Kind::place, i));
    return script;
}

Script Prompts::explain(const CountRound& round) const {
    Script script;
    addPhrase(script, say::kListenBoth, 0);
    const auto& parts = round.question().item().parts;
    for (std::size_t i = 0; i < parts.size(); ++i)
        add(script, parts[i].clip, i == 0 ? kRest : kBeat, paired(0, 0, true, i));
    return script;
}

Script Prompts::right(const CountRound& round) const {
    Script script;
    add(script, exercise::sentenceClip(round.question().item().subject), 0, at(Kind::subject));
    return script;
}

}  // namespace wrenlet::game
