#include "content/practice/progress.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>

#include "content/practice/shield.hpp"

namespace wrenlet::practice {

namespace {

struct Played {
    Mastery mastery;
    int answers = 0;
    std::set<std::int64_t> days;
    std::int64_t practised_ms = 0;
};

SoundLine lineOf(const Cell& cell, const Evidence& evidence, const pack::Child& child) {
    SoundLine line{cell, evidence, false, evidence.standing};
    const Evidence unshielded = withoutShielded(cell, evidence, child.shields);
    line.said = unshielded.standing;
    // What is left out keeps a sound from being missed; it does not prove that it is known.
    if (line.said == Standing::steady && evidence.standing != Standing::steady)
        line.said = Standing::growing;
    line.shielded = unshielded.seen != evidence.seen && line.said != Standing::missed;
    return line;
}

std::size_t placeInTable(const std::string& skill) {
    const auto known = exercise::skillFromId(skill);
    const auto table = exercise::skillTable();
    for (std::size_t at = 0; known && at < table.size(); ++at)
        if (table[at].skill == *known) return at;
    return table.size();
}

bool isBefore(const SoundLine& a, const SoundLine& b) {
    const auto key = [](const SoundLine& line) {
        return std::tuple(placeInTable(line.cell.skill), std::string_view(line.cell.skill),
                          line.said, line.evidence.middle, -line.evidence.seen);
    };
    return key(a) < key(b);
}

}  // namespace

std::vector<ChildProgress> progressOf(const pack::ClassList& list,
                                      std::span<const Response> responses) {
    std::map<std::string_view, Played> played;
    for (const Response& response : responses) {
        Played& child = played[response.child];
        child.mastery.add(response);
        child.practised_ms += response.took_ms;
        if (!response.isEvidence()) continue;
        ++child.answers;
        child.days.insert(response.day);
    }
    std::vector<ChildProgress> all;
    for (const pack::Child& child : list.children) {
        const Played& did = played[child.id];
        ChildProgress progress{
            child, {}, did.answers, static_cast<int>(did.days.size()), did.practised_ms};
        for (const auto& [cell, evidence] : did.mastery.cells())
            progress.lines.push_back(lineOf(cell, evidence, child));
        std::stable_sort(progress.lines.begin(), progress.lines.end(), isBefore);
        all.push_back(std::move(progress));
    }
    return all;
}

}  // namespace wrenlet::practice
