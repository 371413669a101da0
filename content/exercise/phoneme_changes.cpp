#include <algorithm>
#include <unordered_map>

#include "content/exercise/changes.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Phoneme;
using speech::Pronunciation;

bool isSimple(const Word& word) {
    return speech::syllableCount(word.sounds) == 1 && !speech::countVaries(word.sounds);
}

/// Simple words by their sounds; of two said alike, one with a picture first.
class BySound {
  public:
    explicit BySound(const Vocabulary& vocabulary) {
        for (const bool pictured : {true, false})
            for (const Word& word : vocabulary.words)
                if (word.picture.empty() != pictured && isSimple(word))
                    words_.emplace(soundKey(word.sounds), &word);
    }
    const Word* at(const std::string& key) const {
        const auto found = words_.find(key);
        return found == words_.end() ? nullptr : found->second;
    }

  private:
    std::unordered_map<std::string, const Word*> words_;
};

bool standsOnce(const std::string& key, std::size_t place) {
    return std::count(key.begin(), key.end(), key[place]) == 1;
}

/// True iff the sound there can be taken away, added or changed by ear: see changes.hpp.
bool isClear(const Pronunciation& sounds, std::size_t place) {
    const Phoneme phoneme = sounds[place].phoneme;
    const bool last = place + 1 == sounds.size();
    if (speech::isVowel(phoneme)) {
        const bool colours = !last && (sounds[place + 1].phoneme == Phoneme::l ||
                                       sounds[place + 1].phoneme == Phoneme::r);
        return phoneme != Phoneme::er && !colours && isSure(sounds, place);
    }
    const bool after_vowel = place > 0 && speech::isVowel(sounds[place - 1].phoneme);
    if (after_vowel && (phoneme == Phoneme::l || phoneme == Phoneme::r)) return false;
    const std::size_t size = sounds.size();
    const bool ends_in_ks = size >= 2 && sounds[size - 1].phoneme == Phoneme::s &&
                            sounds[size - 2].phoneme == Phoneme::k;
    return !(ends_in_ks && place + 2 >= size);
}

TurnsOn turnsOn(const Pronunciation& sounds, std::size_t place) {
    return {std::string(speech::ipa(sounds[place].phoneme)), positionOf(sounds, place)};
}

std::string without(std::string key, std::size_t place) {
    return key.erase(place, 1);
}

/// The words that `key` is without another of its sounds.
std::vector<const Word*> withoutAnother(const BySound& words, const std::string& key,
                                        std::size_t place) {
    std::vector<const Word*> found;
    for (std::size_t i = 0; i < key.size(); ++i)
        if (i != place)
            if (const Word* word = words.at(without(key, i))) found.push_back(word);
    return found;
}

/// The words that `key` is with the same sound put in elsewhere.
std::vector<const Word*> withElsewhere(const BySound& words, const std::string& key, char sound,
                                       const Word* right) {
    std::vector<const Word*> found;
    for (std::size_t i = 0; i <= key.size(); ++i) {
        const Word* word = words.at(std::string(key).insert(i, 1, sound));
        if (word != nullptr && word != right) found.push_back(word);
    }
    return found;
}

/// `longer` is `shorter` with one consonant more: the same pair serves adding and taking away.
void addPair(std::vector<Change>& changes, const BySound& words, const Word& longer,
             std::size_t place, Task task) {
    const std::string key = soundKey(longer.sounds);
    if (speech::isVowel(longer.sounds[place].phoneme) || !isClear(longer.sounds, place)) return;
    if (!standsOnce(key, place)) return;
    const std::string rest = without(key, place);
    const Word* shorter = words.at(rest);
    if (shorter == nullptr) return;
    const Part sound = partOf({longer.sounds[place]});
    if (task == Task::remove && !shorter->picture.empty())
        changes.push_back({&longer,
                           shorter,
                           {sound},
                           turnsOn(longer.sounds, place),
                           withoutAnother(words, key, place)});
    if (task == Task::add && !longer.picture.empty())
        changes.push_back({shorter,
                           &longer,
                           {sound},
                           turnsOn(longer.sounds, place),
                           withElsewhere(words, rest, key[place], &longer)});
}

void addSwaps(std::vector<Change>& changes, const BySound& words, const Word& from,
              std::size_t place) {
    const std::string key = soundKey(from.sounds);
    if (!isClear(from.sounds, place) || !standsOnce(key, place)) return;
    for (std::size_t i = 0; i < speech::kPhonemeCount; ++i) {
        const auto put = static_cast<Phoneme>(i);
        if (put == from.sounds[place].phoneme ||
            speech::isVowel(put) != speech::isVowel(from.sounds[place].phoneme))
            continue;
        std::string swapped = key;
        swapped[place] = soundKey({{put}})[0];
        const Word* to = words.at(swapped);
        if (to == nullptr || to->picture.empty() || !isClear(to->sounds, place) ||
            speech::saidAlikeByMany(from.sounds, to->sounds))
            continue;
        changes.push_back({&from,
                           to,
                           {partOf({from.sounds[place]}), partOf({to->sounds[place]})},
                           turnsOn(to->sounds, place),
                           {}});
    }
}

}  // namespace

std::vector<Change> phonemeChanges(const Vocabulary& vocabulary, Task task) {
    const BySound words(vocabulary);
    std::vector<Change> changes;
    for (const Word& word : vocabulary.words) {
        if (!isSimple(word)) continue;
        for (std::size_t place = 0; place < word.sounds.size(); ++place) {
            if (task == Task::substitute)
                addSwaps(changes, words, word, place);
            else
                addPair(changes, words, word, place, task);
        }
    }
    return changes;
}

}  // namespace wrenlet::exercise
