#include "editor/unit/unit_look.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/in_accents.hpp"
#include "content/exercise/item_maker.hpp"
#include "content/exercise/rude.hpp"
#include "content/exercise/sentence.hpp"
#include "content/exercise/tune.hpp"
#include "content/speech/respelling.hpp"
#include "content/speech/spelling.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"
#include "editor/look/wording.hpp"
#include "editor/unit/to_look_at.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Item;

std::string joined(const std::vector<std::string>& all, std::string_view between) {
    std::string text;
    for (const std::string& one : all) text += (text.empty() ? "" : std::string(between)) + one;
    return text;
}

std::string spacedIpa(const speech::Pronunciation& sounds) {
    std::string text;
    for (const speech::Sound& sound : sounds) {
        if (!text.empty()) text += ' ';
        text += speech::ipa(sound.phoneme);
    }
    return text;
}

std::vector<SoundCount> soundsIn(const std::vector<Item>& items) {
    using exercise::Task;
    std::map<speech::Phoneme, std::size_t> counts;
    for (const Item& item : items) {
        const Task task = item.skill.task;
        const bool asks = item.skill.unit == exercise::Unit::phoneme &&
                          (task == Task::first || task == Task::last || task == Task::middle);
        if (!asks) return {};
        if (const auto sound = speech::fromIpa(item.turns_on.sound)) ++counts[*sound];
    }
    std::vector<SoundCount> sounds;
    for (const auto& [sound, count] : counts)
        sounds.push_back({std::string(speech::ipa(sound)), count});
    return sounds;
}

void addItems(UnitLook& look, const pack::Unit& unit, const LookingGlass& glass) {
    std::vector<std::string> off = unit.items_off;
    std::sort(off.begin(), off.end());
    pack::Unit all_asked = unit;
    all_asked.items_off.clear();
    for (const exercise::SkillRow& row : exercise::skillTable()) {
        SkillLook skill;
        skill.skill = row.skill;
        skill.off = std::find(unit.skills_off.begin(), unit.skills_off.end(), row.id) !=
                    unit.skills_off.end();
        std::vector<Item> items = exercise::holdingIn(
            exercise::withoutRude(exercise::makeItems(look.vocabulary, row.skill), look.vocabulary,
                                  glass.blocked),
            look.vocabulary, unit.accents);
        skill.made = items.size();
        skill.sounds = soundsIn(items);
        skill.first = look.items.size();
        for (Item& item : pack::withoutLeftOut(std::move(items), all_asked)) {
            const bool is_off = std::binary_search(off.begin(), off.end(), item.id);
            if (is_off)
                look.left_out.push_back({std::move(item), look.items.size()});
            else
                look.items.push_back(std::move(item));
        }
        skill.items = look.items.size() - skill.first;
        look.skills.push_back(skill);
    }
}

/// For each word the groups that ask it, and for rhymes and changes the words it goes with.
struct Serving {
    std::array<bool, kWordGroups> groups{};
    std::set<std::string> rhymes, changes;
};

std::map<std::string, Serving> servingOf(const UnitLook& look) {
    std::map<std::string, Serving> all;
    for (const Item& item : look.items) {
        const auto group = groupOf(item.skill);
        const std::string& answer = item.choices[item.answer].id;
        // the odd one is the one that does not rhyme
        if (!group || item.skill.task == exercise::Task::odd_one_out) continue;
        for (const std::string& id : {item.subject, answer}) {
            if (look.vocabulary.word(id) == nullptr) continue;
            Serving& serving = all[id];
            serving.groups[static_cast<std::size_t>(*group)] = true;
            const std::string& other = id == answer ? item.subject : answer;
            if (other == id || look.vocabulary.word(other) == nullptr) continue;
            if (*group == WordGroup::rhyme) serving.rhymes.insert(wording::word(other));
            if (*group == WordGroup::swap) serving.changes.insert(wording::word(other));
        }
    }
    return all;
}

std::string firstFew(const std::set<std::string>& words) {
    constexpr std::size_t kMost = 3;
    std::vector<std::string> few;
    for (const std::string& word : words)
        if (few.size() < kMost) few.push_back(word);
    return joined(few, ", ");
}

std::string inParts(const WordLook& word, std::size_t sounds) {
    return word.syllables.size() > 1 ? wording::counted(std::int64_t(word.syllables.size()), "beat")
                                     : wording::counted(std::int64_t(sounds), "sound");
}

std::string goodFor(WordGroup group, const WordLook& word, const Serving& serving) {
    const auto plain = [](const speech::Sound& sound) {
        return std::string(speech::ipa(sound.phoneme));
    };
    switch (group) {
        case WordGroup::rhyme:
            return "Rhyme: " + firstFew(serving.rhymes);
        case WordGroup::first:
            return "First sound: " + plain(word.sounds.front());
        case WordGroup::last:
            return "Last sound: " + plain(word.sounds.back());
        case WordGroup::vowel:
            for (const speech::Sound& sound : word.sounds)
                if (speech::isVowel(sound.phoneme)) return "Vowel: " + plain(sound);
            return "Vowel";
        case WordGroup::join:
            return "Join: " + inParts(word, word.sounds.size());
        case WordGroup::part:
            return "Part: " + inParts(word, word.sounds.size());
        case WordGroup::swap:
            return serving.changes.empty() ? "Swap" : "Swap: " + firstFew(serving.changes);
    }
    return "";
}

std::string notAsked(WordGroup group, const WordLook& word, bool left_out) {
    const std::string name(groupName(group));
    if (left_out) return name + ": left out by you";
    const std::string shape = speech::shape(word.sounds);
    if (word.picture.empty() && group != WordGroup::part) return name + ": it has no picture";
    if (group == WordGroup::vowel && word.syllables.size() > 1)
        return name + ": " + wording::counted(std::int64_t(word.syllables.size()), "beat") +
               ", not one";
    if (group == WordGroup::vowel && word.sounds.size() != 3)
        return name + ": " + wording::counted(std::int64_t(word.sounds.size()), "sound") +
               ", not 3";
    if (group == WordGroup::last && word.syllables.size() > 1) return name + ": more than one beat";
    if (group == WordGroup::last && !word.sounds.empty() &&
        speech::isVowel(word.sounds.back().phoneme))
        return name + ": it ends in a vowel";
    if (group == WordGroup::first && !word.sounds.empty() &&
        speech::isVowel(word.sounds.front().phoneme))
        return name + ": it begins with a vowel";
    if (group == WordGroup::rhyme) return name + ": nothing here rhymes with it";
    return name + ": no other words here go with it";
}

void addUses(WordLook& word, const Serving& serving, const pack::UnitWord& typed) {
    word.serves = serving.groups;
    for (std::size_t i = 0; i < kWordGroups; ++i) {
        const auto group = static_cast<WordGroup>(i);
        const std::vector<std::string> skills = skillsOf(group);
        word.left_out[i] = std::all_of(skills.begin(), skills.end(), [&](const std::string& id) {
            return std::find(typed.not_for.begin(), typed.not_for.end(), id) != typed.not_for.end();
        });
        if (word.sounds.empty()) continue;
        if (word.serves[i])
            word.good_for.push_back(goodFor(group, word, serving));
        else
            word.not_asked.push_back(notAsked(group, word, word.left_out[i]));
    }
}

/// The letters of each syllable, a doubled consonant between two shared out: "rab", "bit". Nothing
/// when it is not known which letters say which sounds.
std::vector<std::string> writtenParts(const std::string& text, const speech::Pronunciation& sounds,
                                      const std::vector<speech::Pronunciation>& syllables) {
    const auto spelled = speech::alignSpelling(text, sounds);
    if (!spelled) return {};
    std::vector<std::string> parts(syllables.size());
    std::size_t part = 0, left = syllables.front().size();
    for (const speech::Spelled& one : *spelled) {
        const std::size_t heard = one.sounds.size();
        const bool wraps = one.letters.find('_') != std::string::npos;
        if (wraps || heard > left + (part + 1 < syllables.size() ? syllables[part + 1].size() : 0))
            return {};
        if (heard > 0 && left == 0) left = syllables[++part].size();
        parts[part] += one.letters;
        left -= std::min(heard, left);
    }
    for (std::size_t i = 0; i + 1 < parts.size(); ++i) {
        const std::size_t size = parts[i].size();
        if (size >= 2 && parts[i][size - 1] == parts[i][size - 2] && parts[i + 1].size() > 0) {
            parts[i + 1].insert(parts[i + 1].begin(), parts[i].back());
            parts[i].pop_back();
        }
    }
    return parts;
}

WordLook lookAtWord(const pack::UnitWord& typed, const exercise::Vocabulary& vocabulary) {
    WordLook look;
    look.id = pack::wordId(typed);
    look.text = typed.text;
    const exercise::Word* word = vocabulary.word(look.id);
    if (word == nullptr) return look;
    look.picture = word->picture;
    look.sounds = word->sounds;
    look.syllables = exercise::countedSyllables(vocabulary, *word);
    if (look.syllables.empty()) look.syllables = speech::syllables(word->sounds);
    look.ipa = spacedIpa(word->sounds);
    look.respelled = speech::respelling(word->sounds);
    if (look.syllables.size() < 2) return look;
    std::vector<std::string> parts;
    if (word->compound.empty())
        parts = writtenParts(word->text, word->sounds, look.syllables);
    else
        for (const std::string& part : word->compound) parts.push_back(wording::word(part));
    look.parts = joined(parts, " \u00b7 ");
    return look;
}

void addSentences(UnitLook& look) {
    for (const exercise::Sentence& sentence : look.vocabulary.sentences) {
        const std::size_t words = sentence.words.size();
        look.sentences.push_back(
            {sentence.id, sentence.text, words,
             exercise::tuneOf(sentence) == exercise::Tune::asking,
             words >= exercise::kFewestCounted && words <= exercise::kMostCounted});
    }
}

}  // namespace

const WordLook* UnitLook::word(std::string_view id) const {
    for (const WordLook& word : words)
        if (word.id == id) return &word;
    return nullptr;
}

UnitLook lookAt(const pack::Unit& unit, const LookingGlass& glass) {
    UnitLook look;
    look.vocabulary = pack::readKnownWords(unit, glass.known.lexicon()).vocabulary;
    for (exercise::Word& word : look.vocabulary.words)
        if (!word.picture.empty() && !glass.has_picture(word.picture)) word.picture.clear();
    addItems(look, unit, glass);
    look.needs = pack::voiceNeeds(look.vocabulary, look.items);
    addSentences(look);

    exercise::Vocabulary asked;
    for (const pack::UnitWord& typed : unit.words)
        if (const exercise::Word* word = look.vocabulary.word(pack::wordId(typed)))
            asked.words.push_back(*word);
    const exercise::LintRules rules = exercise::rulesWith(glass.blocked);
    const std::vector<exercise::Lint> together = exercise::lintTogether(asked, rules);
    const std::map<std::string, Serving> serving = servingOf(look);
    for (const pack::UnitWord& typed : unit.words) {
        WordLook word = lookAtWord(typed, look.vocabulary);
        const auto uses = serving.find(word.id);
        addUses(word, uses == serving.end() ? Serving{} : uses->second, typed);
        addWarnings(word, typed, look.vocabulary, together, rules, glass.known);
        for (std::size_t i = 0; i < kWordGroups; ++i) look.words_serving[i] += word.serves[i];
        look.to_look_at += !word.to_look_at.empty();
        look.words.push_back(std::move(word));
    }
    return look;
}

}  // namespace wrenlet::desk
