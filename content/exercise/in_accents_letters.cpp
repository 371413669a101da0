#include <algorithm>

#include "content/exercise/in_accents_rules.hpp"
#include "content/exercise/letter_table.hpp"

// Letters: their names and sounds stay apart, and what they are taught to say is said so.

namespace wrenlet::exercise::accents {

namespace {

using speech::Pronunciation;

Pronunciation saidAfter(Ear ear, Pronunciation sounds) {
    sounds.insert(sounds.begin(), kPlainVowel);
    Pronunciation heard = speech::inAccent(ear, sounds);
    heard.erase(heard.begin());
    return heard;
}

bool keepsAlone(Ear ear, const Pronunciation& sounds) {
    return speech::sameSounds(saidBefore(ear, sounds), sounds);
}

/// True iff the two are alike at the beginning of a word or at its end.
bool mayBeAlike(Ear ear, const Pronunciation& a, const Pronunciation& b) {
    return speech::sameSounds(saidBefore(ear, a), saidBefore(ear, b)) ||
           speech::sameSounds(saidAfter(ear, a), saidAfter(ear, b));
}

bool maySay(Ear ear, const std::vector<Pronunciation>& list, const Pronunciation& sounds) {
    return std::any_of(list.begin(), list.end(),
                       [&](const Pronunciation& one) { return mayBeAlike(ear, one, sounds); });
}

bool mayEverSay(Ear ear, const Letter& letter, const Pronunciation& sounds) {
    return maySay(ear, letter.taught, sounds) || maySay(ear, letter.also, sounds);
}

/// True iff `fits` each letter that is a wrong choice.
template <class Fits>
bool allFoils(const Item& item, Fits fits) {
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        if (i == item.answer) continue;
        const Letter* letter = letterById(item.choices[i].id);
        if (letter == nullptr || !fits(*letter)) return false;
    }
    return true;
}

bool keepsName(const Item& item, const Letter& asked, Ear ear) {
    const Pronunciation name = speech::inAccent(ear, asked.name);
    return !name.empty() && allFoils(item, [&](const Letter& foil) {
        return !speech::sameSounds(speech::inAccent(ear, foil.name), name);
    });
}

bool keepsSound(const Item& item, const Letter& asked, Ear ear) {
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        if (i == item.answer) continue;
        const auto foil = speech::fromIpa(afterColon(item.choices[i].id));
        if (!foil || mayEverSay(ear, asked, {{*foil}})) return false;
    }
    return keepsAlone(ear, asked.taught.front());
}

bool keepsForSound(const Item& item, const Letter& right, Ear ear) {
    const Pronunciation& asked = right.taught.front();
    return keepsAlone(ear, asked) &&
           allFoils(item, [&](const Letter& foil) { return !mayEverSay(ear, foil, asked); });
}

bool keepsBothSounds(const Item& item, const Letter& right, Ear ear) {
    if (right.taught.size() != 2) return false;
    const Pronunciation &one = right.taught[0], &other = right.taught[1];
    return keepsAlone(ear, one) && keepsAlone(ear, other) &&
           allFoils(item, [&](const Letter& foil) {
               return !mayEverSay(ear, foil, one) || !mayEverSay(ear, foil, other);
           });
}

/// The sound heard alone is the one in the word, and no other pair of letters is taught to say it.
bool keepsDigraph(const Item& item, const Word& word, Ear ear) {
    const Pronunciation heard = speech::inAccent(ear, word.sounds);
    if (heard.empty()) return false;
    const bool first = item.turns_on.position == Position::first;
    const Pronunciation sound{first ? word.sounds.front() : word.sounds.back()};
    return speech::sameSounds({first ? heard.front() : heard.back()}, sound) &&
           allFoils(item, [&](const Letter& foil) { return !maySay(ear, foil.taught, sound); });
}

}  // namespace

bool keepsLetter(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    if (item.skill.task == Task::digraph)
        return keepsDigraph(item, *vocabulary.word(item.subject), ear);
    const Letter* letter = letterById(
        item.skill.task == Task::for_sound ? item.choices[item.answer].id : item.subject);
    if (letter == nullptr) return false;
    switch (item.skill.task) {
        case Task::name:
            return keepsName(item, *letter, ear);
        case Task::sound:
            return keepsSound(item, *letter, ear);
        case Task::for_sound:
            return keepsForSound(item, *letter, ear);
        default:
            return keepsBothSounds(item, *letter, ear);
    }
}

}  // namespace wrenlet::exercise::accents
