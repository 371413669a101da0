#include <algorithm>
#include <map>

#include "content/exercise/family_sorts.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/together.hpp"

// First, last and middle sounds: the sound is heard and the card that has it there is picked, or a
// card is sorted to the word that is like it there. Every word in such an item is a plain CVC word,
// so that clusters are never mixed among single consonants.

namespace wrenlet::exercise {

namespace {

using speech::Phoneme;

std::size_t placeOf(Task task) {
    return task == Task::first ? 0 : task == Task::middle ? 1 : 2;
}

Position positionOf(Task task) {
    return task == Task::first    ? Position::first
           : task == Task::middle ? Position::middle
                                  : Position::last;
}

struct Candidate {
    const Word* word;
    Phoneme sound;  // where it is asked about
    Phoneme other;  // at the other end
};

std::vector<Candidate> candidates(const Vocabulary& vocabulary, Task task) {
    std::vector<Candidate> found;
    const std::size_t place = placeOf(task);
    for (const Word* word : picturedWords(vocabulary))
        if (isPlainCvc(word->sounds) && isSure(word->sounds, place))
            found.push_back({word, word->sounds[place].phoneme, word->sounds[2 - place].phoneme});
    return found;
}

constexpr int kOtherEnd = 1;    // it has the sound, but at its other end
constexpr int kOtherEndIs = 2;  // how near such a foil counts

void addPicks(ItemList& list, const std::vector<Candidate>& words, Task task) {
    const Position position = positionOf(task);
    for (const Candidate& right : words) {
        Question question{{Unit::phoneme, task},
                          soundClip(right.sound),
                          {partOf({{right.sound}})},
                          {std::string(speech::ipa(right.sound)), position},
                          {right.word->id, right.word},
                          {},
                          {}};
        std::vector<Foil> foils;
        for (const Candidate& word : words) {
            if (word.sound == right.sound) continue;
            const bool other_end = task != Task::middle && word.other == right.sound;
            foils.push_back({word.word->id, word.word,
                             other_end ? kOtherEndIs : speech::distance(word.sound, right.sound),
                             other_end ? kOtherEnd : 0, 1 + static_cast<int>(word.sound)});
        }
        question.means = [&](const Foil& foil) -> std::string {
            if (foil.kind == kOtherEnd)
                return task == Task::first ? "took the last sound, not the first"
                                           : "took the first sound, not the last";
            return "took " + inSlashes(foil.word->sounds[placeOf(task)].phoneme) + " for " +
                   inSlashes(right.sound) + " " + std::string(placeName(position));
        };
        list.add(question, foils);
    }
}

void addSorts(ItemList& list, const std::vector<Candidate>& words, Task task) {
    std::vector<Family> families;
    std::map<Phoneme, std::size_t> places;
    for (const Candidate& word : words) {
        const auto [place, is_new] = places.emplace(word.sound, families.size());
        if (is_new) families.push_back({{{word.sound}}, std::string(speech::ipa(word.sound)), {}});
        families[place->second].members.push_back(word.word);
    }
    const Position position = positionOf(task);
    const auto item = [&](const Word& card, const Word& home, const Word& other,
                          const Family& family) {
        Item sort;
        sort.skill = {Unit::phoneme, task};
        sort.subject = card.id;
        sort.turns_on = {family.name, position};
        const std::string means = "took " + inSlashes(other.sounds[placeOf(task)].phoneme) +
                                  " for /" + family.name + "/ " + std::string(placeName(position));
        setChoices(sort, {{home.id, ""}, {other.id, means}}, home.id);
        return sort;
    };
    const auto tell_apart = [](const Family&, const Family&) { return true; };
    for (Item& sort : sortFamilies(families, tell_apart, item, kEnoughItems))
        list.add(1, std::move(sort));
}

}  // namespace

std::vector<Item> makeIsolations(const Vocabulary& vocabulary, Task task) {
    const std::vector<Candidate> words = candidates(vocabulary, task);
    ItemList list;
    addPicks(list, words, task);
    addSorts(list, words, task);
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
