#include <algorithm>
#include <set>

#include "content/exercise/item_maker.hpp"
#include "content/exercise/lint.hpp"

// Too few words for a skill, and which words of a list would do. The items of all words together
// show which words make items; the fewest of them are taken, and what they give is made to see.

namespace wrenlet::exercise {

namespace {

using Ids = std::set<std::string, std::less<>>;

constexpr std::size_t kMostSuggested = 12;
constexpr std::string_view kWordClip = "word:";

using Questions = std::set<std::pair<std::string, std::string>>;

Questions questionsOf(const std::vector<Item>& items) {
    Questions questions;
    for (const Item& item : items) {
        std::string asked = item.subject;
        for (const Part& part : item.parts) asked += " " + part.clip;
        questions.emplace(std::move(asked), item.choices[item.answer].id);
    }
    return questions;
}

bool has(const Vocabulary& vocabulary, std::string_view id) {
    return vocabulary.word(id) != nullptr || vocabulary.sentence(id) != nullptr;
}

/// What is asked about and chosen among: words with pictures, or sentences.
Ids shownIn(const Item& item, const Vocabulary& list) {
    Ids ids;
    if (has(list, item.subject)) ids.insert(item.subject);
    for (const Choice& choice : item.choices)
        if (has(list, choice.id)) ids.insert(choice.id);
    return ids;
}

Ids partsOf(const Ids& ids, const Vocabulary& list) {
    Ids parts;
    for (const std::string& id : ids)
        if (const Word* word = list.word(id))
            parts.insert(word->compound.begin(), word->compound.end());
    return parts;
}

/// The words and sentences that `item` is made of, but for parts that a compound brings along.
Ids madeOf(const Item& item, const Vocabulary& list) {
    Ids ids = shownIn(item, list);
    const Ids parts = partsOf(ids, list);
    for (const Part& part : item.parts) {
        if (part.clip.compare(0, kWordClip.size(), kWordClip) != 0) continue;
        const std::string id = part.clip.substr(kWordClip.size());
        if (parts.count(id) == 0 && has(list, id)) ids.insert(id);
    }
    return ids;
}

/// True iff letters and their sounds are asked, which words bring and which are no words.
bool asksLetters(Skill skill) {
    return skill.unit == Unit::letter && skill.task != Task::build;
}

class Suggester {
  public:
    Suggester(const Vocabulary& vocabulary, Skill skill, const Vocabulary& list,
              const LintRules& rules)
        : vocabulary_(vocabulary), skill_(skill), list_(list) {
        for (const Word& word : list.words)
            if (!isKnown(word) && !isRude(word, rules)) allowed_.push_back(word.id);
        for (const Sentence& sentence : list.sentences)
            if (!isKnown(sentence)) allowed_.push_back(sentence.id);
    }

    /// True iff these words ask every letter that there is to ask.
    bool hasAll() const {
        const Vocabulary all = with({allowed_.begin(), allowed_.end()});
        return asksLetters(skill_) &&
               questionCount(vocabulary_, skill_) >= questionCount(all, skill_);
    }

    std::vector<std::string> take() {
        const Ids chosen = asksLetters(skill_) ? byTrial() : byItems();
        std::vector<std::string> ids;
        for (const std::string& id : allowed_)
            if (chosen.count(id) > 0) ids.push_back(id);
        return ids;
    }

  private:
    bool isKnown(const Word& word) const {
        return std::any_of(vocabulary_.words.begin(), vocabulary_.words.end(),
                           [&word](const Word& other) {
                               return other.id == word.id || other.text == word.text ||
                                      (!word.picture.empty() && other.picture == word.picture);
                           });
    }

    bool isKnown(const Sentence& sentence) const {
        return std::any_of(vocabulary_.sentences.begin(), vocabulary_.sentences.end(),
                           [&sentence](const Sentence& other) {
                               return other.id == sentence.id || other.text == sentence.text;
                           });
    }

    bool isRude(const Word& word, const LintRules& rules) const {
        if (!rules.is_rude) return false;
        const std::vector<Lint> found = lintWord(word, list_, rules);
        return std::any_of(found.begin(), found.end(), [](const Lint& lint) {
            return lint.code == "rude" || lint.code == "rude-remainder";
        });
    }

    Vocabulary with(const Ids& ids) const {
        return withSuggestions(vocabulary_, {ids.begin(), ids.end()}, list_);
    }

    /// Takes the items that lack the fewest words, until there are enough.
    Ids byItems() const {
        const Vocabulary all = with({allowed_.begin(), allowed_.end()});
        const std::vector<Item> items = makeItems(all, skill_);
        std::vector<Ids> needs;
        for (const Item& item : items) needs.push_back(lackingFor(item, all));
        Ids chosen;
        Questions questions = questionsOf(makeItems(vocabulary_, skill_));
        while (questions.size() < kFewestQuestions) {
            std::size_t best = items.size(), fewest = kMostSuggested + 1 - chosen.size();
            for (std::size_t i = 0; i < items.size(); ++i) {
                const std::size_t more = lacking(needs[i], chosen);
                if (more == 0 || more >= fewest) continue;
                best = i;
                fewest = more;
            }
            if (best == items.size()) break;
            chosen.insert(needs[best].begin(), needs[best].end());
            questions = questionsOf(makeItems(with(chosen), skill_));
        }
        return used(std::move(chosen));
    }

    Ids lackingFor(const Item& item, const Vocabulary& all) const {
        Ids ids;
        for (const std::string& id : madeOf(item, all))
            if (!has(vocabulary_, id)) ids.insert(id);
        return ids;
    }

    static std::size_t lacking(const Ids& needs, const Ids& chosen) {
        return static_cast<std::size_t>(
            std::count_if(needs.begin(), needs.end(),
                          [&chosen](const std::string& id) { return chosen.count(id) == 0; }));
    }

    /// Without those that stand in no item once they are added; none if they bring no question.
    Ids used(Ids chosen) const {
        for (bool again = true; again;) {
            const Vocabulary all = with(chosen);
            Ids standing;
            for (const Item& item : makeItems(all, skill_))
                for (const std::string& id : madeOf(item, all)) standing.insert(id);
            again = false;
            for (auto id = chosen.begin(); id != chosen.end();) {
                const bool stands = standing.count(*id) > 0;
                again = again || !stands;
                id = stands ? std::next(id) : chosen.erase(id);
            }
        }
        if (questionCount(with(chosen), skill_) <= questionCount(vocabulary_, skill_)) return {};
        return chosen;
    }

    /// Takes the word that brings the most questions, until there are enough.
    Ids byTrial() const {
        Ids chosen;
        std::size_t count = questionCount(vocabulary_, skill_);
        while (count < kFewestQuestions && chosen.size() < kMostSuggested) {
            std::size_t most = count;
            std::string best;
            for (const std::string& id : allowed_) {
                const Word* word = list_.word(id);
                if (word == nullptr || word->picture.empty()) continue;
                Ids tried = chosen;
                tried.insert(id);
                const std::size_t now = questionCount(with(tried), skill_);
                if (now <= most) continue;
                most = now;
                best = id;
            }
            if (best.empty()) break;
            chosen.insert(best);
            count = most;
        }
        return chosen;
    }

    const Vocabulary& vocabulary_;
    const Skill skill_;
    const Vocabulary& list_;
    std::vector<std::string> allowed_;
};

std::string spelled(const std::vector<std::string>& ids, const Vocabulary& list) {
    std::string text;
    for (const std::string& id : ids) {
        const Word* word = list.word(id);
        text += (text.empty() ? "" : word != nullptr ? ", " : " ");
        text += word != nullptr ? word->text : list.sentence(id)->text;
    }
    return text;
}

}  // namespace

Vocabulary withSuggestions(const Vocabulary& vocabulary, const std::vector<std::string>& ids,
                           const Vocabulary& list) {
    Vocabulary all = vocabulary;
    Ids there, parts;
    for (const Word& word : vocabulary.words) there.insert(word.id);
    for (const std::string& id : ids) {
        if (const Sentence* sentence = list.sentence(id)) all.sentences.push_back(*sentence);
        const Word* word = list.word(id);
        if (word == nullptr || !there.insert(id).second) continue;
        all.words.push_back(*word);
        parts.insert(word->compound.begin(), word->compound.end());
    }
    for (const std::string& id : parts) {
        const Word* part = list.word(id);
        if (part == nullptr || !there.insert(id).second) continue;
        all.words.push_back(*part);
        all.words.back().picture.clear();
    }
    return all;
}

std::size_t questionCount(const Vocabulary& vocabulary, Skill skill) {
    return questionsOf(makeItems(vocabulary, skill)).size();
}

std::optional<Lint> lintSkill(const Vocabulary& vocabulary, Skill skill, const Vocabulary& list,
                              const LintRules& rules) {
    const std::size_t count = questionCount(vocabulary, skill);
    if (count >= kFewestQuestions) return std::nullopt;
    Suggester suggester(vocabulary, skill, list, rules);
    if (count > 0 && suggester.hasAll()) return std::nullopt;
    const bool sentences = skill.unit == Unit::sentence;
    Lint lint;
    lint.code = kTooFewWords;
    lint.skill = skill;
    lint.why = std::string(sentences ? "These sentences" : "These words") + " give " +
               (count == 0   ? std::string("no question")
                : count == 1 ? std::string("one question")
                             : std::to_string(count) + " questions") +
               " for \"" + std::string(rowOf(skill).name) + "\".";
    lint.suggestions = suggester.take();
    lint.way_out = lint.suggestions.empty()
                       ? "Leave that skill to another unit."
                       : "Add some of the classroom list, or leave that skill to another unit: " +
                             spelled(lint.suggestions, list) + (sentences ? "" : ".");
    return lint;
}

}  // namespace wrenlet::exercise
