#include "content/exercise/family_sorts.hpp"

#include <algorithm>

#include "content/exercise/together.hpp"

namespace wrenlet::exercise {

namespace {

/// All cards of two families whose first words this time are `a` and `b`.
void sortInto(std::vector<Item>& items, const SortItem& item, const Family& family_a, const Word& a,
              const Family& family_b, const Word& b) {
    const auto add = [&](const Family& family, const Word& home, const Word& other) {
        for (const Word* card : family.members)
            if (card != &home && mayStandTogether(*card, home) && mayStandTogether(*card, other))
                items.push_back(item(*card, home, other, family));
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

std::vector<Item> sortFamilies(std::vector<Family> all, const TellApart& tell_apart,
                               const SortItem& item, std::size_t enough) {
    all.erase(std::remove_if(all.begin(), all.end(),
                             [](const Family& family) { return family.members.size() < 2; }),
              all.end());
    std::vector<Item> items;
    if (all.size() < 2) return items;

    std::vector<std::size_t> met(all.size(), 0);  // how often each family was sorted
    const std::size_t rounds = all.size() + all.size() % 2 - 1;
    for (std::size_t round = 0; round < rounds; ++round) {
        for (const auto& [first, second] : meetings(all.size(), round)) {
            const Family &a = all[first], &b = all[second];
            // Twice for each family, so that each of its words is a card once at least.
            const bool needed = std::min(met[first], met[second]) < 2;
            if (!tell_apart(a, b) || (!needed && items.size() >= enough)) continue;
            const std::size_t before = items.size();
            sortInto(items, item, a, *a.members[met[first] % a.members.size()], b,
                     *b.members[met[second] % b.members.size()]);
            if (items.size() == before) continue;
            ++met[first], ++met[second];
        }
    }
    return items;
}

}  // namespace wrenlet::exercise
