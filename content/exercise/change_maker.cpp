#include <algorithm>
#include <map>

#include "content/exercise/blend_parts.hpp"
#include "content/exercise/changes.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"

// Adding, taking away, changing a part: a word is heard and what happens to it, and the picture of
// what comes out is chosen. Beside it stand the word itself (nothing was done to it), what comes
// out when the other end is changed, and words that sound like the right one.

namespace wrenlet::exercise {

namespace {

enum Kind { kOther, kUnchanged, kOtherPlace, kOtherPart };
constexpr int kTelling = 2;  // how near a foil counts that tells what was done instead

bool sharesAPart(const Word& a, const Word& b) {
    for (std::size_t i = 0; i < std::min(a.compound.size(), b.compound.size()); ++i)
        if (a.compound[i] == b.compound[i]) return true;
    return false;
}

/// Of the same make as the right word: compounds beside compounds, clusters beside clusters, and
/// as many syllables.
bool isFoilFor(const Word& word, const Word& right, Unit unit) {
    if (word.compound.empty() != right.compound.empty()) return false;
    if (unit == Unit::compound && !right.compound.empty()) return true;
    if (speech::syllableCount(word.sounds) != speech::syllableCount(right.sounds)) return false;
    if (speech::countVaries(word.sounds)) return false;
    return unit != Unit::phoneme ||
           (clusterSounds(word.sounds) > 0) == (clusterSounds(right.sounds) > 0);
}

Foil foilFor(const Word& word, const Word& right) {
    if (sharesAPart(word, right)) return {word.id, &word, kTelling, kOtherPart};
    return {word.id, &word, speech::wordDistance(right.sounds, word.sounds), kOther};
}

/// Foils of each word that comes out, worked out once.
class FoilsByAnswer {
  public:
    FoilsByAnswer(const Vocabulary& vocabulary, Unit unit)
        : shown_(picturedWords(vocabulary)), unit_(unit) {}

    const std::vector<Foil>& of(const Word& right) {
        const auto [found, is_new] = foils_.try_emplace(&right);
        if (is_new)
            for (const Word* word : shown_)
                if (word != &right && isFoilFor(*word, right, unit_))
                    found->second.push_back(foilFor(*word, right));
        return found->second;
    }

  private:
    std::vector<const Word*> shown_;
    Unit unit_;
    std::map<const Word*, std::vector<Foil>> foils_;
};

bool contains(const std::vector<const Word*>& words, const Word* word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

std::vector<Foil> foilsFor(const Change& change, const std::vector<Foil>& likely, Task task) {
    std::vector<Foil> foils;
    for (const Foil& foil : likely) {
        // Put in elsewhere it would be right to whoever did not catch where.
        if (contains(change.other_place, foil.word)) continue;
        if (!areHeardApart(*foil.word, *change.from)) continue;
        foils.push_back(foil);
    }
    if (!change.from->picture.empty())
        foils.push_back({change.from->id, change.from, kTelling, kUnchanged});
    if (task == Task::remove)
        for (const Word* word : change.other_place)
            if (!word->picture.empty()) foils.push_back({word->id, word, kTelling, kOtherPlace});
    return foils;
}

std::string otherPlace(const Change& change, Unit unit) {
    const Position position = change.turns_on.position;
    if (unit != Unit::phoneme) return "kept the part to take away";
    return position == Position::first ? "took away another sound, not the first"
           : position == Position::last
               ? "took away another sound, not the last"
               : "took away another sound, not /" + change.turns_on.sound + "/";
}

/// "took coat for bow": the part that the foil has for another.
std::string otherPart(const Word& right, const Word& foil) {
    const auto text = [](const std::string& id) { return id.substr(0, id.find('~')); };
    const std::size_t place = right.compound[0] == foil.compound[0] ? 1 : 0;
    return "took " + text(foil.compound[place]) + " for " + text(right.compound[place]);
}

std::string meansOf(const Change& change, const Foil& foil, Skill skill) {
    if (foil.kind == kUnchanged)
        return skill.task == Task::add      ? "added nothing"
               : skill.task == Task::remove ? "took nothing away"
                                            : "changed nothing";
    if (foil.kind == kOtherPlace) return otherPlace(change, skill.unit);
    if (foil.kind == kOtherPart) return otherPart(*change.to, *foil.word);
    if (skill.unit == Unit::phoneme) {
        const Telling told = soundTelling(change.to->sounds, foil.word->sounds);
        if (told.sharp) return told.means;
    }
    return "took " + foil.word->text + " for " + change.to->text;
}

}  // namespace

std::vector<Item> makeChanges(const Vocabulary& vocabulary, Skill skill) {
    const std::vector<Change> changes =
        skill.unit == Unit::compound   ? compoundChanges(vocabulary, skill.task)
        : skill.unit == Unit::syllable ? syllableChanges(vocabulary, skill.task)
                                       : phonemeChanges(vocabulary, skill.task);
    FoilsByAnswer foils(vocabulary, skill.unit);
    ItemList list;
    for (const Change& change : changes) {
        if (!areHeardApart(*change.from, *change.to)) continue;
        Question question{skill,
                          change.from->id,
                          {partOf(*change.from)},
                          change.turns_on,
                          {change.to->id, change.to},
                          {},
                          [&](const Foil& foil) { return meansOf(change, foil, skill); }};
        question.parts.insert(question.parts.end(), change.parts.begin(), change.parts.end());
        list.add(question, foilsFor(change, foils.of(*change.to), skill.task));
    }
    return list.take(kMostItems);
}

}  // namespace wrenlet::exercise
