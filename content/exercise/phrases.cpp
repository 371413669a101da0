#include "content/exercise/phrases.hpp"

#include <algorithm>
#include <array>

namespace wrenlet::exercise {

namespace {

bool always(const Item&) {
    return true;
}

template <Mechanic kMechanic>
bool by(const Item& item) {
    return mechanicOf(item) == kMechanic;
}

template <Mechanic kMechanic, Unit kUnit>
bool by(const Item& item) {
    return mechanicOf(item) == kMechanic && item.skill.unit == kUnit;
}

template <Mechanic kMechanic, Task kTask>
bool by(const Item& item) {
    return mechanicOf(item) == kMechanic && item.skill.task == kTask;
}

template <Task... kTasks>
bool asks(const Item& item) {
    return ((item.skill.task == kTasks) || ...);
}

bool picksOrSorts(const Item& item) {
    return by<Mechanic::pick>(item) || by<Mechanic::sort>(item);
}

enum class Where { first, inside, last };

template <Where kWhere>
bool adds(const Item& item) {
    const Position position = item.turns_on.position;
    const bool first = position == Position::first || position == Position::first_part;
    const bool last = position == Position::last || position == Position::last_part;
    const Where where = first ? Where::first : last ? Where::last : Where::inside;
    return asks<Task::add>(item) && where == kWhere;
}

/// After a miss: "you chose ..., we are looking for ...".
bool namesTheChoice(const Item& item) {
    return by<Mechanic::join>(item) || by<Mechanic::change>(item) ||
           (by<Mechanic::pick>(item) &&
            (item.skill.unit == Unit::letter || isSoundClip(item.subject)));
}

/// After a miss: "let's listen to both".
bool comparesPlainly(const Item& item) {
    return !namesTheChoice(item);
}

// Short, warm, and whole on either side of a cut: some are followed by a word of the item. None
// says "wrong"; after a slip the child hears both words and why.
constexpr std::array<Phrase, 57> kPhrases = {{
    {phrase::kWho, "Who is playing? Touch your badge.", always},
    {phrase::kKeyAsk, "Now touch your two pictures.", always},
    {phrase::kKeyAgain, "Try again. Touch your first picture, then the other one.", always},
    {phrase::kHello, "Hello! Let's listen together.", always},
    {phrase::kSortAsk, "Where does this one rhyme?", asks<Task::rhyme_sort>},
    {phrase::kSortShow, "Words that rhyme live together.", asks<Task::rhyme_sort>},
    {phrase::kJoinAsk, "Listen, and bring them together.", by<Mechanic::join>},
    {phrase::kJoinPick, "Which picture is it?", by<Mechanic::join>},
    {phrase::kCountAsk, "One acorn for each word.", by<Mechanic::count, Unit::sentence>},
    {phrase::kCountDone, "Touch the leaf when you are done.", by<Mechanic::count>},
    {phrase::kCountShow, "Watch me count.", by<Mechanic::count>},
    {phrase::kJoinShow, "Watch me bring them together.", by<Mechanic::join>},
    {phrase::kCountBeats, "One acorn for each beat.", by<Mechanic::count, Unit::syllable>},
    {phrase::kSplitShow, "Watch me part a word.", by<Mechanic::split>},
    {phrase::kSplitWords, "Make a box for each word in it.", by<Mechanic::split, Unit::compound>},
    {phrase::kSplitBeats, "Make a box for each beat.", by<Mechanic::split, Unit::syllable>},
    {phrase::kSplitRime, "Part the beginning from the rest.",
     by<Mechanic::split, Unit::onset_rime>},
    {phrase::kSplitSounds, "Make a box for each sound.", by<Mechanic::split, Unit::phoneme>},
    {phrase::kSplitDone, "One box for each. Then touch the leaf in the sun.", by<Mechanic::split>},
    {phrase::kChangeShow, "Watch me change a word.", by<Mechanic::change>},
    {phrase::kChangeTake, "Take away", asks<Task::remove, Task::substitute>},
    {phrase::kChangePut, "and put in", asks<Task::substitute>},
    {phrase::kChangeFirst, "At the beginning, add", adds<Where::first>},
    {phrase::kChangeLast, "At the end, add", adds<Where::last>},
    {phrase::kChangeInside, "In the middle, add", adds<Where::inside>},
    {phrase::kChangePick, "What does it say now?", by<Mechanic::change>},
    {phrase::kWatch, "Watch. I do one first.", picksOrSorts},
    {phrase::kPickRhyme, "Which one rhymes with", asks<Task::rhyme_pick>},
    {phrase::kPickOdd, "Which one does not rhyme?", asks<Task::odd_one_out>},
    {phrase::kPickFirst, "Which one begins with", by<Mechanic::pick, Task::first>},
    {phrase::kPickLast, "Which one ends with", by<Mechanic::pick, Task::last>},
    {phrase::kPickMiddle, "In the middle, which one has", by<Mechanic::pick, Task::middle>},
    {phrase::kJudgeAsk, "Do these two rhyme?", asks<Task::rhyme_judge>},
    {phrase::kJudgeYes, "They rhyme.", asks<Task::rhyme_judge, Task::odd_one_out>},
    {phrase::kJudgeNo, "They do not rhyme.", asks<Task::rhyme_judge, Task::odd_one_out>},
    {phrase::kLetterName, "Find the letter", asks<Task::name>},
    {phrase::kLetterSound, "What does this letter say?", asks<Task::sound>},
    {phrase::kLetterFor, "Which letter says", asks<Task::for_sound>},
    {phrase::kLetterBoth, "Which letter says both", asks<Task::both_sounds>},
    {phrase::kLetterTwo, "Which two letters say", asks<Task::digraph>},
    {phrase::kTouchTwice, "Touch one to hear it. Touch it again to choose it.", asks<Task::sound>},
    {phrase::kSortFirst, "Where does it begin the same?", by<Mechanic::sort, Task::first>},
    {phrase::kSortLast, "Where does it end the same?", by<Mechanic::sort, Task::last>},
    {phrase::kSortMiddle, "Where does it sound the same in the middle?",
     by<Mechanic::sort, Task::middle>},
    {phrase::kSortLength, "Is the sound inside it long or short?", asks<Task::long_short>},
    {phrase::kSortLong, "Long.", asks<Task::long_short>},
    {phrase::kSortShort, "Short.", asks<Task::long_short>},
    {phrase::kSortTune, "Is the bird asking or telling?", asks<Task::tune>},
    {phrase::kSortAsking, "Asking?", asks<Task::tune>},
    {phrase::kSortTelling, "Telling.", asks<Task::tune>},
    {phrase::kListenBoth, "Let's listen to both.", comparesPlainly},
    {phrase::kYouChose, "You chose", namesTheChoice},
    {phrase::kWeAsked, "We are looking for", namesTheChoice},
    {phrase::kNowYou, "Now you.", always},
    {phrase::kListenAgain, "Listen again.", always},
    {phrase::kGoodbye, "That was good listening. All done for today!", always},
    {phrase::kNextChild, "Now it is the next one's turn.", always},
}};

}  // namespace

std::span<const Phrase> phraseTable() {
    return kPhrases;
}

std::vector<Phrase> phrasesFor(std::span<const Item> items) {
    std::vector<Phrase> said;
    for (const Phrase& phrase : kPhrases)
        if (phrase.is_said_for == always ||
            std::any_of(items.begin(), items.end(), phrase.is_said_for))
            said.push_back(phrase);
    return said;
}

}  // namespace wrenlet::exercise
