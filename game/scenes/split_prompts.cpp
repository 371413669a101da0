#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

namespace {

std::string_view intoWhat(exercise::Unit unit) {
    return unit == exercise::Unit::compound     ? say::kSplitWords
           : unit == exercise::Unit::syllable   ? say::kSplitBeats
           : unit == exercise::Unit::onset_rime ? say::kSplitRime
                                                : say::kSplitSounds;
}

}  // namespace

Script Prompts::ask(const SplitRound& round, Asking asking, const exercise::Item* example) const {
    const auto& item = round.question().item();
    Script script;
    if (example != nullptr) {
        addPhrase(script, say::kSplitShow, 0, at(Kind::example));
        add(script, wordClip(example->subject), kBeat, at(Kind::example));
        for (std::size_t i = 0; i < example->parts.size(); ++i)
            add(script, example->parts[i].clip, kApart, at(Kind::example, i + 1));
        addPhrase(script, say::kSplitDone, kRest, at(Kind::example, example->parts.size() + 1));
    }
    if (example != nullptr || asking == Asking::again)
        addPhrase(script, say::kNowYou, kRest, at(Kind::nothing, 0, true));
    addPhrase(script, intoWhat(item.skill.unit), kBeat,
              at(Kind::nothing, 0, asking == Asking::first_time));
    add(script, wordClip(item.subject), kBeat, at(Kind::subject));
    return script;
}

Script Prompts::part(const SplitRound& round, std::size_t box) const {
    const auto& parts = round.question().item().parts;
    Script script;
    if (box < parts.size()) add(script, parts[box].clip, 0, at(Kind::tile, box));
    return script;
}

Script Prompts::together(const SplitRound& round) const {
    const auto& item = round.question().item();
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    add(script, wordClip(item.subject), kBeat, at(Kind::subject));
    for (const auto& part : item.parts) add(script, part.clip, kApart);
    addPhrase(script, say::kNowYou, kRest, at(Kind::nothing, 0, true));
    return script;
}

Script Prompts::explain(const SplitRound& round) const {
    const auto& item = round.question().item();
    Script script;
    addPhrase(script, say::kListenBoth, 0);
    add(script, wordClip(item.subject), kBeat, at(Kind::subject));
    for (std::size_t i = 0; i < item.parts.size(); ++i)
        add(script, item.parts[i].clip, i == 0 ? kRest : kApart, paired(0, 0, true, i));
    return script;
}

Script Prompts::right(const SplitRound& round) const {
    const auto& item = round.question().item();
    Script script;
    for (std::size_t i = 0; i < item.parts.size(); ++i)
        add(script, item.parts[i].clip, kBeat, at(Kind::tile, i));
    add(script, wordClip(item.subject), kApart, at(Kind::subject));
    return script;
}

}  // namespace wrenlet::game
