// The standards' own statements, item by item: Common Core State Standards, English Language Arts,
// Reading: Foundational Skills (2010), grades K and 1.
#include <algorithm>

#include "tests/exercise/by_ear.hpp"

namespace wrenlet::byear {

using namespace exercise;
using Symbols = std::vector<std::string>;

namespace {

struct Said {
    std::string id, shape;
    Symbols sounds;

    std::size_t beats() const {
        return static_cast<std::size_t>(std::count(shape.begin(), shape.end(), 'V'));
    }
};

Said saidOf(const Vocabulary& vocabulary, const std::string& id) {
    Said said{id, "", {}};
    if (const Word* word = vocabulary.word(id)) said.sounds = symbols(word->sounds);
    for (const std::string& sound : said.sounds) said.shape += isVowelSymbol(sound) ? 'V' : 'C';
    return said;
}

using Reasons = std::vector<std::string>;

/// "in three-phoneme (consonant-vowel-consonant, or CVC) words. (This does not include CVCs ending
/// with /l/, /r/, or /x/.)"
void isNamedCvc(const Said& word, Reasons& why) {
    if (word.shape != "CVC") {
        why.push_back(word.id + " is no CVC word");
        return;
    }
    const std::string& last = word.sounds.back();
    if (last == "l" || last == "ɹ" || word.sounds[1] == "ɝ" || word.id.back() == 'x')
        why.push_back(word.id + " ends in /l/, /r/ or /x/");
}

void isOneSyllable(const Said& word, Reasons& why) {
    if (word.beats() != 1) why.push_back(word.id + " is not of one syllable");
}

void eachPart(const Item& item, std::size_t beats, Reasons& why) {
    for (const Part& part : item.parts) {
        const Symbols said = symbols(part.label);
        const auto vowels = std::count_if(said.begin(), said.end(), isVowelSymbol);
        if (static_cast<std::size_t>(vowels) != beats)
            why.push_back("/" + part.label + "/ is not one syllable");
    }
}

/// "Blend and segment onsets and rimes of single-syllable spoken words."
void judgeOnsetRime(const Item& item, const Said& word, Reasons& why) {
    isOneSyllable(word, why);
    if (item.parts.size() != 2) {
        why.push_back("an onset and a rime are two parts");
        return;
    }
    const Symbols onset = symbols(item.parts[0].label), rime = symbols(item.parts[1].label);
    if (onset.empty() || std::any_of(onset.begin(), onset.end(), isVowelSymbol))
        why.push_back("/" + item.parts[0].label + "/ is no onset");
    if (rime.empty() || !isVowelSymbol(rime.front()))
        why.push_back("/" + item.parts[1].label + "/ is no rime");
}

/// "Segment spoken single-syllable words into their complete sequence of individual sounds."
void judgeSequence(const Item& item, const Said& word, Reasons& why) {
    isOneSyllable(word, why);
    Symbols parts;
    for (const Part& part : item.parts) parts.push_back(part.label);
    if (parts != word.sounds) why.push_back("its parts are not the sounds of " + word.id);
}

/// "Add or substitute individual sounds in simple, one-syllable words to make new words."
void judgeNewWord(const Item& item, const Said& from, const Said& to, Reasons& why) {
    isOneSyllable(from, why);
    isOneSyllable(to, why);
    const bool adds = item.skill.task == Task::add;
    if (to.sounds == from.sounds || to.sounds.size() != from.sounds.size() + (adds ? 1 : 0))
        why.push_back(to.id + " is no new word by one sound");
    for (std::size_t i = 1; i < item.parts.size(); ++i)
        if (symbols(item.parts[i].label).size() != 1)
            why.push_back("/" + item.parts[i].label + "/ is not an individual sound");
}

/// "Distinguish long from short vowel sounds in spoken single-syllable words."
void judgeVowel(const Item& item, const Said& word, Reasons& why) {
    isOneSyllable(word, why);
    if (item.choices.size() != 2) why.push_back("long and short are two");
    if (!isVowelSymbol(item.turns_on.sound)) why.push_back("it turns on no vowel");
}

}  // namespace

Reasons againstStandard(const Item& item, const Vocabulary& vocabulary) {
    Reasons why;
    const std::string_view code = rowOf(item.skill).standard;
    const Said asked = saidOf(vocabulary, item.subject);
    const Said right = saidOf(vocabulary, item.choices[item.answer].id);
    if (code == "RF.K.2.b") {
        // "Count, pronounce, blend, and segment syllables in spoken words."
        eachPart(item, 1, why);
        if (item.parts.size() != asked.beats()) why.push_back("it has not as many syllables");
    } else if (code == "RF.K.2.c") {
        judgeOnsetRime(item, asked, why);
    } else if (code == "RF.K.2.d") {
        for (const Choice& choice : item.choices) isNamedCvc(saidOf(vocabulary, choice.id), why);
        if (vocabulary.word(item.subject) != nullptr) isNamedCvc(asked, why);
        const std::string& sound = item.turns_on.sound;
        if (isVowelSymbol(sound) != (item.skill.task == Task::middle))
            why.push_back("a vowel is asked first or last, or a consonant in the middle");
    } else if (code == "RF.K.2.e") {
        judgeNewWord(item, asked, right, why);
    } else if (code == "RF.1.2.a") {
        judgeVowel(item, asked, why);
    } else if (code == "RF.1.2.b" || code == "RF.1.2.d") {
        // "Orally produce single-syllable words by blending sounds, including consonant blends."
        judgeSequence(item, asked, why);
    } else if (code == "RF.K.2.a") {
        // "Recognize and produce rhyming words": none is said twice, and each has a rime.
        if (item.turns_on.position != Position::rime) why.push_back("it turns on no rime");
        const bool is_judge = item.skill.task == Task::rhyme_judge;
        const std::string other = is_judge ? item.parts.back().label : right.id;
        if (item.skill.task != Task::odd_one_out && asked.id == other)
            why.push_back(asked.id + " is to rhyme with itself");
    }
    return why;
}

}  // namespace wrenlet::byear
