#include <algorithm>
#include <set>
#include <string>

#include "content/exercise/item_maker.hpp"
#include "content/exercise/sentence.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/rhyme.hpp"

// Written against the words alone, without the makers: what they get wrong is found here.

namespace wrenlet::exercise {

namespace {

using Reasons = std::vector<std::string>;

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

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

/// The words that are shown, or nothing with the reason.
std::vector<const Word*> shownWords(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    std::vector<std::string_view> ids;
    for (const Choice& choice : item.choices) ids.push_back(choice.id);
    if (std::find(ids.begin(), ids.end(), item.subject) == ids.end()) ids.push_back(item.subject);
    std::vector<const Word*> words;
    for (const std::string_view id : ids) {
        const Word* word = vocabulary.word(id);
        if (word == nullptr)
            why.push_back(quoted(id) + " is not a word of the unit");
        else if (word->picture.empty())
            why.push_back(quoted(id) + " has no picture");
        else if (word->sounds.empty())
            why.push_back(quoted(id) + " has no sounds");
        else
            words.push_back(word);
    }
    if (words.size() != ids.size()) return {};
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (!mayStandTogether(*words[i], *words[j]))
                why.push_back(quoted(words[j]->id) + " and " + quoted(words[i]->id) +
                              " can be taken for each other");
    return words;
}

void checkSort(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (shownWords(item, vocabulary, why).empty()) return;
    const Word& card = *vocabulary.word(item.subject);
    const speech::Pronunciation rime = speech::rhymingPart(card.sounds);
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& home = *vocabulary.word(item.choices[i].id);
        const bool rhymes =
            speech::rhymeKind(card.sounds, home.sounds) == speech::RhymeKind::perfect;
        if (home.id == card.id)
            why.push_back(quoted(card.id) + " would be sorted to itself");
        else if (i == item.answer && !rhymes)
            why.push_back(quoted(card.id) + " does not rhyme with " + quoted(home.id));
        else if (i != item.answer &&
                 (rhymes || speech::saidAlikeByMany(rime, speech::rhymingPart(home.sounds))))
            why.push_back(quoted(card.id) + " rhymes with " + quoted(home.id) + " too");
    }
    if (item.turns_on != TurnsOn{speech::ipa(rime), Position::rime})
        why.push_back("it does not turn on the rime of " + quoted(card.id));
}

/// True iff the sounds from one end on are written `text`, whole sounds each: "chip" does not begin
/// with /t/, for /tʃ/ is one sound.
template <class From>
bool isSaid(From begin, From end, std::string_view text, bool backwards) {
    if (text.empty()) return false;
    for (; begin != end && !text.empty(); ++begin) {
        const std::string_view sound = speech::ipa(begin->phoneme);
        if (sound.size() > text.size()) return false;
        const std::size_t at = backwards ? text.size() - sound.size() : 0;
        if (text.substr(at, sound.size()) != sound) return false;
        backwards ? text.remove_suffix(sound.size()) : text.remove_prefix(sound.size());
    }
    return text.empty();
}

bool standsThere(const TurnsOn& turns_on, const Word& word) {
    const speech::Pronunciation& said = word.sounds;
    switch (turns_on.position) {
        case Position::first:
            return isSaid(said.begin(), said.end(), turns_on.sound, false);
        case Position::last:
            return isSaid(said.rbegin(), said.rend(), turns_on.sound, true);
        case Position::middle:
            for (std::size_t i = 1; i + 1 < word.sounds.size(); ++i)
                if (speech::ipa(word.sounds[i].phoneme) == turns_on.sound) return true;
            return false;
        default:
            return false;
    }
}

void checkParts(const Item& item, const Vocabulary& vocabulary, const Word& word, Reasons& why) {
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

void checkBlend(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (shownWords(item, vocabulary, why).empty()) return;
    const Word& word = *vocabulary.word(item.subject);
    if (item.choices[item.answer].id != item.subject)
        why.push_back("the right choice is not " + quoted(item.subject));
    if (item.parts.size() < 2 || item.parts.size() > 4)
        why.push_back("it has " + std::to_string(item.parts.size()) + " parts");
    checkParts(item, vocabulary, word, why);
    const bool is_part = item.turns_on.position == Position::whole &&
                         std::any_of(item.parts.begin(), item.parts.end(), [&](const Part& part) {
                             return part.label == item.turns_on.sound;
                         });
    if (!is_part && !standsThere(item.turns_on, word))
        why.push_back("/" + item.turns_on.sound + "/ does not stand there in " + quoted(word.id));
}

void checkCount(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Sentence* sentence = vocabulary.sentence(item.subject);
    if (sentence == nullptr) {
        why.push_back(quoted(item.subject) + " is not a sentence of the unit");
        return;
    }
    const Result<std::vector<SpokenWord>> spoken = spokenWords(sentence->text, item.subject);
    if (!spoken.ok() || spoken.value() != sentence->words)
        why.push_back("its words are not those of " + quoted(sentence->text));
    if (item.choices[item.answer].id != std::to_string(sentence->words.size()))
        why.push_back("its answer is not the number of words");
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (item.choices[i].id != std::to_string(i + 1))
            why.push_back("its choices are not 1, 2, 3 and so on");
    const bool same = std::equal(
        item.parts.begin(), item.parts.end(), sentence->words.begin(), sentence->words.end(),
        [](const Part& part, const SpokenWord& w) { return part.clip == spokenClip(w.text); });
    if (!same) why.push_back("its parts are not the words of the sentence");
}

}  // namespace

std::vector<std::string> unfairness(const Item& item, const Vocabulary& vocabulary) {
    Reasons why;
    checkChoices(item, why);
    if (!why.empty()) return why;
    switch (item.skill.task) {
        case Task::rhyme_sort:
            checkSort(item, vocabulary, why);
            break;
        case Task::blend:
            checkBlend(item, vocabulary, why);
            break;
        case Task::count:
            checkCount(item, vocabulary, why);
            break;
    }
    return why;
}

}  // namespace wrenlet::exercise
