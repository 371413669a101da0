#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

std::string Prompts::countedClip(const exercise::Item& item) const {
    return item.skill.unit == exercise::Unit::sentence ? exercise::sentenceClip(item.subject)
                                                       : wordClip(item.subject);
}

Script Prompts::ask(const CountRound& round, Asking asking, const exercise::Item* example) const {
    const auto& item = round.question().item();
    Script script;
    const bool words = item.skill.unit == exercise::Unit::sentence;
    if (example != nullptr) {
        addPhrase(script, say::kCountShow, 0, at(Kind::example));
        add(script, countedClip(*example), kBeat, at(Kind::example));
        for (std::size_t i = 0; i < example->parts.size(); ++i)
            add(script, example->parts[i].clip, kApart, at(Kind::example, i + 1));
        addPhrase(script, say::kCountDone, kRest, at(Kind::example, example->parts.size() + 1));
        addPhrase(script, say::kNowYou, kRest);
    }
    if (asking == Asking::again)
        addPhrase(script, say::kNowYou, 0, at(Kind::nothing, 0, true));
    else
        addPhrase(script, words ? say::kCountAsk : say::kCountBeats, kBeat,
                  at(Kind::nothing, 0, asking == Asking::first_time));
    add(script, countedClip(round.question().item()), kApart, at(Kind::subject));
    if (asking == Asking::first_time && example == nullptr)
        addPhrase(script, say::kCountDone, kRest);
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
    add(script, countedClip(round.question().item()), 0, at(Kind::subject));
    return script;
}

}  // namespace wrenlet::game
