#include "editor/look/asking.hpp"

#include <string_view>

namespace wrenlet::desk {

namespace {

using exercise::Item;
using exercise::Mechanic;
using exercise::Position;
using exercise::Task;
using exercise::Unit;
using exercise::Vocabulary;

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

/// A word or a sentence by its id, as it is written; a letter without what marks its id.
std::string written(std::string_view id, const Vocabulary& vocabulary) {
    if (const exercise::Word* word = vocabulary.word(id)) return quoted(word->text);
    if (const exercise::Sentence* sentence = vocabulary.sentence(id)) return quoted(sentence->text);
    return std::string(id.substr(id.find(':') + 1));
}

/// A part as it is heard: a word in quotes, sounds in slashes.
std::string heard(const exercise::Part& part) {
    return part.clip.substr(0, 5) == "word:" ? quoted(part.label) : "/" + part.label + "/";
}

std::string inARow(const Item& item) {
    std::string text;
    for (const exercise::Part& part : item.parts) text += (text.empty() ? "" : " + ") + part.label;
    return text;
}

std::string_view partsName(Unit unit) {
    switch (unit) {
        case Unit::compound:
        case Unit::sentence:
            return "words";
        case Unit::syllable:
            return "syllables";
        case Unit::phoneme:
            return "sounds";
        default:
            return "parts";
    }
}

std::string isolation(const Item& item, const Vocabulary& vocabulary) {
    const std::string subject = written(item.subject, vocabulary);
    if (exercise::mechanicOf(item) == Mechanic::sort) {
        switch (item.turns_on.position) {
            case Position::first:
                return "Which one begins like " + subject + "?";
            case Position::last:
                return "Which one ends like " + subject + "?";
            default:
                return "Which one has the vowel of " + subject + "?";
        }
    }
    const std::string sound = "/" + item.turns_on.sound + "/";
    switch (item.turns_on.position) {
        case Position::first:
            return "Which one begins with " + sound + "?";
        case Position::last:
            return "Which one ends in " + sound + "?";
        default:
            return "Which one has " + sound + " in the middle?";
    }
}

std::string_view whereAdded(Position position) {
    switch (position) {
        case Position::first:
        case Position::first_part:
            return " at the beginning";
        case Position::last:
        case Position::last_part:
            return " at the end";
        default:
            return " in the middle";
    }
}

std::string change(const Item& item, const Vocabulary& vocabulary) {
    const std::string say = "Say " + written(item.subject, vocabulary);
    const std::string which = ": which word is it?";
    if (item.parts.size() < 2) return say + which;
    const std::string part = heard(item.parts[1]);
    if (item.skill.task == Task::remove) return say + " without " + part + which;
    if (item.skill.task == Task::substitute && item.parts.size() > 2)
        return say + " with " + heard(item.parts[2]) + " for " + part + which;
    return say + " with " + part + std::string(whereAdded(item.turns_on.position)) + which;
}

std::string letters(const Item& item, const Vocabulary& vocabulary) {
    const std::string subject = written(item.subject, vocabulary);
    switch (item.skill.task) {
        case Task::name:
            return "Which letter is called " + subject + "?";
        case Task::sound:
            return "Which sound does the letter " + subject + " say?";
        case Task::both_sounds:
            return "Which letter says both " + heard(item.parts.front()) + " and " +
                   heard(item.parts.back()) + "?";
        case Task::digraph:
            return "Which letters say " + heard(item.parts.back()) + " in " + subject + "?";
        case Task::build:
            return "Which word do the letters " + inARow(item) + " make?";
        default:
            return "Which letter says /" + subject + "/?";
    }
}

}  // namespace

std::string prompt(const Item& item, const Vocabulary& vocabulary) {
    if (item.skill.unit == Unit::letter) return letters(item, vocabulary);
    const std::string subject = written(item.subject, vocabulary);
    const std::string parts(partsName(item.skill.unit));
    switch (item.skill.task) {
        case Task::count:
        case Task::segment:
            return "How many " + parts + " are in " + subject + "?";
        case Task::tune:
            return "Asking or telling: " + subject;
        case Task::blend:
            return "Which word is " + inARow(item) + "?";
        case Task::rhyme_judge:
            return "Do " + heard(item.parts.front()) + " and " + heard(item.parts.back()) +
                   " rhyme?";
        case Task::rhyme_sort:
        case Task::rhyme_pick:
            return "Which one rhymes with " + subject + "?";
        case Task::odd_one_out:
            return "Which one does not rhyme with the others?";
        case Task::long_short:
            return "Is the vowel of " + subject + " long or short?";
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return change(item, vocabulary);
        default:
            return isolation(item, vocabulary);
    }
}

}  // namespace wrenlet::desk
