#include <algorithm>

#include "content/exercise/fairness_rules.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise::fairness {

namespace {

using speech::Phoneme;
using speech::Pronunciation;

std::string afterColon(const std::string& clip) {
    return clip.substr(clip.find(':') + 1);
}

/// The sound of a part that is one; nothing otherwise.
std::optional<Phoneme> soundOf(const Part& part) {
    if (part.clip.substr(0, 6) != "sound:") return std::nullopt;
    return speech::fromIpa(afterColon(part.clip));
}

/// One outcome of doing what is asked to a word, and whether it is done where it is asked.
struct Outcome {
    Pronunciation sounds;
    bool there;
};

Position positionAt(std::size_t place, std::size_t size) {
    return place == 0 ? Position::first : place + 1 == size ? Position::last : Position::middle;
}

/// Every way in which the sounds can be put in, taken away or changed, wherever.
std::vector<Outcome> outcomes(const Item& item, const Pronunciation& from) {
    std::vector<Outcome> found;
    const auto first = soundOf(item.parts[1]);
    const auto last = soundOf(item.parts.back());
    if (!first || !last) return {};
    if (item.skill.task == Task::add) {
        for (std::size_t i = 0; i <= from.size(); ++i) {
            Pronunciation to = from;
            to.insert(to.begin() + static_cast<std::ptrdiff_t>(i), {*first});
            found.push_back({to, positionAt(i, to.size()) == item.turns_on.position});
        }
        return found;
    }
    for (std::size_t i = 0; i < from.size(); ++i) {
        if (from[i].phoneme != *first) continue;
        Pronunciation to = from;
        if (item.skill.task == Task::remove)
            to.erase(to.begin() + static_cast<std::ptrdiff_t>(i));
        else
            to[i].phoneme = *last;
        found.push_back({to, positionAt(i, from.size()) == item.turns_on.position});
    }
    return found;
}

/// RF.K.2.e: single sounds in simple, one-syllable words.
void judgeSounds(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word& from = *vocabulary.word(item.subject);
    const auto all = outcomes(item, from.sounds);
    if (all.empty()) {
        why.push_back("the sound does not stand in " + quoted(from.id));
        return;
    }
    if (item.skill.task != Task::add && all.size() > 1)
        why.push_back("the sound stands twice in " + quoted(from.id));
    if (item.turns_on.sound != afterColon(item.parts.back().clip))
        why.push_back("it turns on another sound");
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& word = *vocabulary.word(item.choices[i].id);
        if (i == item.answer) {
            const bool comes_out = std::any_of(all.begin(), all.end(), [&](const Outcome& one) {
                return one.there && speech::sameSounds(one.sounds, word.sounds);
            });
            if (!comes_out) why.push_back(quoted(word.id) + " does not come out");
            continue;
        }
        for (const Outcome& one : all)
            if (speech::saidAlikeByMany(one.sounds, word.sounds))
                why.push_back(quoted(word.id) + " comes out too");
    }
    for (const Word* word : {&from, vocabulary.word(item.choices[item.answer].id)})
        if (speech::syllableCount(word->sounds) != 1 || speech::countVaries(word->sounds))
            why.push_back(quoted(word->id) + " is not surely one syllable");
}

void judgeSyllables(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word& from = *vocabulary.word(item.subject);
    const Word& to = *vocabulary.word(item.choices[item.answer].id);
    const bool adds = item.skill.task == Task::add;
    const Word &longer = adds ? to : from, &shorter = adds ? from : to;
    const auto syllables = speech::syllables(longer.sounds);
    const bool first = item.turns_on.position == Position::first_part;
    if (!first && item.turns_on.position != Position::last_part)
        why.push_back("it does not say which syllable");
    if (syllables.size() < 2) {
        why.push_back(quoted(longer.id) + " has not two syllables");
        return;
    }
    Pronunciation part = first ? syllables.front() : syllables.back();
    Pronunciation whole = first ? part : shorter.sounds;
    const Pronunciation& rest = first ? shorter.sounds : part;
    whole.insert(whole.end(), rest.begin(), rest.end());
    if (!speech::sameSounds(whole, longer.sounds))
        why.push_back(quoted(to.id) + " does not come out");
    // A consonant that belongs to both syllables is heard in both: pup, pet.
    const bool shared = speech::isAmbisyllabic(longer.sounds) && syllables.size() == 2 && !first &&
                        speech::ipa(syllables.front().back().phoneme) != "ŋ";
    if (shared) part.insert(part.begin(), syllables.front().back());
    if (item.parts[1].label != speech::ipa(part) || item.turns_on.sound != speech::ipa(part))
        why.push_back("/" + item.parts[1].label + "/ is not that syllable");
    if (speech::countVaries(longer.sounds) || (speech::isAmbisyllabic(longer.sounds) && !shared) ||
        !longer.compound.empty())
        why.push_back("where the syllables of " + quoted(longer.id) + " end is not sure");
}

/// The compound with the part at one end put in, taken away or changed, by ids.
std::vector<std::string> partsAfter(const Item& item, const Word& from) {
    const bool first = item.turns_on.position == Position::first_part;
    std::vector<std::string> parts = from.compound.empty() ? std::vector{from.id} : from.compound;
    const std::string heard = afterColon(item.parts[1].clip);
    if (item.skill.task == Task::add) {
        parts = {from.id};
        parts.insert(first ? parts.begin() : parts.end(), heard);
        return parts;
    }
    std::string& part = first ? parts.front() : parts.back();
    if (part != heard) return {};
    if (item.skill.task == Task::substitute)
        part = afterColon(item.parts[2].clip);
    else
        parts.erase(first ? parts.begin() : parts.end() - 1);
    return parts;
}

void judgeCompounds(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const Word& from = *vocabulary.word(item.subject);
    const std::vector<std::string> parts = partsAfter(item, from);
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Word& word = *vocabulary.word(item.choices[i].id);
        const bool comes_out =
            word.compound == parts || (parts.size() == 1 && word.id == parts.front());
        if (comes_out != (i == item.answer))
            why.push_back(quoted(word.id) + (comes_out ? " comes out too" : " does not come out"));
    }
    for (const Word* word : {&from, vocabulary.word(item.choices[item.answer].id)}) {
        std::vector<Pronunciation> sounds;
        for (const std::string& id : word->compound)
            if (const Word* part = vocabulary.word(id)) sounds.push_back(part->sounds);
        if (!word->compound.empty() && !speech::joinsTo(sounds, word->sounds))
            why.push_back(quoted(word->id) + " does not sound like its parts");
    }
    const Word* last = vocabulary.word(afterColon(item.parts.back().clip));
    if (last == nullptr || last->text != item.turns_on.sound)
        why.push_back("it turns on another part");
}

}  // namespace

void judgeChange(const Item& item, const Vocabulary& vocabulary, Reasons& why) {
    const std::size_t parts = item.skill.task == Task::substitute ? 3 : 2;
    if (item.parts.size() != parts || item.parts[0].clip != wordClip(item.subject)) {
        why.push_back("its parts are not the word and what happens to it");
        return;
    }
    const Word* from = vocabulary.word(item.subject);
    if (from == nullptr || from->sounds.empty()) {
        why.push_back(quoted(item.subject) + " is not a word of the unit with sounds");
        return;
    }
    // What is begun with is heard and is no card, so it may look like one of them.
    const auto shown = shownWords(item, {}, vocabulary, why);
    if (shown.empty()) return;
    for (const Word* word : shown)
        if (word != from && !areHeardApart(*word, *from))
            why.push_back(quoted(word->id) + " sounds like " + quoted(from->id));
    if (item.choices[item.answer].id == item.subject)
        why.push_back("nothing happens to " + quoted(item.subject));
    switch (item.skill.unit) {
        case Unit::compound:
            return judgeCompounds(item, vocabulary, why);
        case Unit::syllable:
            return judgeSyllables(item, vocabulary, why);
        default:
            return judgeSounds(item, vocabulary, why);
    }
}

}  // namespace wrenlet::exercise::fairness
