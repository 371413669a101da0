#include "editor/tryout/find_more.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/lint.hpp"

namespace wrenlet::desk {

namespace {

using exercise::Task;
using exercise::Word;

constexpr std::size_t kMostOffers = 12;
constexpr std::string_view kPartOnly = "part";

/// The sounds of a word that the skill looks at.
std::vector<speech::Sound> soundsLookedAt(const Word& word, exercise::Skill skill) {
    if (word.sounds.empty()) return {};
    switch (skill.task) {
        case Task::first:
            return {word.sounds.front()};
        case Task::last:
            return {word.sounds.back()};
        case Task::middle:
        case Task::long_short: {
            std::vector<speech::Sound> vowels;
            for (const speech::Sound& sound : word.sounds)
                if (speech::isVowel(sound.phoneme)) vowels.push_back(sound);
            return vowels;
        }
        default:
            return word.sounds;
    }
}

bool hasSound(const Word& word, exercise::Skill skill, std::string_view ipa) {
    const auto sounds = soundsLookedAt(word, skill);
    return std::any_of(sounds.begin(), sounds.end(), [&](const speech::Sound& sound) {
        return speech::ipa(sound.phoneme) == ipa;
    });
}

bool hasTopic(const exercise::ClassroomWord& listed, std::string_view topic) {
    return std::find(listed.topics.begin(), listed.topics.end(), topic) != listed.topics.end();
}

/// The classroom list as far as it is asked for; parts of compounds stay, to be heard.
exercise::Vocabulary asked(const FindCall& call, const KnownWords& known) {
    exercise::Vocabulary list;
    if (!choosesAmongWords(call.skill)) {
        list.sentences = known.classroom().sentences;
        return list;
    }
    std::set<std::string> ids, parts;
    for (const exercise::ClassroomWord& listed : known.listed()) {
        const Word* word = known.classroom().word(listed.id);
        if (word == nullptr || hasTopic(listed, kPartOnly)) continue;
        if (!call.topic.empty() && !hasTopic(listed, call.topic)) continue;
        if (!call.sound.empty() && !hasSound(*word, call.skill, call.sound)) continue;
        ids.insert(word->id);
        parts.insert(word->compound.begin(), word->compound.end());
    }
    for (const Word& word : known.classroom().words) {
        if (ids.count(word.id) == 0 && parts.count(word.id) == 0) continue;
        list.words.push_back(word);
        if (ids.count(word.id) == 0) list.words.back().picture.clear();
    }
    return list;
}

Offer offerOf(const std::string& id, const KnownWords& known) {
    if (const exercise::Sentence* sentence = known.classroom().sentence(id))
        return {id, sentence->text, "", "", "sentence"};
    const Word& word = *known.classroom().word(id);
    Offer offer{id, word.text, speech::ipa(word.sounds), word.picture, ""};
    for (const exercise::ClassroomWord& listed : known.listed())
        if (listed.id == id)
            for (const std::string& topic : listed.topics)
                offer.topics += (offer.topics.empty() ? "" : ", ") + topic;
    return offer;
}

/// The list's words, those first whose topics the unit has most.
std::vector<Word> nearFirst(const FindCall& call, const exercise::Vocabulary& list,
                            const KnownWords& known) {
    std::map<std::string, int> topics, near;
    for (const exercise::ClassroomWord& listed : known.listed())
        if (call.vocabulary.word(listed.id) != nullptr)
            for (const std::string& topic : listed.topics) ++topics[topic];
    for (const exercise::ClassroomWord& listed : known.listed())
        for (const std::string& topic : listed.topics)
            near[listed.id] = std::max(near[listed.id], topics[topic]);
    std::vector<Word> words = list.words;
    std::stable_sort(words.begin(), words.end(),
                     [&](const Word& a, const Word& b) { return near[a.id] > near[b.id]; });
    return words;
}

/// More of the kind, where nothing is lacking: pictured words that are fit for class.
std::vector<std::string> others(const FindCall& call, const exercise::Vocabulary& list,
                                const KnownWords& known, const exercise::LintRules& rules) {
    std::set<std::string> there;
    for (const Word& word : call.vocabulary.words) there.insert(word.text);
    std::vector<std::string> ids;
    for (const Word& word : nearFirst(call, list, known)) {
        if (ids.size() == kMostOffers) break;
        if (word.picture.empty() || !there.insert(word.text).second) continue;
        const auto found = exercise::lintWord(word, list, rules);
        if (std::none_of(found.begin(), found.end(), [](const exercise::Lint& lint) {
                return lint.code == "rude" || lint.code == "rude-remainder";
            }))
            ids.push_back(word.id);
    }
    for (const exercise::Sentence& sentence : list.sentences)
        if (ids.size() < kMostOffers &&
            std::none_of(call.vocabulary.sentences.begin(), call.vocabulary.sentences.end(),
                         [&](const exercise::Sentence& one) { return one.text == sentence.text; }))
            ids.push_back(sentence.id);
    return ids;
}

template <class Key>
std::vector<Key> byCount(const std::map<Key, int>& counts) {
    std::vector<Key> keys;
    for (const auto& [key, count] : counts) keys.push_back(key);
    std::stable_sort(keys.begin(), keys.end(),
                     [&](const Key& a, const Key& b) { return counts.at(a) > counts.at(b); });
    return keys;
}

}  // namespace

std::string_view whereSound(exercise::Skill skill) {
    switch (skill.task) {
        case Task::first:
            return "at the beginning";
        case Task::last:
            return "at the end";
        case Task::middle:
        case Task::long_short:
            return "in the middle";
        default:
            return "in it";
    }
}

bool choosesAmongWords(exercise::Skill skill) {
    return skill.unit != exercise::Unit::sentence;
}

std::vector<std::string> topicsOf(const KnownWords& known) {
    std::map<std::string, int> counts;
    for (const exercise::ClassroomWord& listed : known.listed())
        for (const std::string& topic : listed.topics)
            if (topic != kPartOnly && topic != "little") ++counts[topic];
    return byCount(counts);
}

std::vector<std::string> soundsOf(const KnownWords& known, exercise::Skill skill) {
    std::map<std::string, int> counts;
    for (const Word& word : known.classroom().words) {
        if (word.picture.empty()) continue;
        for (const speech::Sound& sound : soundsLookedAt(word, skill))
            ++counts[std::string(speech::ipa(sound.phoneme))];
    }
    return byCount(counts);
}

Offers findMore(const FindCall& call, const KnownWords& known, const speech::BlockList& blocked) {
    Offers found{call.number, "", {}, false};
    const exercise::Vocabulary list = asked(call, known);
    const exercise::LintRules rules = exercise::rulesWith(blocked);
    const auto lint = exercise::lintSkill(call.vocabulary, call.skill, list, rules);
    std::vector<std::string> ids;
    if (lint) {
        found.why = lint->why;
        ids = lint->suggestions;
        found.together = !ids.empty();
    } else {
        ids = others(call, list, known, rules);
    }
    for (const std::string& id : ids) found.offers.push_back(offerOf(id, known));
    return found;
}

}  // namespace wrenlet::desk
