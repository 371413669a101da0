#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/rhyme.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

std::string Prompts::rimeClip(const SortRound& round, std::string_view word) const {
    const auto& item = round.question().item();
    const auto* entry = pack_.vocabulary.word(word);
    const auto sounds = entry != nullptr ? entry->sounds : speech::Pronunciation{};
    const auto own = exercise::partClip(speech::rhymingPart(sounds));
    if (pack_.clip(own) != nullptr) return own;
    const auto asked = "part:" + item.turns_on.sound;
    const bool is_asked = word == item.subject || word == item.choices[item.answer].id;
    return is_asked && pack_.clip(asked) != nullptr ? asked : std::string();
}

Script Prompts::ask(const SortRound& round, Asking asking) const {
    Script script;
    if (asking == Asking::first_time) addPhrase(script, say::kSortShow, 0);
    if (asking == Asking::again)
        addPhrase(script, say::kNowYou, 0, at(Kind::subject, 0, true));
    else
        addPhrase(script, say::kSortAsk, kBeat, at(Kind::subject, 0, asking == Asking::first_time));
    add(script, wordClip(round.question().item().subject), kBeat, at(Kind::subject));
    for (std::size_t home = 0; home < round.homes(); ++home)
        add(script, wordClip(round.head(home)), kBeat + 100, at(Kind::place, home));
    return script;
}

Script Prompts::together(const SortRound& round) const {
    const auto home = round.question().rightPlace();
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    add(script, wordClip(round.question().item().subject), kBeat, at(Kind::subject));
    add(script, wordClip(round.head(home)), kBeat, at(Kind::place, home));
    return script;
}

Script Prompts::explain(const SortRound& round) const {
    const auto& question = round.question();
    const auto& item = question.item();
    Script script;
    addPhrase(script, say::kListenBoth, 0);
    const std::uint8_t both[] = {question.wrongChoice().value_or(item.answer), item.answer};
    for (int pair = 0; pair < 2; ++pair) {
        const auto& head = item.choices[both[pair]].id;
        add(script, wordClip(item.subject), pair == 0 ? kBeat : kRest, paired(pair, 0, false));
        add(script, wordClip(head), kBeat, paired(pair, 1, false));
        const auto mine = rimeClip(round, item.subject), theirs = rimeClip(round, head);
        if (mine.empty() || theirs.empty()) continue;
        add(script, mine, kApart, paired(pair, 0, true));
        add(script, theirs, kBeat, paired(pair, 1, true));
    }
    return script;
}

Script Prompts::right(const SortRound& round) const {
    const auto& item = round.question().item();
    Script script;
    add(script, wordClip(item.subject), 0, at(Kind::subject));
    add(script, wordClip(item.choices[item.answer].id), kBeat,
        at(Kind::place, round.question().rightPlace()));
    return script;
}

}  // namespace wrenlet::game
