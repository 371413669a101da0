#include <algorithm>

#include "content/exercise/fairness_rules.hpp"
#include "content/exercise/letter_table.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise::fairness {

namespace {

using speech::Pronunciation;

/// "sound:b" or "part:ks" for sounds, as clips are named.
std::string clipOf(const Pronunciation& sounds) {
    return sounds.size() == 1 ? soundClip(sounds[0].phoneme) : partClip(sounds);
}

bool everSays(const Letter& letter, const std::string& clip) {
    const auto says = [&clip](const Pronunciation& sounds) { return clipOf(sounds) == clip; };
    return std::any_of(letter.taught.begin(), letter.taught.end(), says) ||
           std::any_of(letter.also.begin(), letter.also.end(), says);
}

bool isTaught(const Letter& letter, const std::string& clip) {
    return std::any_of(letter.taught.begin(), letter.taught.end(),
                       [&clip](const Pronunciation& sounds) { return clipOf(sounds) == clip; });
}

/// The letters that are chosen among; empty, with the reason, when one is none.
std::vector<const Letter*> chosenLetters(const Item& item, Reasons& why) {
    std::vector<const Letter*> found;
    for (const Choice& choice : item.choices) {
        const Letter* letter = letterById(choice.id);
        if (letter == nullptr) {
            why.push_back(quoted(choice.id) + " is no letter");
            return {};
        }
        found.push_back(letter);
    }
    return found;
}

void judgeHeard(const Item& item, std::initializer_list<std::string> clips, Reasons& why) {
    const bool same =
        std::equal(item.parts.begin(), item.parts.end(), clips.begin(), clips.end(),
                   [](const Part& part, const std::string& clip) { return part.clip == clip; });
    if (!same) why.push_back("what is heard is not what is asked about");
}

/// RF.K.1.d: letters by their names. No two names are alike, so the asked one alone is right.
void judgeName(const Item& item, Reasons& why) {
    const Letter* asked = letterById(item.subject);
    if (chosenLetters(item, why).empty()) return;
    if (asked == nullptr || asked->name.empty() || item.choices[item.answer].id != asked->id)
        why.push_back("the answer is not the letter that is named");
    else
        judgeHeard(item, {letterNameClip(asked->text)}, why);
}

/// RF.K.3.a: the sound of each consonant.
void judgeSound(const Item& item, Reasons& why) {
    const Letter* asked = letterById(item.subject);
    if (asked == nullptr || std::string_view("aeiou").find(asked->text) != std::string_view::npos) {
        why.push_back(quoted(item.subject) + " is no consonant's letter");
        return;
    }
    judgeHeard(item, {}, why);
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const std::string& clip = item.choices[i].id;
        if (i == item.answer ? clipOf(asked->taught.front()) != clip : everSays(*asked, clip))
            why.push_back(quoted(clip) +
                          (i == item.answer ? " is not its sound" : " is its sound"));
    }
}

void judgeForSound(const Item& item, Reasons& why) {
    const auto chosen = chosenLetters(item, why);
    judgeHeard(item, {item.subject}, why);
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        const bool fits = i == item.answer ? isTaught(*chosen[i], item.subject)
                                           : !everSays(*chosen[i], item.subject);
        if (!fits)
            why.push_back(quoted(chosen[i]->id) +
                          (i == item.answer ? " has not the sound" : " has the sound too"));
    }
}

void judgeBothSounds(const Item& item, Reasons& why) {
    const Letter* asked = letterById(item.subject);
    const auto chosen = chosenLetters(item, why);
    if (chosen.empty() || asked == nullptr || asked->taught.size() != 2 ||
        item.choices[item.answer].id != item.subject) {
        why.push_back("the answer is not a letter of two sounds");
        return;
    }
    const std::string first = clipOf(asked->taught[0]), second = clipOf(asked->taught[1]);
    judgeHeard(item, {first, second}, why);
    for (std::size_t i = 0; i < chosen.size(); ++i)
        if (i != item.answer && everSays(*chosen[i], first) && everSays(*chosen[i], second))
            why.push_back(quoted(chosen[i]->id) + " has both sounds too");
}

/// RF.1.3.a: consonant digraphs.
void judgeDigraph(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word* word = vocabulary.word(item.subject);
    const auto chosen = chosenLetters(item, why);
    if (word == nullptr || word->picture.empty() || word->sounds.empty() || chosen.empty()) {
        why.push_back(quoted(item.subject) + " is no word with a picture");
        return;
    }
    const bool first = item.turns_on.position == Position::first;
    const Pronunciation sound{first ? word->sounds.front() : word->sounds.back()};
    const std::string clip = clipOf(sound);
    judgeHeard(item, {wordClip(word->id), clip}, why);
    if (item.turns_on.sound != speech::ipa(sound)) why.push_back("it turns on another sound");
    for (std::size_t i = 0; i < chosen.size(); ++i) {
        const std::string_view text = chosen[i]->text;
        if (text.size() != 2) why.push_back(quoted(chosen[i]->id) + " is not two letters");
        if (i != item.answer && isTaught(*chosen[i], clip))
            why.push_back(quoted(chosen[i]->id) + " has the sound too");
        if (i != item.answer) continue;
        const std::size_t at =
            first ? 0 : word->text.size() - std::min(word->text.size(), text.size());
        if (word->text.substr(at, text.size()) != text || !isTaught(*chosen[i], clip))
            why.push_back(quoted(chosen[i]->id) + " does not stand there");
    }
}

/// RF.1.3.b: regularly spelled one-syllable words.
void judgeBuild(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const auto shown = shownWords(item, {}, vocabulary, why);
    const Word* word = vocabulary.word(item.subject);
    if (shown.empty() || word == nullptr) return;
    if (item.choices[item.answer].id != item.subject)
        why.push_back("the right choice is not " + quoted(item.subject));
    std::string written, said;
    for (const Part& part : item.parts) {
        const Letter* letter = letterById("letter:" + part.label);
        if (letter == nullptr || !isTaught(*letter, part.clip))
            why.push_back(quoted(part.label) + " is not taught to say " + quoted(part.clip));
        written += part.label;
        said += part.clip.substr(part.clip.find(':') + 1);
    }
    if (written != word->text || said != speech::ipa(word->sounds))
        why.push_back("its letters do not make " + quoted(word->id));
    if (speech::syllableCount(word->sounds) != 1)
        why.push_back(quoted(word->id) + " has more than one syllable");
    for (const Word* other : shown)
        if (other != word && other->text == word->text)
            why.push_back(quoted(other->id) + " is written alike");
    const bool there = std::any_of(item.parts.begin(), item.parts.end(), [&](const Part& part) {
        return "letter:" + part.label == item.turns_on.sound;
    });
    if (!there) why.push_back("it turns on a letter that is not there");
}

}  // namespace

void judgeLetters(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const bool on_subject = item.turns_on == TurnsOn{item.subject, Position::letter};
    const bool on_answer = item.turns_on == TurnsOn{item.choices[item.answer].id, Position::letter};
    switch (item.skill.task) {
        case Task::name:
            judgeName(item, why);
            break;
        case Task::sound:
            judgeSound(item, why);
            break;
        case Task::for_sound:
            judgeForSound(item, why);
            break;
        case Task::both_sounds:
            judgeBothSounds(item, why);
            break;
        case Task::digraph:
            return judgeDigraph(item, vocabulary, why);
        default:
            return judgeBuild(item, vocabulary, why);
    }
    if (!on_subject && !on_answer) why.push_back("it does not turn on its letter");
}

}  // namespace wrenlet::exercise::fairness
