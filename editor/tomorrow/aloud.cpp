#include "editor/tomorrow/aloud.hpp"

#include <algorithm>
#include <array>

#include "content/exercise/letter_table.hpp"
#include "content/speech/respelling.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Item;
using exercise::Mechanic;
using exercise::Position;
using exercise::Task;
using exercise::Unit;
using exercise::Vocabulary;

/// A word, sentence, letter or clip by its id, as it is said.
std::string said(std::string_view id, const Vocabulary& vocabulary) {
    if (const exercise::Word* word = vocabulary.word(id)) return word->text;
    if (const exercise::Sentence* sentence = vocabulary.sentence(id)) return sentence->text;
    const std::size_t colon = id.find(':');
    if (colon == std::string_view::npos) return std::string(id);
    const std::string_view kind = id.substr(0, colon), name = id.substr(colon + 1);
    if (kind == "word") return said(name, vocabulary);
    if (kind == "sound" || kind == "part") return inPlainLetters(name);
    return std::string(name);
}

std::string said(const exercise::Part& part, const Vocabulary& vocabulary) {
    const std::string text = said(part.clip, vocabulary);
    return text.empty() ? part.label : text;
}

/// "cat, dog or sun"
std::string choicesOf(const Item& item, const Vocabulary& vocabulary) {
    std::string text;
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        if (i > 0) text += i + 1 == item.choices.size() ? " or " : ", ";
        text += said(item.choices[i].id, vocabulary);
    }
    return text;
}

std::string partsOf(const Item& item, const Vocabulary& vocabulary, std::string_view between) {
    std::string text;
    for (const exercise::Part& part : item.parts)
        text += (text.empty() ? "" : std::string(between)) + said(part, vocabulary);
    return text;
}

std::string labelsOf(const Item& item) {
    std::string text;
    for (const exercise::Part& part : item.parts) text += (text.empty() ? "" : " ") + part.label;
    return text;
}

std::string nameOf(const std::string& letter_id) {
    const exercise::Letter* letter = exercise::letterById(letter_id);
    return letter == nullptr ? "" : "\u201c" + speech::respelling(letter->name) + "\u201d";
}

std::string parted(const Item& item, const std::string& subject) {
    switch (item.skill.unit) {
        case Unit::compound:
            return "Say " + subject + " as its two small words.";
        case Unit::syllable:
            return "Say " + subject + " one syllable after the other.";
        case Unit::onset_rime:
            return "Say " + subject + " in two parts: how it begins, then the rest.";
        default:
            return "Say the sounds of " + subject + ", one after the other.";
    }
}

/// "first", "last", "middle"; in a longer word "vowel", or which sound it is.
std::string placeName(const exercise::TurnsOn& turns_on, const exercise::Word* word) {
    if (turns_on.position == Position::first) return "first";
    if (turns_on.position == Position::last) return "last";
    if (word == nullptr || word->sounds.size() == 3) return "middle";
    constexpr std::array<const char*, 6> kNumbers = {"first",  "second", "third",
                                                     "fourth", "fifth",  "sixth"};
    const auto phoneme = speech::fromIpa(turns_on.sound);
    if (phoneme && speech::isVowel(*phoneme)) return "vowel";
    for (std::size_t i = 1; i < std::min(word->sounds.size(), kNumbers.size()); ++i)
        if (speech::ipa(word->sounds[i].phoneme) == turns_on.sound) return kNumbers[i];
    return "middle";
}

std::string_view where(Position position) {
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

/// Asked of a word that has the sound: the card of a sort, or the right one of a pick.
Aloud isolated(const Item& item, const Vocabulary& vocabulary) {
    const bool is_sort = exercise::mechanicOf(item) == Mechanic::sort;
    const std::string& id = is_sort ? item.subject : item.choices[item.answer].id;
    return {"What is the " + placeName(item.turns_on, vocabulary.word(id)) + " sound in " +
                said(id, vocabulary) + "?",
            inPlainLetters(item.turns_on.sound)};
}

Aloud changed(const Item& item, const Vocabulary& vocabulary) {
    const std::string say = "Say " + said(item.subject, vocabulary) + ". ";
    const std::string answer = said(item.choices[item.answer].id, vocabulary);
    if (item.parts.size() < 2) return {say, answer};
    const std::string part = said(item.parts[1], vocabulary);
    if (item.skill.task == Task::remove) return {say + "Now say it without " + part + ".", answer};
    if (item.skill.task == Task::substitute && item.parts.size() > 2)
        return {say + "Change " + part + " to " + said(item.parts[2], vocabulary) + ".", answer};
    return {say + "Now put " + part + std::string(where(item.turns_on.position)) + ".", answer};
}

Aloud ofLetters(const Item& item, const Vocabulary& vocabulary) {
    const std::string subject = said(item.subject, vocabulary);
    const std::string right = said(item.choices[item.answer].id, vocabulary);
    switch (item.skill.task) {
        case Task::name:
            return {"Show " + right + ". What is its name?", nameOf(item.choices[item.answer].id)};
        case Task::sound:
            return {"Show " + subject + ". What does it say?", right};
        case Task::both_sounds:
            return {"Show " + right + ". Say both its sounds, the short one first.",
                    partsOf(item, vocabulary, ", ")};
        case Task::digraph:
            return {
                "Which letters say " + said(item.parts.back(), vocabulary) + " in " + subject + "?",
                right};
        case Task::build:
            return {"Show " + labelsOf(item) + ". What word do they make?", right};
        default:
            return {"Which letter says " + subject + "?", right};
    }
}

}  // namespace

std::string inPlainLetters(std::string_view ipa) {
    std::string letters;
    for (std::size_t at = 0; at < ipa.size();) {
        std::size_t length = std::min<std::size_t>(ipa.size() - at, 6);
        while (length > 0 && !speech::fromIpa(ipa.substr(at, length))) --length;
        if (length == 0) return std::string(ipa);
        letters += speech::plainLetters(*speech::fromIpa(ipa.substr(at, length)));
        at += length;
    }
    return "/" + letters + "/";
}

Aloud aloud(const Item& item, const Vocabulary& vocabulary) {
    const std::string subject = said(item.subject, vocabulary);
    const std::string right = said(item.choices[item.answer].id, vocabulary);
    if (item.skill.unit == Unit::letter) return ofLetters(item, vocabulary);
    switch (item.skill.task) {
        case Task::count:
            return item.skill.unit == Unit::sentence
                       ? Aloud{"Say it after me: " + subject + " How many words?", right}
                       : Aloud{"Clap " + subject + ". How many syllables?", right};
        case Task::segment:
            return {parted(item, subject), partsOf(item, vocabulary, ", ")};
        case Task::tune:
            return {"Listen: " + subject + " Is that asking or telling?", right};
        case Task::blend:
            return {"Put together: " + partsOf(item, vocabulary, " … "), right};
        case Task::rhyme_judge:
            return {"Do " + said(item.parts.front(), vocabulary) + " and " +
                        said(item.parts.back(), vocabulary) + " rhyme?",
                    right};
        case Task::rhyme_sort:
        case Task::rhyme_pick:
            return {"Which rhymes with " + subject + ": " + choicesOf(item, vocabulary) + "?",
                    right};
        case Task::odd_one_out:
            return {"Which does not rhyme: " + choicesOf(item, vocabulary) + "?", right};
        case Task::long_short:
            return {"Is the vowel of " + subject + " long or short?", right};
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return changed(item, vocabulary);
        default:
            return isolated(item, vocabulary);
    }
}

}  // namespace wrenlet::desk
