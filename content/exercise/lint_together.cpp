#include <algorithm>
#include <map>
#include <set>

#include "content/exercise/lint.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/word_parts.hpp"

// What is to be said of words together: those that a child may take for each other, and those that
// only some accents tell apart.

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;
using Words = std::vector<const Word*>;

constexpr std::size_t kNamed = 6;  // words that a sentence names

std::vector<std::string> idsOf(const Words& words) {
    std::vector<std::string> ids;
    for (const Word* word : words) ids.push_back(word->id);
    return ids;
}

/// As it is written, or by its id where another of them is written so too.
std::string nameIn(const Words& words, const Word& word) {
    const auto same = std::count_if(words.begin(), words.end(),
                                    [&word](const Word* w) { return w->text == word.text; });
    return "\"" + (same > 1 ? word.id : word.text) + "\"";
}

/// "cat", "hat" and "bat"
std::string named(const Words& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size() && i < kNamed; ++i) {
        if (i > 0) text += i + 1 == words.size() ? " and " : ", ";
        text += nameIn(words, *words[i]);
    }
    if (words.size() > kNamed) text += " and " + std::to_string(words.size() - kNamed) + " more";
    return text;
}

Lint lintOf(std::string code, const Words& words, std::string why, std::string way_out) {
    return {std::move(code), idsOf(words), std::move(why), std::move(way_out)};
}

/// Words with one key, in the order of the words; those of a key alone are left out.
template <class KeyOf>
std::vector<Words> sharing(const Words& words, const KeyOf& key_of) {
    std::map<std::string, Words> by_key;
    for (const Word* word : words)
        if (const std::string key = key_of(*word); !key.empty()) by_key[key].push_back(word);
    std::vector<Words> groups;
    for (auto& [key, group] : by_key)
        if (group.size() > 1) groups.push_back(std::move(group));
    const auto place = [&words](const Words& group) {
        return std::find(words.begin(), words.end(), group.front());
    };
    std::sort(groups.begin(), groups.end(),
              [&](const Words& a, const Words& b) { return place(a) < place(b); });
    return groups;
}

void pictures(const Words& words, std::vector<Lint>& found) {
    for (const Words& group : sharing(words, [](const Word& word) { return word.picture; }))
        found.push_back(lintOf("shared-picture", group,
                               named(group) + " have one picture, so a child who is shown it "
                                              "can't know which is meant.",
                               "Give each a picture of its own."));
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t j = i + 1; j < words.size(); ++j) {
            const Word &a = *words[i], &b = *words[j];
            if (a.picture.empty() || b.picture.empty() || a.picture == b.picture) continue;
            if (a.text == b.text || !looksAlike(a.text, b.text)) continue;
            found.push_back(lintOf("looks-alike", {&a, &b},
                                   "A child may call the picture of \"" + a.text + "\" \"" +
                                       b.text + "\", so the two never stand in one item.",
                                   "Keep one of them, or name both pictures together first."));
        }
}

void saidAlike(const Words& words, std::vector<Lint>& found) {
    for (const Words& group :
         sharing(words, [](const Word& word) { return soundKey(word.sounds); }))
        found.push_back(lintOf("said-alike", group,
                               named(group) + " are said alike: by ear nobody can tell which is "
                                              "meant, and they are no rhyme.",
                               "Keep one of them for listening."));
}

/// Groups that an accent makes one of what the dictionary keeps apart. `least` of their words are
/// still told apart there.
template <class PartOf>
void merged(const Words& words, speech::Accent accent, const PartOf& part_of, std::size_t least,
            const std::string& what, std::vector<Lint>& found) {
    const auto key_there = [&](const Word& word) {
        return soundKey(part_of(speech::inAccent(accent, word.sounds)));
    };
    for (const Words& group : sharing(words, key_there)) {
        std::set<std::string> apart, there;
        for (const Word* word : group) {
            apart.insert(soundKey(part_of(word->sounds)));
            there.insert(soundKey(speech::inAccent(accent, word->sounds)));
        }
        if (apart.size() < 2 || there.size() < least) continue;
        found.push_back(lintOf("accent-dependent", group,
                               named(group) + " " + what + " " +
                                   std::string(speech::accentMeaning(accent)) +
                                   ", and not elsewhere.",
                               "They are never set against each other; for what turns on them "
                               "take other words."));
    }
}

void accents(const Words& words, const LintRules& rules, std::vector<Lint>& found) {
    const auto whole = [](Pronunciation sounds) { return sounds; };
    for (const speech::Accent accent : rules.accents) {
        merged(words, accent, whole, 1, "are said alike", found);
        merged(words, accent, speech::rhymingPart, 2, "end alike, so some of them rhyme", found);
    }
}

void clusters(const Words& words, std::vector<Lint>& found) {
    Words several;
    std::size_t single = 0;
    for (const Word* word : words) {
        const auto parts = speech::onsetAndRime(word->sounds);
        if (!parts) continue;
        if (parts->onset.size() == 1) ++single;
        if (parts->onset.size() > 1) several.push_back(word);
    }
    if (several.empty() || single <= several.size()) return;
    const std::string begin = several.size() == 1 ? " begins" : " begin";
    found.push_back(lintOf("cluster-among-singles", several,
                           named(several) + begin +
                               " with several consonants and most other words with one, which is "
                               "much easier to hear. Items never mix the two.",
                           "For first sounds take words with one; for joining sounds add more "
                           "words with several."));
}

}  // namespace

std::vector<Lint> lintTogether(const Vocabulary& vocabulary, const LintRules& rules) {
    Words words;
    for (const Word& word : vocabulary.words)
        if (!word.sounds.empty()) words.push_back(&word);
    std::vector<Lint> found;
    pictures(words, found);
    saidAlike(words, found);
    accents(words, rules, found);
    clusters(words, found);
    return found;
}

}  // namespace wrenlet::exercise
