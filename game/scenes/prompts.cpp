#include "game/scenes/prompts.hpp"

#include <algorithm>

#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/rhyme.hpp"

namespace wrenlet::game {

using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

namespace {

constexpr Millis kBeat = 250, kRest = 600;

Show at(Kind kind, std::size_t index = 0, bool moves = false) {
    Show show;
    show.kind = kind;
    show.index = static_cast<int>(index);
    show.moves = moves;
    return show;
}

Show paired(int pair, int side, bool part, std::size_t index = 0) {
    Show show = at(Kind::pair, index);
    show.pair = pair;
    show.side = side;
    show.part = part;
    return show;
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

Script Prompts::tiles(const JoinRound& round, std::size_t first, std::size_t last,
                      Millis gap) const {
    Script script;
    const auto& parts = round.question().item().parts;
    for (std::size_t i = first; i <= last && i < parts.size(); ++i)
        add(script, parts[i].clip, gap, at(Kind::tile, i));
    return script;
}

Script Prompts::ask(const JoinRound& round, Asking asking) const {
    Script script;
    addPhrase(script, say::kJoinAsk, 0, at(Kind::tile, 0, asking == Asking::first_time));
    const auto& parts = round.question().item().parts;
    for (std::size_t i = 0; i < parts.size(); ++i)
        add(script, parts[i].clip, i == 0 ? kBeat : kApart, at(Kind::tile, i));
    return script;
}

Script Prompts::pick(const JoinRound& round, bool again) const {
    const auto& question = round.question();
    Script script;
    if (again) addPhrase(script, say::kNowYou, 0);
    const auto joined = tiles(round, 0, round.tiles() - 1, kTogether);
    script.insert(script.end(), joined.begin(), joined.end());
    addPhrase(script, say::kJoinPick, kBeat);
    for (std::size_t place = 0; place < question.places(); ++place)
        add(script, wordClip(question.item().choices[question.choiceAt(place)].id), kBeat + 50,
            at(Kind::place, place));
    for (std::size_t i = 0; i < joined.size(); ++i)
        script.push_back({joined[i].clip, i == 0 ? kRest : kTogether, joined[i].show});
    return script;
}

Script Prompts::together(const JoinRound& round) const {
    const auto& question = round.question();
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    for (const auto& line : tiles(round, 0, round.tiles() - 1, kTogether))
        script.push_back({line.clip, line.show.index == 0 ? kBeat : kTogether, line.show});
    add(script, wordClip(question.item().subject), kBeat, at(Kind::place, question.rightPlace()));
    return script;
}

std::vector<exercise::Part> Prompts::partsOf(exercise::Skill skill, std::string_view word) const {
    for (const auto& item : pack_.items)
        if (item.skill == skill && item.subject == word) return item.parts;
    return {};
}

Script Prompts::explain(const JoinRound& round) const {
    const auto& question = round.question();
    const auto& item = question.item();
    const std::uint8_t both[] = {question.wrongChoice().value_or(item.answer), item.answer};
    Script script;
    for (int pair = 0; pair < 2; ++pair) {
        const auto& word = item.choices[both[pair]].id;
        addPhrase(script, pair == 0 ? say::kYouChose : say::kWeAsked, kRest,
                  paired(pair, 1, false));
        add(script, wordClip(word), kBeat, paired(pair, 1, false));
        const auto parts = pair == 1 ? item.parts : partsOf(item.skill, word);
        for (std::size_t i = 0; i < parts.size(); ++i)
            add(script, parts[i].clip, i == 0 ? kApart : kTogether * 2, paired(pair, 0, true, i));
    }
    return script;
}

Script Prompts::right(const JoinRound& round) const {
    Script script;
    add(script, wordClip(round.question().item().subject), 0,
        at(Kind::place, round.question().rightPlace()));
    return script;
}

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
