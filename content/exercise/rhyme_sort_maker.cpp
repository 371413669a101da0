#include <algorithm>
#include <map>
#include <string>

#include "content/exercise/skill_makers.hpp"
#include "content/exercise/together.hpp"
#include "content/speech/accent.hpp"
#include "content/speech/rhyme.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;
using speech::RhymeKind;

/// Words with pictures that share a rime; any two of them rhyme.
struct Family {
    Pronunciation rime;
    std::string name;  // IPA
    std::vector<const Word*> members;
};

/// Rimes this near are hard to tell apart and are left to later practice: /æt/ and /æp/.
constexpr int kNearRimes = 2;

bool rhymesWithAll(const Word& word, const std::vector<const Word*>& members) {
    return std::all_of(members.begin(), members.end(), [&word](const Word* member) {
        return speech::rhymeKind(word.sounds, member->sounds) == RhymeKind::perfect;
    });
}

/// Families of two members at least, in the order of their first members.
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
    found.erase(std::remove_if(found.begin(), found.end(),
                               [](const Family& family) { return family.members.size() < 2; }),
                found.end());
    return found;
}

bool tellApart(const Family& a, const Family& b) {
    return !speech::saidAlikeByMany(a.rime, b.rime) &&
           speech::wordDistance(a.rime, b.rime) > kNearRimes;
}

Item sortItem(const Word& card, const Word& home, const Word& other, const Family& family) {
    Item item;
    item.skill = {Unit::onset_rime, Task::rhyme_sort};
    item.subject = card.id;
    item.choices = {{home.id, ""},
                    {other.id, "put " + card.text + " with " + other.text + ": the rime /" +
                                   family.name + "/ was not heard"}};
    item.turns_on = {family.name, Position::rime};
    // The heads stand in one order whichever the card belongs to, so that a sort can go on.
    if (other.id < home.id) std::swap(item.choices[0], item.choices[1]);
    item.answer = item.choices[0].id == home.id ? 0 : 1;
    item.id = itemId(item);
    return item;
}

/// All cards of two families whose first words this time are `a` and `b`.
void sortInto(std::vector<Item>& items, const Family& family_a, const Word& a,
              const Family& family_b, const Word& b) {
    const auto add = [&items](const Family& family, const Word& home, const Word& other) {
        for (const Word* card : family.members)
            if (card != &home && mayStandTogether(*card, home) && mayStandTogether(*card, other))
                items.push_back(sortItem(*card, home, other, family));
    };
    if (!mayStandTogether(a, b)) return;
    add(family_a, a, b);
    add(family_b, b, a);
}

/// Who meets whom in each of count - 1 rounds (count, if odd), each family once a round: one stays
/// in place, the others go round the table.
std::vector<std::pair<std::size_t, std::size_t>> meetings(std::size_t count, std::size_t round) {
    const std::size_t seats = count + count % 2;
    const auto seat = [&](std::size_t i) { return i == 0 ? 0 : 1 + (i - 1 + round) % (seats - 1); };
    std::vector<std::pair<std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < seats / 2; ++i) {
        const std::size_t a = seat(i), b = seat(seats - 1 - i);
        if (a < count && b < count) pairs.emplace_back(std::min(a, b), std::max(a, b));
    }
    return pairs;
}

}  // namespace

std::vector<Item> makeRhymeSorts(const Vocabulary& vocabulary) {
    const std::vector<Family> all = families(vocabulary);
    std::vector<Item> items;
    if (all.size() < 2) return items;

    std::vector<std::size_t> met(all.size(), 0);  // how often each family was sorted
    const std::size_t rounds = all.size() + all.size() % 2 - 1;
    for (std::size_t round = 0; round < rounds; ++round) {
        for (const auto& [first, second] : meetings(all.size(), round)) {
            const Family &a = all[first], &b = all[second];
            // Twice for each family, so that each of its words is a card once at least.
            const bool needed = std::min(met[first], met[second]) < 2;
            if (!tellApart(a, b) || (!needed && items.size() >= kEnoughItems)) continue;
            const std::size_t before = items.size();
            sortInto(items, a, *a.members[met[first] % a.members.size()], b,
                     *b.members[met[second] % b.members.size()]);
            if (items.size() == before) continue;
            ++met[first], ++met[second];
        }
    }
    return items;
}

}  // namespace wrenlet::exercise
