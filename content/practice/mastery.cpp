#include "content/practice/mastery.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace wrenlet::practice {
namespace {

double withoutGuessing(double share, double guess) {
    return std::clamp((share - guess) / (1 - guess), 0.0, 1.0);
}

Standing standingOf(const Evidence& evidence) {
    if (evidence.seen < kFewestTries || evidence.high - evidence.low > kWidestRange)
        return Standing::too_little;
    if (evidence.high < kKnownShare) return Standing::missed;
    if (evidence.low >= kKnownShare) return Standing::steady;
    return Standing::growing;
}

}  // namespace

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

Interval wilson(int right, int seen, double z) {
    const double n = seen;
    const double p = right / n;
    const double z2 = z * z;
    const double middle = p + z2 / (2 * n);
    const double half = z * std::sqrt(p * (1 - p) / n + z2 / (4 * n * n));
    const double scale = 1 + z2 / n;
    // At none and at all right the end is exact; the arithmetic would miss it by a rounding.
    return {right == 0 ? 0.0 : (middle - half) / scale,
            right == seen ? 1.0 : (middle + half) / scale};
}

void judge(Evidence& evidence) {
    evidence.low = evidence.middle = 0;
    evidence.high = 1;
    // With a single choice every answer is right and tells nothing.
    if (evidence.seen > 0 && evidence.guess < 1) {
        const Interval raw = wilson(evidence.right, evidence.seen, kRangeZ);
        const double share = static_cast<double>(evidence.right) / evidence.seen;
        evidence.low = withoutGuessing(raw.low, evidence.guess);
        evidence.middle = withoutGuessing(share, evidence.guess);
        evidence.high = withoutGuessing(raw.high, evidence.guess);
    }
    evidence.standing = standingOf(evidence);
}

void Mastery::add(const Response& response) {
    if (!response.isEvidence()) return;
    Evidence& evidence = cells_[cellOf(response)];
    const double chance = 1.0 / std::max<double>(1.0, static_cast<double>(response.choices.size()));
    evidence.guess = (evidence.guess * evidence.seen + chance) / (evidence.seen + 1);
    ++evidence.seen;
    if (response.isRight()) {
        ++evidence.right;
        ++evidence.right_in_a_row;
        evidence.missed_since_right = 0;
    } else {
        ++evidence.taken[response.means];
        ++evidence.missed_since_right;
        evidence.right_in_a_row = 0;
    }
    evidence.last_day =
        evidence.seen == 1 ? response.day : std::max(evidence.last_day, response.day);
    judge(evidence);
}

Evidence Mastery::evidence(const Cell& cell) const {
    const auto found = cells_.find(cell);
    return found == cells_.end() ? Evidence{} : found->second;
}

}  // namespace wrenlet::practice
