#include "content/exercise/in_accents.hpp"

#include <algorithm>

#include "content/exercise/in_accents_rules.hpp"
#include "content/exercise/vowel_length.hpp"
#include "content/speech/rhyme.hpp"

namespace wrenlet::exercise {

namespace {

using accents::Ear;
using speech::Phoneme;
using speech::Pronunciation;

bool choosesWords(const Item& item) {
    switch (item.skill.task) {
        case Task::count:
        case Task::segment:
        case Task::tune:
        case Task::rhyme_judge:
        case Task::long_short:
            return false;
        default:
            return item.skill.unit != Unit::letter || item.skill.task == Task::build;
    }
}

bool hasWordAsSubject(const Item& item) {
    if (item.skill.unit == Unit::letter)
        return item.skill.task == Task::build || item.skill.task == Task::digraph;
    const bool is_pick_by_sound =
        mechanicOf(item) == Mechanic::pick && item.skill.unit == Unit::phoneme;
    return item.skill.unit != Unit::sentence && !is_pick_by_sound;
}

/// Every word that is heard or shown in the item; nothing when one is not in the vocabulary.
std::vector<const Word*> wordsOf(const Item& item, const Vocabulary& vocabulary) {
    std::vector<std::string_view> ids;
    if (hasWordAsSubject(item)) ids.push_back(item.subject);
    if (choosesWords(item))
        for (const Choice& choice : item.choices) ids.push_back(choice.id);
    for (const Part& part : item.parts)
        if (part.clip.compare(0, 5, "word:") == 0) ids.push_back(accents::afterColon(part.clip));
    std::vector<const Word*> words;
    for (const std::string_view id : ids) {
        const Word* word = vocabulary.word(id);
        if (word == nullptr) return {};
        words.push_back(word);
    }
    return words;
}

bool keepsApart(const std::vector<const Word*>& words, Ear ear) {
    std::vector<Pronunciation> heard;
    for (const Word* word : words) heard.push_back(speech::inAccent(ear, word->sounds));
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (speech::sameSounds(heard[i], heard[j]) &&
                !speech::sameSounds(words[i]->sounds, words[j]->sounds))
                return false;
    return true;
}

bool keepsRhyme(const Word& a, const Word& b, Ear ear) {
    return speech::rhymeKind(speech::inAccent(ear, a.sounds), speech::inAccent(ear, b.sounds)) ==
           speech::rhymeKind(a.sounds, b.sounds);
}

bool keepsRhymes(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    if (item.skill.task == Task::odd_one_out) {
        for (std::size_t i = 0; i < item.choices.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                if (!keepsRhyme(*vocabulary.word(item.choices[i].id),
                                *vocabulary.word(item.choices[j].id), ear))
                    return false;
        return true;
    }
    const Word& subject = *vocabulary.word(item.subject);
    if (item.skill.task == Task::rhyme_judge)
        return keepsRhyme(subject, *vocabulary.word(accents::afterColon(item.parts.back().clip)),
                          ear);
    return std::all_of(item.choices.begin(), item.choices.end(), [&](const Choice& choice) {
        return keepsRhyme(subject, *vocabulary.word(choice.id), ear);
    });
}

/// The sound that the word has there to the ear; nothing when the ear hears fewer sounds or more,
/// so that places cannot be compared.
std::optional<Phoneme> soundAt(const Word& word, Task task, Ear ear) {
    const Pronunciation heard = speech::inAccent(ear, word.sounds);
    if (heard.empty() || heard.size() != word.sounds.size()) return std::nullopt;
    if (task == Task::first) return heard.front().phoneme;
    if (task == Task::last) return heard.back().phoneme;
    for (const speech::Sound& sound : heard)
        if (speech::isVowel(sound.phoneme)) return sound.phoneme;
    return std::nullopt;
}

/// A sound asked for by itself stands in the right word; one of a card does in the right home.
bool keepsSounds(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const Task task = item.skill.task;
    const auto asked = mechanicOf(item) == Mechanic::sort
                           ? soundAt(*vocabulary.word(item.subject), task, ear)
                           : speech::fromIpa(accents::afterColon(item.subject));
    if (!asked) return false;
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const auto sound = soundAt(*vocabulary.word(item.choices[i].id), task, ear);
        if (!sound || (sound == asked) != (i == item.answer)) return false;
    }
    return true;
}

bool keepsLength(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const Pronunciation& card = vocabulary.word(item.subject)->sounds;
    const auto length = lengthOf(card), heard = lengthOf(speech::inAccent(ear, card));
    return length && heard && length->is_long == heard->is_long;
}

bool keeps(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    if (item.skill.unit == Unit::letter && item.skill.task != Task::build)
        return accents::keepsLetter(item, vocabulary, ear);
    switch (item.skill.task) {
        case Task::tune:
            return true;
        case Task::rhyme_judge:
        case Task::rhyme_sort:
        case Task::odd_one_out:
        case Task::rhyme_pick:
            return keepsRhymes(item, vocabulary, ear);
        case Task::first:
        case Task::last:
        case Task::middle:
            return keepsSounds(item, vocabulary, ear);
        case Task::long_short:
            return keepsLength(item, vocabulary, ear);
        case Task::count:
        case Task::blend:
        case Task::segment:
        case Task::build:
            return accents::keepsParts(item, vocabulary, ear);
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return accents::keepsChange(item, vocabulary, ear);
        case Task::name:
        case Task::sound:
        case Task::both_sounds:
        case Task::for_sound:
        case Task::digraph:
            break;
    }
    return false;
}

}  // namespace

bool holdsIn(std::span<const speech::Accent> accents, const Item& item,
             const Vocabulary& vocabulary) {
    if (accents.empty() || item.skill.unit == Unit::sentence) return true;
    const bool needs_words = hasWordAsSubject(item) || choosesWords(item);
    const std::vector<const Word*> words = wordsOf(item, vocabulary);
    if (needs_words && words.empty()) return false;
    const auto holds = [&](Ear ear) {
        return keepsApart(words, ear) && keeps(item, vocabulary, ear);
    };
    for (std::size_t i = 0; i < accents.size(); ++i)
        if (!holds(accents.subspan(i, 1))) return false;
    return accents.size() == 1 || holds(accents);
}

std::vector<Item> holdingIn(std::vector<Item> items, const Vocabulary& vocabulary,
                            std::span<const speech::Accent> accents) {
    items.erase(
        std::remove_if(items.begin(), items.end(),
                       [&](const Item& item) { return !holdsIn(accents, item, vocabulary); }),
        items.end());
    return items;
}

}  // namespace wrenlet::exercise
