#include "editor/tryout/question_words.hpp"

#include <array>
#include <utility>

namespace wrenlet::desk {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 10> kShort{{
    {"onset-rime.odd-one-out", "The odd one out"},
    {"compound.segment", "Split into words"},
    {"compound.delete", "Take a part away"},
    {"compound.substitute", "Change a part"},
    {"syllable.delete", "Take a beat away"},
    {"syllable.add", "Add a beat"},
    {"letter.sound", "A letter's sound"},
    {"letter.for-sound", "Letter for a sound"},
    {"letter.both-sounds", "A letter's two"},
    {"letter.digraph", "Two letters"},
}};

}  // namespace

std::string choiceText(std::string_view id, const exercise::Vocabulary& vocabulary) {
    if (const exercise::Word* word = vocabulary.word(id)) return word->text;
    if (const exercise::Sentence* sentence = vocabulary.sentence(id)) return sentence->text;
    const std::string name(id.substr(id.find(':') + 1));
    return exercise::isSoundClip(id) ? "/" + name + "/" : name;
}

std::vector<ChoiceLine> choiceLines(const exercise::Item& item,
                                    const exercise::Vocabulary& vocabulary) {
    std::vector<ChoiceLine> lines{{choiceText(item.choices[item.answer].id, vocabulary), "", true}};
    if (exercise::keepsOrder(item)) return lines;
    for (std::size_t i = 0; i < item.choices.size(); ++i)
        if (i != item.answer)
            lines.push_back({choiceText(item.choices[i].id, vocabulary), item.choices[i].means});
    return lines;
}

std::string pictureOf(const exercise::Item& item, const exercise::Vocabulary& vocabulary) {
    for (const std::string& id : {item.subject, item.choices[item.answer].id})
        if (const exercise::Word* word = vocabulary.word(id); word != nullptr)
            if (!word->picture.empty()) return word->picture;
    return "";
}

std::string_view needsText(exercise::Skill skill) {
    using exercise::Task;
    using exercise::Unit;
    const bool is_compound = skill.unit == Unit::compound,
               is_syllable = skill.unit == Unit::syllable;
    switch (skill.task) {
        case Task::count:
            return skill.unit == Unit::sentence
                       ? "It needs sentences of two to eight words."
                       : "It needs words whose beats everyone counts alike.";
        case Task::tune:
            return "It needs sentences that ask or tell.";
        case Task::rhyme_judge:
        case Task::rhyme_sort:
        case Task::odd_one_out:
        case Task::rhyme_pick:
            return "It needs words with pictures that rhyme, and others that do not.";
        case Task::blend:
        case Task::segment:
            if (is_compound) return "It needs words that are made of two words, like rainbow.";
            if (is_syllable) return "It needs words of two or more beats, like rabbit.";
            if (skill.unit == Unit::onset_rime)
                return "It needs words of one beat that begin with a consonant, like cat.";
            return "It needs short words of one beat, like sun.";
        case Task::add:
        case Task::remove:
        case Task::substitute:
            if (is_compound)
                return "It needs words that become one another by a part, like rain and rainbow.";
            if (is_syllable)
                return "It needs words that become one another by a beat, like bee and beaver.";
            return skill.task == Task::substitute
                       ? "It needs words that differ in one sound, like cat and hat."
                       : "It needs words that become one another by a sound, like bow and boat.";
        case Task::first:
            return "It needs words with pictures that begin with different consonants.";
        case Task::last:
            return "It needs words with pictures that end in different consonants.";
        case Task::middle:
            return "It needs words of three sounds with different vowels, like cat and sun.";
        case Task::long_short:
            return "It needs words with long and with short vowels, like bee and hen.";
        case Task::digraph:
            return "It needs words with two letters that make one sound, like fish.";
        case Task::build:
            return "It needs short words that are spelled as they sound, like hen.";
        default:
            return "It needs words that are spelled as they sound, with several letters.";
    }
}

std::string shortName(exercise::Skill skill) {
    const exercise::SkillRow& row = exercise::rowOf(skill);
    for (const auto& [id, name] : kShort)
        if (id == row.id) return std::string(name);
    return std::string(row.name);
}

}  // namespace wrenlet::desk
