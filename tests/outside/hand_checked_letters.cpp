// Lines about letters: their names, their sounds, and words made of them.
#include <algorithm>

#include "content/exercise/foils.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/speech/letter.hpp"
#include "content/speech/spelling.hpp"
#include "tests/outside/hand_checked_asked.hpp"

namespace wrenlet::handchecked {

using namespace exercise;
using speech::Pronunciation;

namespace {

std::vector<std::string> letterIds(const std::vector<std::string>& letters) {
    std::vector<std::string> ids;
    for (const std::string& letter : letters) ids.push_back("letter:" + letter);
    return ids;
}

std::string clipOf(const std::string& written) {
    const auto sounds = soundsOf(written);
    return sounds ? partOf(*sounds).clip : "?";
}

Part soundPart(const std::string& written) {
    return partOf(soundsOf(written).value_or(Pronunciation{}));
}

void askName(const Line& line, Asked& out) {
    const std::string id = "letter:" + line.asked;
    const Letter* letter = letterById(id);
    const speech::TaughtLetter* taught = speech::taughtLetter(line.asked);
    expect(out, letter && speech::ipa(letter->name) == line.decides, "it is named otherwise");
    expect(out, taught && speech::ipa(taught->name) == line.decides, "speech names it otherwise");
    out.items = {itemOf(line, id, {{letterNameClip(line.asked), line.asked}},
                        letterIds(line.choices), "letter:" + line.right, {id, Position::letter})};
}

void askSound(const Line& line, Asked& out) {
    const std::string id = "letter:" + line.asked;
    const speech::TaughtLetter* taught = speech::taughtLetter(line.asked);
    expect(out, taught && speech::ipa(taught->sounds.front()) == line.decides,
           "speech has it say another sound first");
    std::vector<std::string> clips;
    for (const std::string& choice : line.choices) clips.push_back(clipOf(choice));
    out.items = {itemOf(line, id, {}, clips, clipOf(line.right), {id, Position::letter})};
}

void askForSound(const Line& line, Asked& out) {
    const std::string right = "letter:" + line.right;
    out.items = {itemOf(line, clipOf(line.asked), {soundPart(line.asked)}, letterIds(line.choices),
                        right, {right, Position::letter})};
}

/// The sounds that the letters of a word say which have `letter` among them.
bool isSaidBy(const Word& word, char letter, const std::string& sounds) {
    const auto spelled = speech::alignSpelling(word.text, word.sounds);
    if (!spelled) return false;
    return std::any_of(spelled->begin(), spelled->end(), [&](const speech::Spelled& one) {
        return one.letters.find(letter) != std::string::npos && speech::ipa(one.sounds) == sounds;
    });
}

void askBothSounds(const Line& line, const Words& words, Asked& out) {
    const auto sides = split(line.asked, ": ");
    const auto sounds = split(line.right, ", ");
    const auto in_words = split(sides.at(1), ", ");
    if (sounds.size() != 2 || in_words.size() != 2) return;
    const std::string id = "letter:" + sides[0];
    for (std::size_t i = 0; i < 2; ++i)
        expect(out, isSaidBy(words.vocabulary({in_words[i]}).words.front(), sides[0][0], sounds[i]),
               "it does not say /" + sounds[i] + "/ in " + in_words[i]);
    // Which other letters stand beside it is left to the makers.
    const auto made = makeItems(out.for_making, *skillFromId(line.skill));
    const Item* item = madeOn(made, id);
    if (item == nullptr) return;
    std::vector<std::string> choices;
    for (const Choice& choice : item->choices) choices.push_back(choice.id);
    out.items = {itemOf(line, id, {soundPart(sounds[0]), soundPart(sounds[1])}, choices, id,
                        {id, Position::letter})};
}

void askDigraph(const Line& line, const Words& words, Asked& out) {
    out.vocabulary = words.vocabulary({line.asked});
    out.for_making = out.vocabulary;
    const Word& word = out.vocabulary.words.front();
    out.items = {itemOf(line, word.id, {partOf(word), soundPart(line.decides)},
                        letterIds(line.choices), "letter:" + line.right,
                        {line.decides, line.place == "first" ? Position::first : Position::last})};
}

/// The table lays tiles out, the program words to choose from: the tiles of the word are the same,
/// and no other tile on the table may say a sound that one of them says.
void askBuild(const Line& line, const Words& words, Asked& out) {
    out.for_making = words.amongOthers({line.asked});
    const Word& word = out.for_making.words.front();
    const auto tiles = split(line.right, " + "), sounds = split(line.decides, " + ");
    expect(out, tiles.size() == sounds.size(), "not every tile has its sound");
    std::vector<Part> parts;
    for (std::size_t i = 0; i < std::min(tiles.size(), sounds.size()); ++i) {
        parts.push_back({clipOf(sounds[i]), tiles[i]});
        expect(out, std::count(line.choices.begin(), line.choices.end(), tiles[i]) == 1,
               tiles[i] + " does not lie on the table once");
        for (const std::string& choice : line.choices) {
            const Letter* other = letterById("letter:" + choice);
            expect(out, other != nullptr, choice + " is no letter");
            if (other != nullptr && choice != tiles[i])
                expect(out, !standsFor(*other, *soundsOf(sounds[i]), false),
                       choice + " says " + sounds[i] + " too");
        }
    }
    const auto made = makeItems(out.for_making, *skillFromId(line.skill));
    const Item* item = madeOn(made, word.id);
    out.vocabulary = out.for_making;
    if (item == nullptr) return;
    std::vector<std::string> choices;
    for (const Choice& choice : item->choices) choices.push_back(choice.id);
    out.items = {itemOf(line, word.id, parts, choices, word.id, item->turns_on)};
}

}  // namespace

void askLetter(const Line& line, const Words& words, Asked& out) {
    out.for_making = words.amongOthers({"fox"});
    const Task task = skillFromId(line.skill)->task;
    if (task == Task::name) askName(line, out);
    if (task == Task::sound) askSound(line, out);
    if (task == Task::for_sound) askForSound(line, out);
    if (task == Task::both_sounds) askBothSounds(line, words, out);
    if (task == Task::digraph) askDigraph(line, words, out);
    if (task == Task::build) askBuild(line, words, out);
}

}  // namespace wrenlet::handchecked
