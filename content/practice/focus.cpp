#include "content/practice/focus.hpp"

#include <algorithm>
#include <string_view>

#include "content/practice/hard_rules.hpp"
#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

/// A skill's first tries before this session, and what guessing alone would have got right.
struct Tally {
    std::string_view skill;
    bool is_pinned = false;
    double seen = 0;
    double right = 0;
    double guessed = 0;

    double known() const {
        const double tries = seen - guessed;  // tries at which guessing would have failed
        return (std::max(0.0, right - guessed) +
                kPolicy.focus_prior_known * kPolicy.focus_prior_tries) /
               (std::max(0.0, tries) + kPolicy.focus_prior_tries);
    }
};

}  // namespace

std::vector<std::string> focusOf(const Situation& situation, const Mastery& mastery) {
    std::vector<Tally> tallies;
    for (const auto& row : exercise::skillTable()) {
        const bool is_offered =
            row.is_played &&
            std::any_of(situation.items.begin(), situation.items.end(),
                        [&](const exercise::Item& item) { return item.skill == row.skill; });
        const bool is_pinned = std::find(situation.pinned.begin(), situation.pinned.end(),
                                         row.id) != situation.pinned.end();
        if (is_offered) tallies.push_back({row.id, is_pinned});
    }
    const auto of = [&](std::string_view skill) -> Tally* {
        const auto found = std::find_if(tallies.begin(), tallies.end(),
                                        [&](const Tally& one) { return one.skill == skill; });
        return found == tallies.end() ? nullptr : &*found;
    };
    for (const auto& [cell, evidence] : mastery.cells())
        if (Tally* tally = of(cell.skill)) {
            tally->seen += evidence.seen;
            tally->right += evidence.right;
            tally->guessed += evidence.guess * evidence.seen;
        }
    for (const Response* response : triesToday(situation))
        if (Tally* tally = of(response->skill)) {
            tally->seen -= 1;
            tally->right -= response->isRight() ? 1 : 0;
            tally->guessed -=
                1.0 / static_cast<double>(std::max<std::size_t>(1, response->choices.size()));
        }
    // Rounded, so that a remainder of adding and subtracting cannot decide.
    const auto rank = [](const Tally& one) { return static_cast<int>(one.known() * 1e6 + 0.5); };
    std::stable_sort(tallies.begin(), tallies.end(), [&](const Tally& a, const Tally& b) {
        if (a.is_pinned != b.is_pinned) return a.is_pinned;
        return rank(a) < rank(b);
    });
    std::vector<std::string> focus;
    for (const Tally& tally : tallies)
        if (focus.size() < static_cast<std::size_t>(kPolicy.focus_skills))
            focus.emplace_back(tally.skill);
    return focus;
}

std::vector<std::string> focusSkills(const Situation& situation) {
    if (situation.mastery) return focusOf(situation, *situation.mastery);
    Mastery mastery;
    for (const Response& response : situation.history) mastery.add(response);
    return focusOf(situation, mastery);
}

}  // namespace wrenlet::practice
