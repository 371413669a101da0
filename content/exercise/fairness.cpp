#include <algorithm>
#include <set>
#include <string>

#include "content/exercise/fairness_rules.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/sentence.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

namespace fairness {

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

std::vector<const Word*> shownWords(const Item& item, std::span<const std::string> beside,
                                    const Vocabulary& vocabulary, Reasons& why) {
    std::vector<std::string_view> ids;
    for (const Choice& choice : item.choices) ids.push_back(choice.id);
    for (const std::string& id : beside)
        if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.push_back(id);
    std::vector<const Word*> words;
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const Word* word = vocabulary.word(ids[i]);
        if (word == nullptr)
            why.push_back(quoted(ids[i]) + " is not a word of the unit");
        else if (word->picture.empty() && i < item.choices.size())
            why.push_back(quoted(ids[i]) + " has no picture");
        else if (word->sounds.empty())
            why.push_back(quoted(ids[i]) + " has no sounds");
        else
            words.push_back(word);
    }
    if (words.size() != ids.size()) return {};
    // Two wrong ones that look alike do no harm; said alike, or with one picture, they do.
    const auto isFoil = [&](std::size_t i) { return i < item.choices.size() && i != item.answer; };
    const auto isSamePicture = [](const Word& a, const Word& b) {
        return !a.picture.empty() && a.picture == b.picture;
    };
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (isFoil(i) && isFoil(j)
                    ? !areHeardApart(*words[i], *words[j]) || isSamePicture(*words[i], *words[j])
                    : !mayStandTogether(*words[i], *words[j]))
                why.push_back(quoted(words[j]->id) + " and " + quoted(words[i]->id) +
                              " can be taken for each other");
    return words;
}

void judgeParts(const Item& item, const Vocabulary& vocabulary, const Word& word, Reasons& why) {
    if (item.skill.unit == Unit::compound) {
        std::vector<std::string> clips;
        std::vector<speech::Pronunciation> sounds;
        for (const std::string& id : word.compound) {
            clips.push_back(wordClip(id));
            const Word* part = vocabulary.word(id);
            if (part != nullptr) sounds.push_back(part->sounds);
        }
        const bool same =
            std::equal(clips.begin(), clips.end(), item.parts.begin(), item.parts.end(),
                       [](const std::string& clip, const Part& part) { return clip == part.clip; });
        if (!same || sounds.size() != clips.size())
            why.push_back("its parts are not those of " + quoted(word.id));
        else if (!speech::joinsTo(sounds, word.sounds))
            why.push_back("its parts do not sound like " + quoted(word.id));
        return;
    }
    std::string said;
    for (const Part& part : item.parts) {
        said += part.label;
        if (part.clip != "sound:" + part.label && part.clip != "part:" + part.label)
            why.push_back("the clip " + quoted(part.clip) + " does not say /" + part.label + "/");
    }
    if (said != speech::ipa(word.sounds))
        why.push_back("its parts say /" + said + "/, not " + quoted(word.id));
}

void judgeNumbers(const Item& item, std::size_t first, std::size_t right, Reasons& why) {
    if (item.choices[item.answer].id != std::to_string(right))
        why.push_back("its answer is not " + std::to_string(right));
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (item.choices[i].id != std::to_string(first + i))
            why.push_back("its choices are not " + std::to_string(first) + " and so on");
}

void judgeCvc(const Word& word, Reasons& why) {
    const std::string said = speech::ipa(word.sounds);
    if (speech::shape(word.sounds) != "CVC")
        why.push_back(quoted(word.id) + " is not a consonant, a vowel and a consonant");
    else if (word.sounds[2].phoneme == speech::Phoneme::l ||
             word.sounds[2].phoneme == speech::Phoneme::r ||
             word.sounds[1].phoneme == speech::Phoneme::er)
        why.push_back(quoted(word.id) + " ends in /l/ or /ɹ/, or has it in its vowel");
}

std::size_t placeOf(const TurnsOn& turns_on, const speech::Pronunciation& sounds) {
    std::size_t found = sounds.size();
    for (std::size_t i = 0; i < sounds.size(); ++i) {
        const Position position = i == 0                   ? Position::first
                                  : i + 1 == sounds.size() ? Position::last
                                                           : Position::middle;
        if (speech::ipa(sounds[i].phoneme) != turns_on.sound || position != turns_on.position)
            continue;
        if (found != sounds.size()) return sounds.size();
        found = i;
    }
    return found;
}

bool mayBe(const speech::Pronunciation& word, std::size_t place, speech::Phoneme sound) {
    if (place >= word.size() || word[place].phoneme == sound) return false;
    const auto ways = speech::waysOfMany(word);
    return std::any_of(ways.begin(), ways.end(), [&](const speech::Pronunciation& way) {
        return way[place].phoneme == sound;
    });
}

}  // namespace fairness

namespace {

using fairness::quoted;
using fairness::Reasons;

void checkChoices(const Item& item, Reasons& why) {
    if (item.choices.size() < 2 || item.choices.size() > kMostCounted) {
        why.push_back("it has " + std::to_string(item.choices.size()) + " choices");
        return;
    }
    std::set<std::string_view> ids;
    for (const Choice& choice : item.choices)
        if (!ids.insert(choice.id).second)
            why.push_back(quoted(choice.id) + " can be chosen twice");
    if (item.answer >= item.choices.size()) {
        why.push_back("it has no right answer");
        return;
    }
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (item.choices[i].means.empty() != (i == item.answer))
            why.push_back(quoted(item.choices[i].id) + (i == item.answer
                                                            ? " is right, and means an error"
                                                            : " is wrong, and tells nothing"));
}

}  // namespace

std::vector<std::string> unfairness(const Item& item, const Vocabulary& vocabulary) {
    Reasons why;
    checkChoices(item, why);
    if (item.id != itemId(item)) why.push_back("its id is not that of what it asks");
    if (!why.empty()) return why;
    if (item.skill.unit == Unit::letter) {
        fairness::judgeLetters(item, vocabulary, why);
        return why;
    }
    switch (mechanicOf(item)) {
        case Mechanic::sort:
            fairness::judgeSort(item, vocabulary, why);
            break;
        case Mechanic::join:
            fairness::judgeJoin(item, vocabulary, why);
            break;
        case Mechanic::split:
            fairness::judgeSplit(item, vocabulary, why);
            break;
        case Mechanic::count:
            fairness::judgeCount(item, vocabulary, why);
            break;
        case Mechanic::pick:
            fairness::judgePick(item, vocabulary, why);
            break;
        case Mechanic::change:
            fairness::judgeChange(item, vocabulary, why);
            break;
    }
    return why;
}

}  // namespace wrenlet::exercise
