#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

Script Prompts::tiles(const JoinRound& round, std::size_t first, std::size_t last,
                      Millis gap) const {
    Script script;
    const auto& parts = round.question().item().parts;
    for (std::size_t i = first; i <= last && i < parts.size(); ++i)
        add(script, parts[i].clip, gap, at(Kind::tile, i));
    return script;
}

Script Prompts::ask(const JoinRound& round, Asking asking, const exercise::Item* example) const {
    Script script;
    if (example != nullptr) {
        const auto& tiles = example->parts;
        addPhrase(script, say::kJoinShow, 0, at(Kind::example));
        for (std::size_t i = 0; i < tiles.size(); ++i)
            add(script, tiles[i].clip, kApart, at(Kind::example, i + 1));
        for (std::size_t i = 0; i < tiles.size(); ++i)
            add(script, tiles[i].clip, i == 0 ? kRest : kTogether,
                at(Kind::example, tiles.size() + i + 1));
        add(script, wordClip(example->subject), kRest, at(Kind::example, 2 * tiles.size() + 1));
        addPhrase(script, say::kNowYou, kRest);
    }
    addPhrase(script, say::kJoinAsk, kBeat, at(Kind::tile, 0, asking == Asking::first_time));
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

}  // namespace wrenlet::game
