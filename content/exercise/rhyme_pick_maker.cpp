#include <algorithm>
#include <map>

#include "content/exercise/foils.hpp"
#include "content/exercise/rhyming.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"

// Rhyme by picking: do these two rhyme, which one rhymes, which one does not. Pairs that rhyme in
// one accent and not in another are neither a target nor a foil.

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;

struct Candidate {
    const Word* word;
    Pronunciation rime;
    std::string name;  // of the rime
    int syllables;
};

/// Words that rhyme with each other, and what else there is.
struct Rhymes {
    std::vector<Candidate> words;
    std::vector<std::vector<std::size_t>> partners;  // of each word
};

Rhymes rhymesIn(const Vocabulary& vocabulary) {
    Rhymes rhymes;
    std::map<std::string, std::vector<std::size_t>> by_rime;
    for (const Word* word : picturedWords(vocabulary)) {
        Pronunciation rime = speech::rhymingPart(word->sounds);
        if (rime.empty()) continue;
        by_rime[soundKey(rime)].push_back(rhymes.words.size());
        std::string name = speech::ipa(rime);
        rhymes.words.push_back(
            {word, std::move(rime), std::move(name), speech::syllableCount(word->sounds)});
    }
    rhymes.partners.resize(rhymes.words.size());
    for (const auto& [key, group] : by_rime)
        for (const std::size_t a : group)
            for (const std::size_t b : group) {
                const Word &one = *rhymes.words[a].word, &other = *rhymes.words[b].word;
                if (a != b && rhymeFor(one, other) == Rhyme::yes && mayStandTogether(one, other))
                    rhymes.partners[a].push_back(b);
            }
    return rhymes;
}

constexpr int kAlikeFirst = 1;  // it begins as the asked word does

bool beginsAlike(const Word& a, const Word& b) {
    return a.sounds.front().phoneme == b.sounds.front().phoneme;
}

/// Every word of as many syllables that surely does not rhyme with `asked`.
std::vector<Foil> nonRhymes(const Rhymes& rhymes, std::size_t asked) {
    const Candidate& word = rhymes.words[asked];
    std::vector<Foil> foils;
    for (const Candidate& other : rhymes.words) {
        if (other.word == word.word || other.syllables != word.syllables) continue;
        if (rhymeFor(*word.word, *other.word) != Rhyme::no) continue;
        const int kind = beginsAlike(*word.word, *other.word) ? kAlikeFirst : 0;
        foils.push_back(
            {other.word->id, other.word, speech::wordDistance(word.rime, other.rime), kind});
    }
    return foils;
}

std::string tookFor(const Pronunciation& rime, const Word& foil) {
    return "took " + inSlashes(speech::rhymingPart(foil.sounds)) + " for " + inSlashes(rime);
}

void addPicks(ItemList& list, const Rhymes& rhymes, std::size_t asked) {
    const Candidate& word = rhymes.words[asked];
    if (rhymes.partners[asked].empty()) return;
    const std::vector<Foil> foils = nonRhymes(rhymes, asked);
    constexpr std::size_t kMostPartners = 3;
    const std::size_t count = std::min(kMostPartners, rhymes.partners[asked].size());
    for (std::size_t i = 0; i < count; ++i) {
        const Word& right = *rhymes.words[rhymes.partners[asked][i]].word;
        Question question;
        question.skill = {Unit::onset_rime, Task::rhyme_pick};
        question.subject = word.word->id;
        question.parts = {partOf(*word.word)};
        question.turns_on = {word.name, Position::rime};
        question.right = {right.id, &right};
        question.beside = {word.word};
        question.means = [&word](const Foil& foil) {
            std::string means = tookFor(word.rime, *foil.word);
            if (foil.kind == kAlikeFirst) means += ": they begin alike";
            return means;
        };
        list.add(question, foils);
    }
}

Item judgeItem(const Candidate& word, const Word& other, bool rhyme) {
    Item item;
    item.skill = {Unit::onset_rime, Task::rhyme_judge};
    item.subject = word.word->id;
    item.parts = {partOf(*word.word), partOf(other)};
    item.turns_on = {word.name, Position::rime};
    const std::string means =
        rhyme ? "did not hear " + inSlashes(word.rime) + " in both"
              : tookFor(word.rime, other) +
                    (beginsAlike(*word.word, other) ? ": they begin alike" : "");
    item.choices = {{"yes", rhyme ? "" : means}, {"no", rhyme ? means : ""}};
    item.answer = rhyme ? 0 : 1;
    item.id = itemId(item);
    return item;
}

/// As many that rhyme as that do not, so that neither answer pays.
void addJudgings(ItemList& list, const Rhymes& rhymes, std::size_t asked) {
    const Candidate& word = rhymes.words[asked];
    const std::vector<Foil> foils = nonRhymes(rhymes, asked);
    const std::uint32_t seed = stableHash(word.word->id);
    for (std::size_t level = 0; level < ItemList::kLevels; ++level) {
        if (level >= rhymes.partners[asked].size()) return;
        const std::size_t partner = rhymes.partners[asked][level];
        // Farther ones first; from the second level on those that sound alike in part.
        std::vector<const Foil*> able;
        for (const Foil& foil : foils)
            if ((nearnessOf(foil.distance) == Nearness::far) == (level == 0) &&
                mayStandTogether(*word.word, *foil.word))
                able.push_back(&foil);
        if (able.empty()) return;
        list.add(level, judgeItem(word, *rhymes.words[partner].word, true));
        list.add(level, judgeItem(word, *able[(seed + level) % able.size()]->word, false));
    }
}

void addOddOnes(ItemList& list, const Rhymes& rhymes, std::size_t first) {
    const Candidate& a = rhymes.words[first];
    const std::vector<Foil> foils = nonRhymes(rhymes, first);
    const std::uint32_t seed = stableHash(a.word->id);
    for (const std::size_t second : rhymes.partners[first]) {
        if (second < first) continue;
        const Word& b = *rhymes.words[second].word;
        std::array<std::size_t, ItemList::kLevels> kept{};
        for (std::size_t i = 0; i < foils.size(); ++i) {
            const Foil& odd = foils[(seed + second + i) % foils.size()];
            const std::size_t level = 2 - static_cast<std::size_t>(nearnessOf(odd.distance));
            if (kept[level] > 0 || rhymeFor(b, *odd.word) != Rhyme::no ||
                !mayStandTogether(*a.word, *odd.word) || !mayStandTogether(b, *odd.word))
                continue;
            ++kept[level];
            Item item;
            item.skill = {Unit::onset_rime, Task::odd_one_out};
            item.subject = odd.word->id;
            item.turns_on = {a.name, Position::rime};
            const auto means = [&](const Word& taken, const Word& mate) {
                std::string text = "did not hear that " + taken.text + " rhymes with " + mate.text;
                if (beginsAlike(mate, *odd.word))
                    text += ": " + mate.text + " and " + odd.word->text + " begin alike";
                return text;
            };
            setChoices(
                item,
                {{odd.word->id, ""}, {a.word->id, means(*a.word, b)}, {b.id, means(b, *a.word)}},
                odd.word->id);
            for (const Choice& choice : item.choices)
                for (const Word* word : {odd.word, a.word, &b})
                    if (word->id == choice.id) item.parts.push_back(partOf(*word));
            list.add(level, std::move(item));
        }
    }
}

}  // namespace

std::vector<Item> makeRhymePicks(const Vocabulary& vocabulary, Task task) {
    const Rhymes rhymes = rhymesIn(vocabulary);
    ItemList list;
    for (std::size_t i = 0; i < rhymes.words.size(); ++i) {
        if (rhymes.partners[i].empty()) continue;
        if (task == Task::rhyme_judge) addJudgings(list, rhymes, i);
        if (task == Task::rhyme_pick) addPicks(list, rhymes, i);
        if (task == Task::odd_one_out) addOddOnes(list, rhymes, i);
    }
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
