#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::Position;
using exercise::Task;
using exercise::wordClip;
using Kind = Show::Kind;
namespace say = exercise::phrase;

namespace {

std::string_view addWhere(Position position) {
    const bool first = position == Position::first || position == Position::first_part;
    const bool last = position == Position::last || position == Position::last_part;
    return first ? say::kChangeFirst : last ? say::kChangeLast : say::kChangeInside;
}

}  // namespace

void Prompts::addChange(Script& script, const exercise::Item& item, const Show& take,
                        const Show& put) const {
    const bool takes = item.skill.task != Task::add, puts = item.skill.task != Task::remove;
    if (takes) {
        addPhrase(script, say::kChangeTake, kApart, take);
        add(script, item.parts[1].clip, kBeat, take);
    }
    if (puts) {
        addPhrase(script, takes ? say::kChangePut : addWhere(item.turns_on.position), kBeat, put);
        add(script, item.parts.back().clip, kBeat, put);
    }
}

void Prompts::addExample(Script& script, const exercise::Item& item) const {
    const auto step = [](ChangeStep which) {
        return at(Kind::example, static_cast<std::size_t>(which));
    };
    addPhrase(script, say::kChangeShow, 0, step(ChangeStep::begin));
    add(script, wordClip(item.subject), kBeat, step(ChangeStep::begin));
    addChange(script, item, step(ChangeStep::take), step(ChangeStep::put));
    addPhrase(script, say::kChangePick, kRest, step(ChangeStep::changed));
    add(script, wordClip(item.choices[item.answer].id), kRest, step(ChangeStep::come_out));
}

Script Prompts::ask(const ChangeRound& round, Asking asking, const exercise::Item* example) const {
    const auto& item = round.question().item();
    Script script;
    if (example != nullptr) {
        addExample(script, *example);
        addPhrase(script, say::kNowYou, kRest);
    }
    add(script, wordClip(item.subject), kRest, at(Kind::subject));
    const bool moves = asking == Asking::first_time;
    addChange(script, item, at(Kind::loose, 0, moves && !round.tiles().puts),
              at(Kind::fresh, 0, moves));
    return script;
}

Script Prompts::pick(const ChangeRound& round, bool again) const {
    const auto& question = round.question();
    const auto& item = question.item();
    Script script;
    if (again) addPhrase(script, say::kNowYou, 0);
    if (question.tryNumber() > 1)
        for (const Line& line : tiles(round, kApart)) script.push_back(line);
    addPhrase(script, say::kChangePick, kBeat);
    for (std::size_t place = 0; place < question.places(); ++place)
        add(script, wordClip(item.choices[question.choiceAt(place)].id), kBeat + 50,
            at(Kind::place, place));
    add(script, wordClip(item.subject), kRest, at(Kind::subject));
    addChange(script, item, {}, {});
    return script;
}

Script Prompts::tiles(const ChangeRound& round, Millis gap) const {
    Script script;
    const auto& parts = round.tiles().after;
    for (std::size_t i = 0; i < parts.size(); ++i)
        add(script, parts[i].clip, gap, at(Kind::tile, i));
    return script;
}

Script Prompts::tile(const ChangeRound& round, std::size_t index) const {
    Script script;
    const auto& parts = round.tiles().after;
    if (index < parts.size()) add(script, parts[index].clip, 0, at(Kind::tile, index));
    return script;
}

Script Prompts::together(const ChangeRound& round) const {
    const auto& question = round.question();
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    add(script, wordClip(question.item().subject), kBeat, at(Kind::subject));
    addChange(script, question.item(), {}, {});
    for (Line& line : tiles(round, kTogether)) {
        if (line.gap_before == 0) line.gap_before = kRest;
        script.push_back(line);
    }
    add(script, wordClip(question.item().choices[question.item().answer].id), kBeat,
        at(Kind::place, question.rightPlace()));
    return script;
}

Script Prompts::explain(const ChangeRound& round) const {
    const auto& question = round.question();
    const auto& item = question.item();
    const std::uint8_t both[] = {question.wrongChoice().value_or(item.answer), item.answer};
    Script script;
    for (int pair = 0; pair < 2; ++pair) {
        const auto& word = item.choices[both[pair]].id;
        addPhrase(script, pair == 0 ? say::kYouChose : say::kWeAsked, kRest,
                  paired(pair, 1, false));
        add(script, wordClip(word), kBeat, paired(pair, 1, false));
        const auto parts = pair == 1 ? round.tiles().after : changeParts(item, word);
        for (std::size_t i = 0; i < parts.size() && parts.size() > 1; ++i)
            add(script, parts[i].clip, i == 0 ? kApart : kTogether * 2, paired(pair, 0, true, i));
    }
    return script;
}

std::vector<exercise::Part> Prompts::changeParts(const exercise::Item& item,
                                                 std::string_view word) const {
    const auto* entry = pack_.vocabulary.word(word);
    if (entry == nullptr) return {};
    return exercise::changeParts(*entry, pack_.vocabulary, item.skill.unit);
}

Script Prompts::right(const ChangeRound& round) const {
    const auto& item = round.question().item();
    Script script;
    add(script, wordClip(item.choices[item.answer].id), 0,
        at(Kind::place, round.question().rightPlace()));
    return script;
}

}  // namespace wrenlet::game
