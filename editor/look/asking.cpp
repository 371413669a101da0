#include "editor/look/asking.hpp"

#include <algorithm>
#include <array>

#include "content/exercise/letter_table.hpp"
#include "content/speech/respelling.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Item;
using exercise::Mechanic;
using exercise::Part;
using exercise::Position;
using exercise::Task;
using exercise::Unit;
using exercise::Vocabulary;

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

/// To read: a word or a sentence by its id in quotes; a letter without what marks its id.
std::string written(std::string_view id, const Vocabulary& vocabulary) {
    if (const exercise::Word* word = vocabulary.word(id)) return quoted(word->text);
    if (const exercise::Sentence* sentence = vocabulary.sentence(id)) return quoted(sentence->text);
    return std::string(id.substr(id.find(':') + 1));
}

/// To read: a part as it is heard, a word in quotes, sounds in slashes.
std::string written(const Part& part) {
    return part.clip.substr(0, 5) == "word:" ? quoted(part.label) : "/" + part.label + "/";
}

/// To say: a word, sentence, letter or clip by its id.
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

std::string said(const Part& part, const Vocabulary& vocabulary) {
    const std::string text = said(part.clip, vocabulary);
    return text.empty() ? part.label : text;
}

std::string labelsOf(const Item& item, std::string_view between) {
    std::string text;
    for (const Part& part : item.parts)
        text += (text.empty() ? "" : std::string(between)) + part.label;
    return text;
}

std::string partsOf(const Item& item, const Vocabulary& vocabulary, std::string_view between) {
    std::string text;
    for (const Part& part : item.parts)
        text += (text.empty() ? "" : std::string(between)) + said(part, vocabulary);
    return text;
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

std::string nameOf(const std::string& letter_id) {
    const exercise::Letter* letter = exercise::letterById(letter_id);
    return letter == nullptr ? "" : "\u201c" + speech::respelling(letter->name) + "\u201d";
}

/// What a unit's parts are called, and how they are said one by one.
struct Parting {
    const char *parts, *before, *after;
};
Parting partingOf(Unit unit) {
    switch (unit) {
        case Unit::compound:
            return {"words", "Say ", " as its two small words."};
        case Unit::sentence:
            return {"words", "Say the words of ", ", one after the other."};
        case Unit::syllable:
            return {"syllables", "Say ", " one syllable after the other."};
        case Unit::onset_rime:
            return {"parts", "Say ", " in two parts: how it begins, then the rest."};
        case Unit::phoneme:
            return {"sounds", "Say the sounds of ", ", one after the other."};
        default:
            return {"parts", "Say the sounds of ", ", one after the other."};
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

std::string isolationToRead(const Item& item, const Vocabulary& vocabulary) {
    const bool is_sort = exercise::mechanicOf(item) == Mechanic::sort;
    const std::string like =
        is_sort ? written(item.subject, vocabulary) : "/" + item.turns_on.sound + "/";
    switch (item.turns_on.position) {
        case Position::first:
            return "Which one begins " + std::string(is_sort ? "like " : "with ") + like + "?";
        case Position::last:
            return "Which one ends " + std::string(is_sort ? "like " : "in ") + like + "?";
        default:
            return is_sort ? "Which one has the vowel of " + like + "?"
                           : "Which one has " + like + " in the middle?";
    }
}

/// Asked of a word that has the sound: the card of a sort, or the right one of a pick.
Asking isolated(const Item& item, const Vocabulary& vocabulary) {
    const bool is_sort = exercise::mechanicOf(item) == Mechanic::sort;
    const std::string& id = is_sort ? item.subject : item.choices[item.answer].id;
    return {isolationToRead(item, vocabulary),
            {"What is the " + placeName(item.turns_on, vocabulary.word(id)) + " sound in " +
                 said(id, vocabulary) + "?",
             inPlainLetters(item.turns_on.sound)}};
}

Asking changed(const Item& item, const Vocabulary& vocabulary) {
    const std::string read = "Say " + written(item.subject, vocabulary);
    const std::string which = ": which word is it?";
    const std::string say = "Say " + said(item.subject, vocabulary) + ". ";
    const std::string answer = said(item.choices[item.answer].id, vocabulary);
    if (item.parts.size() < 2) return {read + which, {say, answer}};
    const Part& part = item.parts[1];
    const std::string in_words = written(part), aloud = said(part, vocabulary);
    if (item.skill.task == Task::remove)
        return {read + " without " + in_words + which,
                {say + "Now say it without " + aloud + ".", answer}};
    if (item.skill.task == Task::substitute && item.parts.size() > 2)
        return {read + " with " + written(item.parts[2]) + " for " + in_words + which,
                {say + "Change " + aloud + " to " + said(item.parts[2], vocabulary) + ".", answer}};
    const std::string at(where(item.turns_on.position));
    return {read + " with " + in_words + at + which, {say + "Now put " + aloud + at + ".", answer}};
}

Asking ofLetters(const Item& item, const Vocabulary& vocabulary) {
    const std::string read = written(item.subject, vocabulary);
    const std::string subject = said(item.subject, vocabulary);
    const std::string right = said(item.choices[item.answer].id, vocabulary);
    switch (item.skill.task) {
        case Task::name:
            return {
                "Which letter is called " + read + "?",
                {"Show " + right + ". What is its name?", nameOf(item.choices[item.answer].id)}};
        case Task::sound:
            return {"Which sound does the letter " + read + " say?",
                    {"Show " + subject + ". What does it say?", right}};
        case Task::both_sounds:
            return {"Which letter says both " + written(item.parts.front()) + " and " +
                        written(item.parts.back()) + "?",
                    {"Show " + right + ". Say both its sounds, the short one first.",
                     partsOf(item, vocabulary, ", ")}};
        case Task::digraph:
            return {"Which letters say " + written(item.parts.back()) + " in " + read + "?",
                    {"Which letters say " + said(item.parts.back(), vocabulary) + " in " + subject +
                         "?",
                     right}};
        case Task::build:
            return {"Which word do the letters " + labelsOf(item, " + ") + " make?",
                    {"Show " + labelsOf(item, " ") + ". What word do they make?", right}};
        default:
            return {"Which letter says /" + read + "/?",
                    {"Which letter says " + subject + "?", right}};
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

Asking asking(const Item& item, const Vocabulary& vocabulary) {
    if (item.skill.unit == Unit::letter) return ofLetters(item, vocabulary);
    const std::string read = written(item.subject, vocabulary);
    const std::string subject = said(item.subject, vocabulary);
    const std::string right = said(item.choices[item.answer].id, vocabulary);
    const Parting parting = partingOf(item.skill.unit);
    const std::string how_many = "How many " + std::string(parting.parts) + " are in " + read + "?";
    switch (item.skill.task) {
        case Task::count:
            return {how_many,
                    {item.skill.unit == Unit::sentence
                         ? "Say it after me: " + subject + " How many words?"
                         : "Clap " + subject + ". How many syllables?",
                     right}};
        case Task::segment:
            return {how_many,
                    {parting.before + subject + parting.after, partsOf(item, vocabulary, ", ")}};
        case Task::tune:
            return {"Asking or telling: " + read,
                    {"Listen: " + subject + " Is that asking or telling?", right}};
        case Task::blend:
            return {"Which word is " + labelsOf(item, " + ") + "?",
                    {"Put together: " + partsOf(item, vocabulary, " … "), right}};
        case Task::rhyme_judge:
            return {"Do " + written(item.parts.front()) + " and " + written(item.parts.back()) +
                        " rhyme?",
                    {"Do " + said(item.parts.front(), vocabulary) + " and " +
                         said(item.parts.back(), vocabulary) + " rhyme?",
                     right}};
        case Task::rhyme_sort:
        case Task::rhyme_pick:
            return {
                "Which one rhymes with " + read + "?",
                {"Which rhymes with " + subject + ": " + choicesOf(item, vocabulary) + "?", right}};
        case Task::odd_one_out:
            return {"Which one does not rhyme with the others?",
                    {"Which does not rhyme: " + choicesOf(item, vocabulary) + "?", right}};
        case Task::long_short:
            return {"Is the vowel of " + read + " long or short?",
                    {"Is the vowel of " + subject + " long or short?", right}};
        case Task::add:
        case Task::remove:
        case Task::substitute:
            return changed(item, vocabulary);
        default:
            return isolated(item, vocabulary);
    }
}

}  // namespace wrenlet::desk
