#include <algorithm>
#include <set>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/word_parts.hpp"

// Letters: their names, their sounds, the letter for a sound. Asked are the letters of the unit's
// words; foils come from the whole alphabet, graded by how their names or sounds are apart. A foil
// that has the asked sound in any common word is left out, and so is q, which comes with u alone,
// and as a foil the two sounds of x.

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;

std::vector<const Letter*> lettersIn(const Vocabulary& vocabulary) {
    std::set<char> met;
    for (const Word& word : vocabulary.words)
        for (const char letter : word.text) met.insert(letter);
    std::vector<const Letter*> asked;
    for (const Letter& letter : letters())
        if (met.count(letter.text[0]) > 0) asked.push_back(&letter);
    return asked;
}

Part namePart(const Letter& letter) {
    return {letterNameClip(letter.text), std::string(letter.text)};
}

/// The sounds that choices are named by: "sound:b", and "part:ks" for the letter x.
std::string clipOf(const Pronunciation& sounds) {
    return partOf(sounds).clip;
}

std::string tookLetter(const Letter& foil, const Letter& right) {
    return "took " + std::string(foil.text) + " for " + std::string(right.text);
}

TurnsOn onLetter(const Letter& letter) {
    return {letter.id, Position::letter};
}

void addNames(ItemList& list, const Letter& right) {
    std::vector<Foil> foils;
    for (const Letter& letter : letters())
        if (&letter != &right)
            foils.push_back(
                {letter.id, nullptr, speech::wordDistance(letter.name, right.name), 0, 0});
    list.add({{Unit::letter, Task::name},
              right.id,
              {namePart(right)},
              onLetter(right),
              {right.id},
              {},
              [&right](const Foil& foil) { return tookLetter(*letterById(foil.id), right); }},
             foils);
}

/// RF.K.3.a: the sound of each consonant.
void addSounds(ItemList& list, const Letter& right) {
    if (isVowelLetter(right) || right.text == "q") return;
    std::set<std::string> clips;  // foils point into it
    std::vector<Foil> foils;
    const std::string answer = clipOf(right.taught.front());
    for (const Letter& letter : letters()) {
        const Pronunciation& sound = letter.taught.front();
        if (isVowelLetter(letter) || sound.size() > 1 || standsFor(right, sound, true)) continue;
        const auto [clip, is_new] = clips.insert(clipOf(sound));
        if (is_new)
            foils.push_back(
                {*clip, nullptr, speech::wordDistance(sound, right.taught.front()), 0, 0});
    }
    list.add({{Unit::letter, Task::sound},
              right.id,
              {},
              onLetter(right),
              {answer},
              {},
              [&](const Foil& foil) {
                  return "took /" + std::string(foil.id.substr(foil.id.find(':') + 1)) + "/ for " +
                         inSlashes(right.taught.front()) + ", the sound of " +
                         std::string(right.text);
              }},
             foils);
}

void addForSounds(ItemList& list, const Letter& right) {
    if (right.text == "q") return;
    const Pronunciation& sound = right.taught.front();
    std::vector<Foil> foils;
    for (const Letter& letter : letters())
        if (isVowelLetter(letter) == isVowelLetter(right) && letter.taught.front().size() == 1 &&
            !standsFor(letter, sound, true))
            foils.push_back(
                {letter.id, nullptr, speech::wordDistance(letter.taught.front(), sound), 0, 0});
    list.add({{Unit::letter, Task::for_sound},
              clipOf(sound),
              {partOf(sound)},
              onLetter(right),
              {right.id},
              {},
              [&](const Foil& foil) {
                  const Letter& letter = *letterById(foil.id);
                  return tookLetter(letter, right) + ": " + inSlashes(letter.taught.front()) +
                         " for " + inSlashes(sound);
              }},
             foils);
}

/// The vowels, short then long, and c and g, hard then soft.
void addBothSounds(ItemList& list, const Letter& right) {
    if (right.taught.size() != 2) return;
    std::vector<Foil> foils;
    for (const Letter& letter : letters()) {
        if (&letter == &right || isVowelLetter(letter) != isVowelLetter(right)) continue;
        if (letter.taught.front().size() > 1) continue;
        if (standsFor(letter, right.taught[0], true) && standsFor(letter, right.taught[1], true))
            continue;
        const bool has_one =
            standsFor(letter, right.taught[0], false) || standsFor(letter, right.taught[1], false);
        const int apart = speech::wordDistance(letter.taught.front(), right.taught.front());
        foils.push_back({letter.id, nullptr, has_one ? 1 : apart, has_one ? 1 : 0, 0});
    }
    list.add({{Unit::letter, Task::both_sounds},
              right.id,
              {partOf(right.taught[0]), partOf(right.taught[1])},
              onLetter(right),
              {right.id},
              {},
              [&right](const Foil& foil) {
                  std::string means = tookLetter(*letterById(foil.id), right);
                  if (foil.kind != 0) means += ": heard one of the two sounds";
                  return means;
              }},
             foils);
}

/// RF.1.3.a: the two letters of a word that say one sound, at its beginning or its end. The word
/// decides, so letters that say the sound in other words alone (ch in "chef") may stand beside it.
void addDigraphs(ItemList& list, const Word& word) {
    for (const Letter& right : digraphs()) {
        const std::size_t size = right.text.size();
        if (word.text.size() <= size || word.sounds.size() < 2) continue;
        const bool first = word.text.compare(0, size, right.text) == 0;
        const bool last = word.text.compare(word.text.size() - size, size, right.text) == 0;
        if (first == last) continue;
        const Pronunciation sound{first ? word.sounds.front() : word.sounds.back()};
        if (!standsFor(right, sound, false)) continue;
        std::vector<Foil> foils;
        for (const Letter& letter : digraphs())
            if (!standsFor(letter, sound, false))
                foils.push_back(
                    {letter.id, nullptr, speech::wordDistance(letter.taught.front(), sound), 0, 0});
        list.add({{Unit::letter, Task::digraph},
                  word.id,
                  {partOf(word), partOf(sound)},
                  {speech::ipa(sound), first ? Position::first : Position::last},
                  {right.id},
                  {},
                  [&](const Foil& foil) {
                      const Letter& letter = *letterById(foil.id);
                      return tookLetter(letter, right) + ": " + inSlashes(letter.taught.front()) +
                             " for " + inSlashes(sound);
                  }},
                 foils);
    }
}

struct Built {
    const Word* word;
    std::vector<Tile> tiles;
};

/// The letter that says the first sound which the foil has not; the last one if it only has more.
TurnsOn onTile(const Built& built, const Word& foil) {
    const auto apart = speech::placesApart(built.word->sounds, foil.sounds);
    std::size_t said = 0;
    for (const Tile& tile : built.tiles) {
        said += tile.sounds.size();
        if (!apart.empty() && said > apart.front()) return onLetter(*tile.letter);
    }
    return onLetter(*built.tiles.back().letter);
}

/// A regular word from its letters, beside words that are as regular.
void addBuilds(ItemList& list, const Vocabulary& vocabulary) {
    std::vector<Built> words;
    for (const Word* word : picturedWords(vocabulary))
        if (auto tiles = regularTiles(*word); tiles && tiles->size() >= 2 && tiles->size() <= 5)
            words.push_back({word, std::move(*tiles)});
    for (const Built& right : words) {
        std::vector<Foil> foils;
        for (const Built& other : words)
            if (other.word != right.word)
                foils.push_back({other.word->id, other.word,
                                 speech::wordDistance(other.word->sounds, right.word->sounds), 0,
                                 0});
        Question question{{Unit::letter, Task::build},
                          right.word->id,
                          {},
                          {},
                          {right.word->id, right.word},
                          {},
                          [&right](const Foil& foil) {
                              return soundTelling(right.word->sounds, foil.word->sounds).means;
                          },
                          [&right](const Foil& foil) { return onTile(right, *foil.word); }};
        for (const Tile& tile : right.tiles)
            question.parts.push_back({clipOf(tile.sounds), std::string(tile.letter->text)});
        list.add(question, foils);
    }
}

}  // namespace

std::vector<Item> makeLetterItems(const Vocabulary& vocabulary, Task task) {
    ItemList list;
    if (task == Task::build) addBuilds(list, vocabulary);
    if (task == Task::digraph)
        for (const Word* word : picturedWords(vocabulary)) addDigraphs(list, *word);
    for (const Letter* letter : lettersIn(vocabulary)) {
        if (task == Task::name) addNames(list, *letter);
        if (task == Task::sound) addSounds(list, *letter);
        if (task == Task::for_sound) addForSounds(list, *letter);
        if (task == Task::both_sounds) addBothSounds(list, *letter);
    }
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
