#include "content/practice/focus.hpp"

#include <algorithm>

#include "content/practice/policy.hpp"

namespace wrenlet::practice {
namespace {

struct Offered {
    std::string_view skill;
    bool is_pinned = false;
    double to_gain = 0;
};

/// Largest where half is known.
double toGain(std::string_view skill, const Mastery& mastery) {
    const Features features = featuresOf(skill, {});
    const double known = shareKnown(mastery.sum(features.task_ease, features.task()));
    return known * (1 - known);
}

}  // namespace

std::vector<std::string> focusSkills(const QuestionBank& bank, const Mastery& mastery,
                                     std::span<const std::string> pinned) {
    std::vector<Offered> offered;
    for (const auto& row : exercise::skillTable())
        if (bank.offers(row.skill))
            offered.push_back({row.id,
                               std::find(pinned.begin(), pinned.end(), row.id) != pinned.end(),
                               toGain(row.id, mastery)});
    std::stable_sort(offered.begin(), offered.end(), [](const Offered& a, const Offered& b) {
        if (a.is_pinned != b.is_pinned) return a.is_pinned;
        return a.to_gain > b.to_gain;
    });
    std::vector<std::string> focus;
    for (const Offered& one : offered)
        if (focus.size() < static_cast<std::size_t>(kPolicy.focus_skills))
            focus.emplace_back(one.skill);
    return focus;
}

}  // namespace wrenlet::practice
