#include <algorithm>

#include "content/exercise/fairness_rules.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"

namespace wrenlet::exercise::fairness {

namespace {

using speech::Pronunciation;
using speech::RhymeKind;

void judgeSoundPick(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const std::string sound = item.subject.substr(item.subject.find(':') + 1);
    const auto phoneme = speech::fromIpa(sound);
    if (!phoneme || item.parts != std::vector<Part>{{item.subject, sound}}) {
        why.push_back("what is heard is not " + quoted(item.subject));
        return;
    }
    for (const Word* word : shownWords(item, {}, vocabulary, why)) judgeCvc(*word, why);
    if (!why.empty()) return;
    const Position position = item.skill.task == Task::first    ? Position::first
                              : item.skill.task == Task::middle ? Position::middle
                                                                : Position::last;
    if (item.turns_on != TurnsOn{sound, position}) why.push_back("it turns on something else");
    const std::size_t place = position == Position::first    ? 0
                              : position == Position::middle ? 1
                                                             : 2;
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& word = *vocabulary.word(item.choices[i].id);
        const bool has = word.sounds[place].phoneme == *phoneme;
        if (has != (i == item.answer))
            why.push_back(quoted(word.id) + (has ? " has the sound too" : " has not the sound"));
        if (mayBe(word.sounds, place, *phoneme))
            why.push_back(quoted(word.id) + " has the sound in some accents");
    }
    if (position != Position::middle) return;
    const Pronunciation& right = vocabulary.word(item.choices[item.answer].id)->sounds;
    for (std::size_t other = 0; other < speech::kPhonemeCount; ++other)
        if (mayBe(right, place, static_cast<speech::Phoneme>(other)))
            why.push_back("the vowel of the right word is another one in some accents");
}

enum class Verdict { yes, no, unsure };

/// Perfect rhymes rhyme; words apart in their rhyming part do not, unless many say those alike.
Verdict verdict(const Word& a, const Word& b) {
    const RhymeKind kind = speech::rhymeKind(a.sounds, b.sounds);
    if (kind == RhymeKind::perfect) return Verdict::yes;
    const bool alike =
        speech::saidAlikeByMany(speech::rhymingPart(a.sounds), speech::rhymingPart(b.sounds));
    return kind == RhymeKind::none && !alike ? Verdict::no : Verdict::unsure;
}

bool turnsOnRimeOf(const Item& item, const Word& word) {
    return item.turns_on == TurnsOn{speech::ipa(speech::rhymingPart(word.sounds)), Position::rime};
}

/// The words of the parts, in their order; empty, with the reason, when one is none.
std::vector<const Word*> heardWords(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    std::vector<const Word*> words;
    for (const Part& part : item.parts) {
        const Word* word = part.clip.substr(0, 5) == "word:"
                               ? vocabulary.word(std::string_view(part.clip).substr(5))
                               : nullptr;
        if (word == nullptr || word->sounds.empty()) {
            why.push_back(quoted(part.clip) + " is no word of the unit");
            return {};
        }
        words.push_back(word);
    }
    return words;
}

void judgeRhymeJudge(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const auto words = heardWords(item, vocabulary, why);
    if (words.size() != 2 || words[0]->id != item.subject) {
        why.push_back("two words are not heard, or the first is not " + quoted(item.subject));
        return;
    }
    if (item.choices.size() != 2 || item.choices[0].id != "yes" || item.choices[1].id != "no") {
        why.push_back("its choices are not yes and no");
        return;
    }
    for (const Word* word : words)
        if (word->picture.empty()) why.push_back(quoted(word->id) + " has no picture");
    const Verdict rhyme = verdict(*words[0], *words[1]);
    if (rhyme == Verdict::unsure) why.push_back("whether they rhyme depends");
    if ((rhyme == Verdict::yes) != (item.answer == 0)) why.push_back("the answer is wrong");
    if (!turnsOnRimeOf(item, *words[0])) why.push_back("it does not turn on the first one's rime");
}

void judgeRhymePick(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const auto heard = heardWords(item, vocabulary, why);
    if (heard.size() != 1 || heard[0]->id != item.subject) {
        why.push_back("what is heard is not " + quoted(item.subject));
        return;
    }
    if (shownWords(item, std::vector{item.subject}, vocabulary, why).empty()) return;
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& word = *vocabulary.word(item.choices[i].id);
        const Verdict wanted = i == item.answer ? Verdict::yes : Verdict::no;
        if (word.id == item.subject || verdict(*heard[0], word) != wanted)
            why.push_back(quoted(word.id) +
                          (i == item.answer ? " does not surely rhyme" : " may rhyme too"));
    }
    if (!turnsOnRimeOf(item, *heard[0])) why.push_back("it does not turn on the rime");
}

void judgeOddOne(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const auto heard = heardWords(item, vocabulary, why);
    if (shownWords(item, {}, vocabulary, why).empty()) return;
    if (heard.size() != 3 || item.choices.size() != 3) {
        why.push_back("there are not three words");
        return;
    }
    for (std::size_t i = 0; i < 3; ++i)
        if (heard[i]->id != item.choices[i].id) why.push_back("what is heard is not what is shown");
    const Word& odd = *heard[item.answer];
    if (odd.id != item.subject) why.push_back("it is not about the odd one");
    const Word &a = *heard[item.answer == 0 ? 1 : 0], &b = *heard[item.answer == 2 ? 1 : 2];
    if (verdict(a, b) != Verdict::yes)
        why.push_back(quoted(a.id) + " and " + quoted(b.id) + " do not surely rhyme");
    if (verdict(odd, a) != Verdict::no || verdict(odd, b) != Verdict::no)
        why.push_back(quoted(odd.id) + " is not surely the odd one");
    if (!turnsOnRimeOf(item, a)) why.push_back("it does not turn on the rime of the pair");
}

}  // namespace

void judgePick(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    switch (item.skill.task) {
        case Task::rhyme_judge:
            return judgeRhymeJudge(item, vocabulary, why);
        case Task::rhyme_pick:
            return judgeRhymePick(item, vocabulary, why);
        case Task::odd_one_out:
            return judgeOddOne(item, vocabulary, why);
        default:
            return judgeSoundPick(item, vocabulary, why);
    }
}

}  // namespace wrenlet::exercise::fairness
