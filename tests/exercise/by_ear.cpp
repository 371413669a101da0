#include "tests/exercise/by_ear.hpp"

#include <algorithm>
#include <set>

#include "content/speech/accent.hpp"

namespace wrenlet::byear {

using namespace exercise;
using speech::Accent;
using speech::Pronunciation;

using Symbols = std::vector<std::string>;

namespace {

template <Accent... accents>
Pronunciation hear(const Pronunciation& word) {
    Pronunciation said = word;
    ((said = speech::inAccent(accents, said)), ...);
    return said;
}

const Word& wordOf(const Vocabulary& vocabulary, std::string_view id) {
    static const Word kNone;
    const Word* word = vocabulary.word(id);
    return word == nullptr ? kNone : *word;
}

std::string afterColon(const std::string& clip) {
    return clip.substr(clip.find(':') + 1);
}

std::size_t vowels(const Symbols& sounds) {
    return static_cast<std::size_t>(std::count_if(sounds.begin(), sounds.end(), isVowelSymbol));
}

/// From the stressed vowel on, and the consonants right before it.
struct RhymeParts {
    Symbols tail, before;
};

RhymeParts rhymeParts(const Pronunciation& word) {
    std::size_t at = word.size();
    for (std::size_t i = word.size(); i-- > 0;)
        if (word[i].stress == speech::Stress::primary) at = i;
    for (std::size_t i = word.size(); at == word.size() && i-- > 0;)
        if (speech::isVowel(word[i].phoneme)) at = i;
    std::size_t begin = at;
    while (begin > 0 && !speech::isVowel(word[begin - 1].phoneme)) --begin;
    const Symbols all = symbols(word);
    const auto from = all.begin();
    return {
        Symbols(from + static_cast<std::ptrdiff_t>(at), all.end()),
        Symbols(from + static_cast<std::ptrdiff_t>(begin), from + static_cast<std::ptrdiff_t>(at))};
}

enum class Rhyming { yes, no, neither };

Rhyming rhyming(const Pronunciation& a, const Pronunciation& b) {
    const RhymeParts one = rhymeParts(a), other = rhymeParts(b);
    if (one.tail.empty() || other.tail.empty() || one.tail != other.tail) return Rhyming::no;
    return one.before == other.before ? Rhyming::neither : Rhyming::yes;
}

std::string soundAt(const Symbols& sounds, Task task) {
    if (sounds.empty()) return "";
    if (task == Task::first) return sounds.front();
    if (task == Task::last) return sounds.back();
    const auto vowel = std::find_if(sounds.begin(), sounds.end(), isVowelSymbol);
    return vowel == sounds.end() ? "" : *vowel;
}

std::size_t wordsIn(const std::string& text) {
    const auto blanks = std::count(text.begin(), text.end(), ' ');
    return static_cast<std::size_t>(blanks) + 1;
}

/// What comes out when the sounds of `from` are changed as the item says, at the place it says.
std::vector<Pronunciation> soundChanges(const Item& item, const Pronunciation& from) {
    std::vector<Pronunciation> out;
    const auto heard = speech::fromIpa(item.parts.at(1).label);
    const auto put = speech::fromIpa(item.parts.back().label);
    if (!heard || !put) return out;
    const bool adds = item.skill.task == Task::add;
    const std::size_t places = adds ? from.size() + 1 : from.size();
    for (std::size_t i = 0; i < places; ++i) {
        const bool there = item.turns_on.position == Position::first  ? i == 0
                           : item.turns_on.position == Position::last ? i + 1 == places
                                                                      : i > 0 && i + 1 < places;
        if (!there || (!adds && from[i].phoneme != *heard)) continue;
        Pronunciation to = from;
        const auto at = to.begin() + static_cast<std::ptrdiff_t>(i);
        if (adds)
            to.insert(at, {*heard});
        else if (item.skill.task == Task::remove)
            to.erase(at);
        else
            at->phoneme = *put;
        out.push_back(std::move(to));
    }
    return out;
}

/// A syllable put at one end. A single consonant after a short vowel belongs to both syllables, and
/// is said once in the word (pup, pet: puppet); that of "beetle" and of "window" to one alone.
bool joins(Symbols a, const Symbols& b, const Symbols& whole) {
    static const std::set<std::string> kShort = {"æ", "ɛ", "ɪ", "ɑ", "ʌ", "ʊ"};
    Symbols twice = a;
    twice.insert(twice.end(), b.begin(), b.end());
    if (twice == whole) return true;
    if (a.size() < 2 || b.size() < 2 || a.back() != b.front()) return false;
    if (kShort.count(a[a.size() - 2]) == 0 || !isVowelSymbol(b[1])) return false;
    a.insert(a.end(), b.begin() + 1, b.end());
    return a == whole;
}

/// The syllable that is heard alone, stressed as in the word that has it.
Pronunciation syllableAlone(const Item& item, const Vocabulary& vocabulary) {
    const bool adds = item.skill.task == Task::add;
    const Pronunciation& word =
        wordOf(vocabulary, adds ? item.choices[item.answer].id : item.subject).sounds;
    Pronunciation alone;
    for (const std::string& symbol : symbols(item.parts.at(1).label))
        if (const auto phoneme = speech::fromIpa(symbol)) alone.push_back({*phoneme});
    const std::size_t skipped =
        item.turns_on.position == Position::first_part ? 0 : word.size() - alone.size();
    for (std::size_t i = 0; i < alone.size() && skipped + i < word.size(); ++i)
        alone[i].stress = word[skipped + i].stress;
    return alone;
}

bool isRightSyllables(const Item& item, const Vocabulary& vocabulary, Ear ear, std::size_t i) {
    const Symbols from = symbols(ear(wordOf(vocabulary, item.subject).sounds));
    const Symbols to = symbols(ear(wordOf(vocabulary, item.choices[i].id).sounds));
    const Symbols part = symbols(ear(syllableAlone(item, vocabulary)));
    const Symbols &shorter = item.skill.task == Task::add ? from : to,
                  &longer = item.skill.task == Task::add ? to : from;
    return item.turns_on.position == Position::first_part ? joins(part, shorter, longer)
                                                          : joins(shorter, part, longer);
}

/// The parts of a compound that comes out, by ids.
bool isRightCompound(const Item& item, const Vocabulary& vocabulary, std::size_t i) {
    const bool first = item.turns_on.position == Position::first_part;
    const Word& from = wordOf(vocabulary, item.subject);
    const Word& to = wordOf(vocabulary, item.choices[i].id);
    const std::string heard = afterColon(item.parts.at(1).clip);
    const std::string put = afterColon(item.parts.back().clip);
    if (item.skill.task == Task::add)
        return to.compound == (first ? Symbols{put, from.id} : Symbols{from.id, put});
    if (from.compound.size() != 2 || from.compound[first ? 0 : 1] != heard) return false;
    const std::string& rest = from.compound[first ? 1 : 0];
    if (item.skill.task == Task::remove) return to.id == rest;
    return to.compound == (first ? Symbols{put, rest} : Symbols{rest, put});
}

bool isRightChange(const Item& item, const Vocabulary& vocabulary, Ear ear, std::size_t i) {
    if (item.skill.unit == Unit::compound) return isRightCompound(item, vocabulary, i);
    if (item.skill.unit == Unit::syllable) return isRightSyllables(item, vocabulary, ear, i);
    const Symbols to = symbols(ear(wordOf(vocabulary, item.choices[i].id).sounds));
    const auto outcomes = soundChanges(item, wordOf(vocabulary, item.subject).sounds);
    return std::any_of(outcomes.begin(), outcomes.end(),
                       [&](const Pronunciation& one) { return symbols(ear(one)) == to; });
}

/// How many of the unit's parts the ear hears in the word; a compound's words stay as many.
std::size_t partsHeard(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const Symbols heard = symbols(ear(wordOf(vocabulary, item.subject).sounds));
    if (heard.empty()) return 0;
    switch (item.skill.unit) {
        case Unit::syllable:
            return vowels(heard);
        case Unit::onset_rime:
            return vowels(heard) + (isVowelSymbol(heard.front()) ? 0 : 1);
        case Unit::phoneme:
            return heard.size();
        default:
            return item.parts.size();
    }
}

bool isRightLength(const std::string& vowel, const std::string& answer) {
    static const std::set<std::string> kLong = {"eɪ", "i", "aɪ", "oʊ", "u"};
    static const std::set<std::string> kShort = {"æ", "ɛ", "ɪ", "ɑ", "ʌ"};
    return answer == "long" ? kLong.count(vowel) > 0 : kShort.count(vowel) > 0;
}

/// The question for each task, asked of one choice.
bool isRight(const Item& item, const Vocabulary& vocabulary, Ear ear, std::size_t i) {
    const std::string& id = item.choices[i].id;
    const auto heard = [&](std::string_view word) { return ear(wordOf(vocabulary, word).sounds); };
    const bool is_pick = !item.parts.empty() && item.parts.front().clip.substr(0, 6) == "sound:";
    if (item.skill.unit == Unit::letter && item.skill.task != Task::build)
        return isRightLetter(item, vocabulary, ear, i);
    switch (item.skill.task) {
        case Task::count:
            return id == std::to_string(item.skill.unit == Unit::sentence
                                            ? wordsIn(vocabulary.sentence(item.subject)->text)
                                            : partsHeard(item, vocabulary, ear));
        case Task::tune:
            return (id == "asking") == (vocabulary.sentence(item.subject)->text.back() == '?');
        case Task::segment:
            return id == std::to_string(partsHeard(item, vocabulary, ear));
        case Task::blend:
        case Task::build: {
            Symbols said;
            if (item.skill.unit == Unit::compound) {
                for (const Part& part : item.parts) said.push_back(afterColon(part.clip));
                return wordOf(vocabulary, id).compound == said;
            }
            return symbols(heard(id)) == symbols(heard(item.subject));
        }
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return isRightChange(item, vocabulary, ear, i);
        case Task::rhyme_judge:
            return rhyming(heard(item.subject), heard(afterColon(item.parts.at(1).clip))) ==
                   (id == "yes" ? Rhyming::yes : Rhyming::no);
        case Task::odd_one_out: {
            bool odd = true;
            for (const Choice& other : item.choices)
                if (other.id != id) odd &= rhyming(heard(id), heard(other.id)) == Rhyming::no;
            return odd;
        }
        case Task::rhyme_sort:
        case Task::rhyme_pick:
            // Alike from the onset on is no rhyme, and no foil either: it counts as right too.
            return rhyming(heard(item.subject), heard(id)) != Rhyming::no;
        case Task::long_short:
            return isRightLength(soundAt(symbols(heard(item.subject)), Task::middle), id);
        default:
            return soundAt(symbols(heard(id)), item.skill.task) ==
                   (is_pick ? item.parts.front().label
                            : soundAt(symbols(heard(item.subject)), item.skill.task));
    }
}

// --- what the item says of itself ---

/// The word in which the sound that is turned on stands.
std::string decidingWord(const Item& item) {
    const bool adds = item.skill.task == Task::add || item.skill.task == Task::substitute;
    const bool is_pick = !item.parts.empty() && item.parts.front().clip == item.subject;
    return adds || is_pick ? item.choices[item.answer].id : item.subject;
}

bool turnsWhereItSays(const Item& item, const Vocabulary& vocabulary) {
    const std::string& sound = item.turns_on.sound;
    const std::string& answer = item.choices[item.answer].id;
    const Symbols said = symbols(wordOf(vocabulary, decidingWord(item)).sounds);
    switch (item.turns_on.position) {
        case Position::first:
            return !said.empty() && said.front() == sound;
        case Position::last:
            return !said.empty() && said.back() == sound;
        case Position::middle:
            return said.size() > 2 &&
                   std::find(said.begin() + 1, said.end() - 1, sound) != said.end() - 1;
        case Position::rime: {
            const std::string of = item.skill.task == Task::odd_one_out
                                       ? item.choices[item.answer == 0 ? 1 : 0].id
                                       : item.subject;
            return rhymeParts(wordOf(vocabulary, of).sounds).tail == symbols(sound);
        }
        case Position::whole:
            return std::any_of(item.parts.begin(), item.parts.end(),
                               [&](const Part& part) { return part.label == sound; });
        case Position::first_part:
        case Position::last_part:
            return item.parts.size() > 1 && item.parts.back().label == sound;
        case Position::letter:
            return sound == answer || sound == item.subject ||
                   std::any_of(item.parts.begin(), item.parts.end(),
                               [&](const Part& part) { return "letter:" + part.label == sound; });
        default:  // numbers and tunes
            return sound == answer;
    }
}

/// What is heard is there, and says together what it is part of.
void judgeParts(const Item& item, const Vocabulary& vocabulary, std::vector<std::string>& why) {
    std::string said, written;
    for (const Part& part : item.parts) {
        const std::string kind = part.clip.substr(0, part.clip.find(':'));
        if (kind == "word" && vocabulary.word(afterColon(part.clip)) == nullptr)
            why.push_back("no word says " + part.clip);
        if ((kind == "sound" || kind == "part") && item.skill.task != Task::build &&
            afterColon(part.clip) != part.label)
            why.push_back(part.clip + " is labelled " + part.label);
        said += kind == "sound" || kind == "part" ? afterColon(part.clip) : "";
        written += part.label;
    }
    const Word* word = vocabulary.word(item.subject);
    if (word == nullptr || item.skill.unit == Unit::compound) return;
    const Task task = item.skill.task;
    const bool is_whole = task == Task::blend || task == Task::segment || task == Task::build ||
                          (task == Task::count && item.skill.unit == Unit::syllable);
    if (is_whole && symbols(said) != symbols(word->sounds))
        why.push_back("its parts say /" + said + "/");
    if (task == Task::build && written != word->text) why.push_back("its tiles read " + written);
}

bool isOfWords(const Item& item) {
    const Mechanic mechanic = rowOf(item.skill).mechanic;
    const Task task = item.skill.task;
    if (item.skill.unit == Unit::letter) return task == Task::build;
    return mechanic != Mechanic::split && mechanic != Mechanic::count && task != Task::tune &&
           task != Task::long_short && task != Task::rhyme_judge;
}

/// Who is shown has a picture of its own; who is asked about without being chosen has one too.
void judgePictures(const Item& item, const Vocabulary& vocabulary, std::vector<std::string>& why) {
    std::set<std::string> pictures;
    if (isOfWords(item)) {
        for (const Choice& choice : item.choices) {
            const std::string& picture = wordOf(vocabulary, choice.id).picture;
            if (picture.empty()) why.push_back(choice.id + " has no picture");
            if (!pictures.insert(picture).second) why.push_back("two cards are the same picture");
        }
        return;
    }
    const Word* word = vocabulary.word(item.subject);
    if (word != nullptr && word->picture.empty()) why.push_back(word->id + " has no picture");
}

/// Empty iff there is enough of the item to ask its question.
std::string whyNothingToAsk(const Item& item, const Vocabulary& vocabulary) {
    if (item.answer >= item.choices.size() || item.choices.size() < 2) return "no answer";
    const bool is_sentence = item.skill.unit == Unit::sentence;
    if (is_sentence && vocabulary.sentence(item.subject) == nullptr) return "no such sentence";
    const bool needs_parts =
        rowOf(item.skill).mechanic == Mechanic::change || item.skill.task == Task::rhyme_judge;
    return needs_parts && item.parts.size() < 2 ? "too little is heard" : "";
}

}  // namespace

std::vector<NamedEar> ears() {
    return {{"the dictionary's", hear<>},
            {"cot-caught", hear<Accent::cot_caught>},
            {"before-r", hear<Accent::before_r>},
            {"pin-pen", hear<Accent::pin_pen>},
            {"all three", hear<Accent::cot_caught, Accent::before_r, Accent::pin_pen>}};
}

std::vector<OtherEar> otherEars() {
    using enum Accent;
    return {{{"th-fronting", hear<th_fronting>}, {th_fronting}},
            {{"th-stopping", hear<th_stopping>}, {th_stopping}},
            {{"foot-strut", hear<foot_strut>}, {foot_strut}},
            {{"non-rhotic", hear<non_rhotic>}, {non_rhotic}},
            {{"th-fronting, foot-strut and non-rhotic", hear<th_fronting, foot_strut, non_rhotic>},
             {th_fronting, foot_strut, non_rhotic}},
            {{"th-stopping, foot-strut and non-rhotic", hear<th_stopping, foot_strut, non_rhotic>},
             {th_stopping, foot_strut, non_rhotic}}};
}

std::vector<std::string> wrongsTo(const NamedEar& ear, const Item& item,
                                  const Vocabulary& vocabulary) {
    if (const std::string broken = whyNothingToAsk(item, vocabulary); !broken.empty())
        return {broken};
    std::vector<std::string> why;
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (isRight(item, vocabulary, ear.hear, i) != (i == item.answer))
            why.push_back(item.choices[i].id + (i == item.answer ? " is wrong" : " is right") +
                          " to this ear: " + ear.name);
    return why;
}

std::vector<std::string> wrongs(const Item& item, const Vocabulary& vocabulary) {
    if (const std::string broken = whyNothingToAsk(item, vocabulary); !broken.empty())
        return {broken};
    std::vector<std::string> why;
    for (const NamedEar& ear : ears())
        for (std::string& one : wrongsTo(ear, item, vocabulary)) why.push_back(std::move(one));
    judgeParts(item, vocabulary, why);
    judgePictures(item, vocabulary, why);
    if (!turnsWhereItSays(item, vocabulary))
        why.push_back("/" + item.turns_on.sound + "/ does not stand there");
    return why;
}

Symbols symbols(const Pronunciation& sounds) {
    Symbols all;
    for (const speech::Sound& sound : sounds) all.emplace_back(speech::ipa(sound.phoneme));
    return all;
}

Symbols symbols(std::string_view ipa) {
    Symbols all;
    while (!ipa.empty()) {
        std::size_t length = std::min<std::size_t>(ipa.size(), 6);
        while (length > 1 && !speech::fromIpa(ipa.substr(0, length))) --length;
        all.emplace_back(ipa.substr(0, length));
        ipa.remove_prefix(length);
    }
    return all;
}

bool isVowelSymbol(std::string_view symbol) {
    static const std::set<std::string_view> kVowels = {"ɑ", "æ",  "ʌ", "ɔ", "aʊ", "ə",  "aɪ", "ɛ",
                                                       "ɝ", "eɪ", "ɪ", "i", "oʊ", "ɔɪ", "ʊ",  "u"};
    return kVowels.count(symbol) > 0;
}

}  // namespace wrenlet::byear
