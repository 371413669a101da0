#include <algorithm>

#include "content/exercise/fairness_rules.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/features.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise::fairness {

namespace {

using speech::Phoneme;
using speech::Pronunciation;

void judgeRhymeSort(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (shownWords(item, std::vector{item.subject}, vocabulary, why).empty()) return;
    const Word& card = *vocabulary.word(item.subject);
    const Pronunciation rime = speech::rhymingPart(card.sounds);
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

/// The place that first, middle and last have in a CVC word.
std::size_t cvcPlace(Task task) {
    return task == Task::first ? 0 : task == Task::middle ? 1 : 2;
}

/// `same`, unless some accent has the sounds at `place` otherwise.
bool isLikeInAllWays(const Pronunciation& a, const Pronunciation& b, std::size_t place, bool same) {
    const auto ways_a = speech::waysOfMany(a), ways_b = speech::waysOfMany(b);
    for (std::size_t way = 0; way < ways_a.size(); ++way)
        if ((ways_a[way][place].phoneme == ways_b[way][place].phoneme) != same) return !same;
    return same;
}

void judgeSoundSort(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    for (const Word* word : shownWords(item, std::vector{item.subject}, vocabulary, why))
        judgeCvc(*word, why);
    if (!why.empty()) return;
    const std::size_t place = cvcPlace(item.skill.task);
    const Pronunciation& card = vocabulary.word(item.subject)->sounds;
    if (placeOf(item.turns_on, card) != place)
        why.push_back("it does not turn on the sound of " + quoted(item.subject));
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& home = *vocabulary.word(item.choices[i].id);
        const bool same = home.sounds[place].phoneme == card[place].phoneme;
        if (home.id == item.subject)
            why.push_back(quoted(home.id) + " would be sorted to itself");
        else if (same != (i == item.answer))
            why.push_back(quoted(home.id) + (same ? " is like the card too" : " is not like it"));
        else if (same != isLikeInAllWays(home.sounds, card, place, same))
            why.push_back("whether " + quoted(home.id) + " is like the card depends on the accent");
    }
}

/// RF.1.2.a: long and short vowels in spoken single-syllable words.
void judgeLength(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word* card = vocabulary.word(item.subject);
    if (card == nullptr || card->picture.empty()) {
        why.push_back(quoted(item.subject) + " is no word with a picture");
        return;
    }
    const Pronunciation& sounds = card->sounds;
    if (speech::syllableCount(sounds) != 1 || speech::countVaries(sounds)) {
        why.push_back(quoted(card->id) + " is not surely one syllable");
        return;
    }
    const auto vowel = std::find_if(sounds.begin(), sounds.end(), [](const speech::Sound& sound) {
        return speech::isVowel(sound.phoneme);
    });
    const std::string name(speech::ipa(vowel->phoneme));
    const auto isOneOf = [&name](std::initializer_list<std::string_view> names) {
        return std::find(names.begin(), names.end(), name) != names.end();
    };
    const bool is_long = isOneOf({"eɪ", "i", "aɪ", "oʊ", "u"});
    const bool is_short = isOneOf({"æ", "ɛ", "ɪ", "ɑ", "ʌ"}) && vowel + 1 != sounds.end();
    if (!is_long && !is_short)
        why.push_back("the vowel of " + quoted(card->id) + " is neither long nor short");
    if (vowel + 1 != sounds.end()) {
        const std::string next(speech::ipa((vowel + 1)->phoneme));
        if (next == "l" || next == "ɹ" || next == "ŋ")
            why.push_back("/" + next + "/ colours the vowel of " + quoted(card->id));
    }
    if (item.choices.size() != 2 || item.choices[0].id != "long" || item.choices[1].id != "short")
        why.push_back("its choices are not long and short");
    else if (item.choices[item.answer].id != (is_long ? "long" : "short"))
        why.push_back("the vowel of " + quoted(card->id) + " is not " +
                      item.choices[item.answer].id);
    if (placeOf(item.turns_on, sounds) != static_cast<std::size_t>(vowel - sounds.begin()))
        why.push_back("it does not turn on the vowel of " + quoted(card->id));
}

void judgeTune(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Sentence* sentence = vocabulary.sentence(item.subject);
    if (sentence == nullptr || sentence->words.empty()) {
        why.push_back(quoted(item.subject) + " is not a sentence of the unit");
        return;
    }
    if (item.choices.size() != 2 || item.choices[0].id != "asking" ||
        item.choices[1].id != "telling") {
        why.push_back("its choices are not asking and telling");
        return;
    }
    const std::string& text = sentence->text;
    const std::size_t mark = text.find_last_of(".?!");
    if (mark == std::string::npos || text.find_first_of(".?!") != mark || text[mark] == '!')
        why.push_back("the mark of " + quoted(text) + " does not say its tune");
    const bool asks = mark != std::string::npos && text[mark] == '?';
    if (asks != (item.choices[item.answer].id == "asking"))
        why.push_back(quoted(text) + " has another tune");
    std::string begins = sentence->words.front().text.substr(0, 2);
    for (char& letter : begins)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    if (begins == "wh" || begins == "ho")  // who, what, where, when, why, which, how
        if (asks) why.push_back(quoted(text) + " asks, and its tune falls");
    if (asks && text.find(" or ") != std::string::npos)
        why.push_back(quoted(text) + " offers a choice, and its tune falls");
    if (item.turns_on != TurnsOn{item.choices[item.answer].id, Position::tune})
        why.push_back("it does not turn on the tune");
}

}  // namespace

void judgeSort(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    if (!item.parts.empty()) why.push_back("a card to sort has no parts");
    switch (item.skill.task) {
        case Task::rhyme_sort:
            return judgeRhymeSort(item, vocabulary, why);
        case Task::long_short:
            return judgeLength(item, vocabulary, why);
        case Task::tune:
            return judgeTune(item, vocabulary, why);
        default:
            return judgeSoundSort(item, vocabulary, why);
    }
}

}  // namespace wrenlet::exercise::fairness
