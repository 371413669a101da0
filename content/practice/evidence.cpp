#include "content/practice/evidence.hpp"

#include <algorithm>
#include <tuple>

#include "content/practice/policy.hpp"
#include "content/practice/shield.hpp"

namespace wrenlet::practice {

std::string_view standingWord(Standing standing) {
    switch (standing) {
        case Standing::missed:
            return "missed";
        case Standing::growing:
            return "growing";
        case Standing::steady:
            return "steady";
        case Standing::too_little:
            break;
    }
    return "too little to say";
}

bool Cell::operator<(const Cell& other) const {
    return std::tie(skill, turns_on.sound, turns_on.position) <
           std::tie(other.skill, other.turns_on.sound, other.turns_on.position);
}

Cell cellOf(const Response& response) {
    return {response.skill, response.turns_on};
}

Standing standingOf(int told, const Reading& reading) {
    const bool is_wide = reading.high - reading.low > kWidestRange;
    if (told < kFewestTries || (told < kEnoughTries && is_wide)) return Standing::too_little;
    if (reading.p_missed >= kModel.missed_from) return Standing::missed;
    return reading.p_missed <= kModel.steady_to ? Standing::steady : Standing::growing;
}

void Counts::add(const Response& response, std::span<const std::string> shields) {
    const double chance = 1.0 / std::max<double>(1.0, static_cast<double>(response.choices.size()));
    guess = (guess * seen + chance) / (seen + 1);
    last_day = seen == 0 ? response.day : std::max(last_day, response.day);
    ++seen;
    if (response.isRight()) {
        ++right;
        return;
    }
    ++taken[response.means];
    shielded += isShielded(response.turns_on, response.means, shields) ? 1 : 0;
}

Evidence evidenceOf(const Cell& cell, const Counts& counts, const Mastery& mastery,
                    const HeardCounts& heard) {
    Evidence evidence{counts, {}, {}};
    evidence.reading = readingOf(mastery.known(featuresOf(cell.skill, cell.turns_on)));
    evidence.standing = standingOf(counts.seen + heard.right + heard.wrong, evidence.reading);
    return evidence;
}

}  // namespace wrenlet::practice
