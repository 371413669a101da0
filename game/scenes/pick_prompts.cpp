#include "content/exercise/phrases.hpp"
#include "content/exercise/vocabulary.hpp"
#include "game/scenes/prompts.hpp"
#include "game/scenes/shows.hpp"

namespace wrenlet::game {

using exercise::Task;
using Kind = Show::Kind;
namespace say = exercise::phrase;

namespace {

std::string_view questionOf(const exercise::Item& item) {
    const bool sorts = exercise::mechanicOf(item) == exercise::Mechanic::sort;
    switch (item.skill.task) {
        case Task::rhyme_judge:
            return say::kJudgeAsk;
        case Task::odd_one_out:
            return say::kPickOdd;
        case Task::rhyme_pick:
            return say::kPickRhyme;
        case Task::first:
            return sorts ? say::kSortFirst : say::kPickFirst;
        case Task::last:
            return sorts ? say::kSortLast : say::kPickLast;
        case Task::middle:
            return sorts ? say::kSortMiddle : say::kPickMiddle;
        case Task::long_short:
            return say::kSortLength;
        case Task::tune:
            return say::kSortTune;
        case Task::name:
            return say::kLetterName;
        case Task::sound:
            return say::kLetterSound;
        case Task::for_sound:
            return say::kLetterFor;
        case Task::both_sounds:
            return say::kLetterBoth;
        case Task::digraph:
            return say::kLetterTwo;
        default:
            return say::kSortAsk;
    }
}

/// Steps of an example among others.
Show step(int which) {
    return at(Kind::example, static_cast<std::size_t>(which));
}

/// Letters are not named before the answer: a name says the sound, or is what is asked.
bool isNamed(const Piece& choice) {
    return choice.kind != Piece::Kind::letter;
}

}  // namespace

void Prompts::addQuestion(Script& script, const exercise::Item& item, const Show& lead,
                          const std::function<Show(std::size_t)>& heard) const {
    const auto pieces = Pieces(pack_, item).heard();
    const std::string_view question = questionOf(item);
    // A word is heard before what is asked of a sound in it.
    std::size_t first = 0;
    if (item.skill.task == Task::digraph) add(script, pieces[first++].clip, kRest, heard(0));
    addPhrase(script, question, kRest, lead);
    for (std::size_t i = first; i < pieces.size(); ++i)
        add(script, pieces[i].clip, i == first ? kBeat : kApart, heard(i));
}

void Prompts::addSolved(Script& script, const exercise::Item& item, bool names) const {
    const Pieces pieces(pack_, item);
    const auto heard = pieces.heard();
    const Piece right = pieces.answer();
    addPhrase(script, say::kWatch, 0, step(SolvedStep::intro));
    addQuestion(script, item, step(SolvedStep::intro),
                [](std::size_t i) { return step(SolvedStep::heard + static_cast<int>(i)); });
    for (std::size_t i = 0; names && i < item.choices.size(); ++i)
        if (const Piece choice = pieces.choice(i); isNamed(choice))
            add(script, choice.clip, kBeat, step(SolvedStep::named + static_cast<int>(i)));
    if (item.skill.task == Task::odd_one_out) {
        const auto mates = pieces.mates();
        for (std::size_t i = 0; i < mates.size(); ++i)
            add(script, mates[i].clip, i == 0 ? kRest : kBeat,
                step(i == 0 ? SolvedStep::found : SolvedStep::heard_part));
        add(script, right.clip, kRest, step(SolvedStep::found_part));
        return;
    }
    if (right.clip.empty())
        for (const Piece& piece : heard) add(script, piece.clip, kRest, step(SolvedStep::found));
    else
        add(script, right.clip, kRest, step(SolvedStep::found));
    if (heard.size() == 1 && !heard.front().part.empty() && !right.part.empty())
        add(script, heard.front().part, kApart, step(SolvedStep::heard_part));
    if (!right.part.empty() && !heard.empty())
        add(script, right.part, kApart, step(SolvedStep::found_part));
    if (item.skill.task == Task::rhyme_sort)
        addPhrase(script, say::kSortShow, kRest, step(SolvedStep::done));
}

Script Prompts::ask(const PickRound& round, Asking asking, const exercise::Item* example) const {
    const auto& question = round.question();
    const auto& item = question.item();
    const Pieces pieces(pack_, item);
    const bool unlike = pieces.heard().empty() || round.picksSounds();
    Script script;
    if (example != nullptr) addSolved(script, *example, unlike);
    if (example != nullptr || asking == Asking::again) addPhrase(script, say::kNowYou, kRest);
    addQuestion(script, item, at(Kind::subject), [](std::size_t i) { return at(Kind::tile, i); });
    if (round.picksSounds() && asking == Asking::first_time)
        addPhrase(script, say::kTouchTwice, kRest, at(Kind::nothing, 0, true));
    for (std::size_t place = 0; place < question.places(); ++place)
        if (const Piece choice = pieces.choice(question.choiceAt(place)); isNamed(choice))
            add(script, choice.clip, place == 0 ? kRest : kBeat + 50, at(Kind::place, place));
    return script;
}

Script Prompts::choice(const PickRound& round, std::size_t place) const {
    Script script;
    const auto& question = round.question();
    add(script, Pieces(pack_, question.item()).choice(question.choiceAt(place)).clip, 0,
        at(Kind::place, place));
    return script;
}

Script Prompts::together(const PickRound& round) const {
    const auto& question = round.question();
    Script script;
    addPhrase(script, say::kListenAgain, 0);
    addSolution(script, question);
    return script;
}

Script Prompts::right(const PickRound& round) const {
    Script script;
    addSolution(script, round.question());
    return script;
}

void Prompts::addSolution(Script& script, const Question& question) const {
    const Pieces pieces(pack_, question.item());
    const auto heard = pieces.heard();
    for (std::size_t i = 0; i < heard.size(); ++i)
        add(script, heard[i].clip, kBeat, at(Kind::tile, i));
    // Of an odd one, the others in the order in which they lie.
    for (std::size_t place = 0, mate = 0; place < question.places(); ++place) {
        if (question.item().skill.task != Task::odd_one_out || place == question.rightPlace())
            continue;
        add(script, pieces.choice(question.choiceAt(place)).clip, kBeat, at(Kind::tile, mate++));
    }
    const Piece right = pieces.answer();
    const bool is_said = !heard.empty() && heard.back().clip == right.clip;
    if (!is_said) add(script, right.clip, kBeat, at(Kind::place, question.rightPlace()));
}

Script Prompts::explain(const PickRound& round) const {
    const auto& question = round.question();
    return compared(Pieces(pack_, question.item())
                        .compared(question.wrongChoice().value_or(question.item().answer)));
}

Script Prompts::compared(const std::array<Compared, 2>& both) const {
    Script script;
    for (int pair = 0; pair < 2; ++pair) {
        const Compared& row = both[static_cast<std::size_t>(pair)];
        if (!row.lead.empty()) addPhrase(script, row.lead, kRest, paired(pair, -1, false));
        for (std::size_t i = 0; i < row.pieces.size(); ++i)
            add(script, row.pieces[i].clip, i == 0 && row.lead.empty() ? kRest : kBeat,
                paired(pair, static_cast<int>(i), false));
        bool first = true;
        for (std::size_t i = 0; i < row.pieces.size(); ++i) {
            if (row.pieces[i].part.empty()) continue;
            add(script, row.pieces[i].part, first ? kApart : kBeat,
                paired(pair, static_cast<int>(i), true));
            first = false;
        }
        if (!row.close.empty()) addPhrase(script, row.close, kBeat, paired(pair, -1, false));
    }
    return script;
}

}  // namespace wrenlet::game
