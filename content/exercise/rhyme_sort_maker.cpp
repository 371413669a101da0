#include <algorithm>
#include <map>
#include <string>

#include "content/exercise/family_sorts.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/skill_makers.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;
using speech::RhymeKind;

/// Rimes this near are hard to tell apart and are left to later practice: /æt/ and /æp/.
constexpr int kNearRimes = 2;

bool rhymesWithAll(const Word& word, const std::vector<const Word*>& members) {
    return std::all_of(members.begin(), members.end(), [&word](const Word* member) {
        return speech::rhymeKind(word.sounds, member->sounds) == RhymeKind::perfect;
    });
}

/// Words that share a rime, any two of which rhyme; in the order of their first members.
std::vector<Family> families(const Vocabulary& vocabulary) {
    std::vector<Family> found;
    std::map<std::string, std::size_t> places;
    for (const Word& word : vocabulary.words) {
        Pronunciation rime = speech::rhymingPart(word.sounds);
        if (word.picture.empty() || rime.empty()) continue;
        std::string name = speech::ipa(rime);
        const auto [place, is_new] = places.emplace(name, found.size());
        if (is_new) found.push_back({std::move(rime), std::move(name), {}});
        // "leave" beside "believe", or "pear" beside "pair", would be no rhyme.
        Family& family = found[place->second];
        if (rhymesWithAll(word, family.members)) family.members.push_back(&word);
    }
    return found;
}

bool tellApart(const Family& a, const Family& b) {
    return !speech::saidAlikeByMany(a.shared, b.shared) &&
           speech::wordDistance(a.shared, b.shared) > kNearRimes;
}

Item sortItem(const Word& card, const Word& home, const Word& other, const Family& family) {
    Item item;
    item.skill = {Unit::onset_rime, Task::rhyme_sort};
    item.subject = card.id;
    item.turns_on = {family.name, Position::rime};
    const std::string means = "put " + card.text + " with " + other.text + ": the rime /" +
                              family.name + "/ was not heard";
    // In the order of their ids, whichever the card belongs to, so that a sort can go on.
    setChoices(item, {{home.id, ""}, {other.id, means}}, home.id);
    return item;
}

}  // namespace

std::vector<Item> makeRhymeSorts(const Vocabulary& vocabulary) {
    return sortFamilies(families(vocabulary), tellApart, sortItem, kEnoughItems);
}

}  // namespace wrenlet::exercise
