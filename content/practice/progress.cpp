#include "content/practice/progress.hpp"

#include <algorithm>
#include <map>
#include <memory>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>

#include "content/practice/policy.hpp"

namespace wrenlet::practice {

namespace {

struct Played {
    std::vector<const Response*> responses;
    std::vector<const Heard*> heard;
    std::map<Cell, Counts> cells;
    std::map<Cell, HeardCounts> aloud;
    int answers = 0;
    std::set<std::int64_t> days;
    std::int64_t practised_ms = 0;
};

SoundLine lineOf(const Cell& cell, const Evidence& evidence, const HeardCounts& heard) {
    SoundLine line{cell, evidence, heard, false, false, evidence.standing};
    // What is left out keeps a sound from being missed; it does not prove that it is known.
    if (line.said == Standing::steady && evidence.shielded > 0) line.said = Standing::growing;
    line.shielded = evidence.shielded > 0 && line.said != Standing::missed;
    const double right = evidence.seen > 0 ? double(evidence.right) / evidence.seen : 1;
    line.held_back =
        line.shielded && right < evidence.guess + (1 - evidence.guess) * kModel.known_from;
    return line;
}

Learner learnerOf(const Played& did, const pack::Child& child,
                  const std::shared_ptr<const ClassPriors>& priors) {
    Learner learner(priors, child.shields);
    auto heard = did.heard.begin();
    for (const Response* response : did.responses) {
        for (; heard != did.heard.end() && (*heard)->day < response->day; ++heard)
            learner.hear(**heard);
        learner.add(*response);
    }
    for (; heard != did.heard.end(); ++heard) learner.hear(**heard);
    return learner;
}

/// Those of the class that played.
std::shared_ptr<const ClassPriors> priorsOf(const pack::ClassList& list,
                                            std::map<std::string_view, Played>& played) {
    const auto before = std::make_shared<const ClassPriors>();
    std::vector<Learner> children;
    for (const pack::Child& child : list.children)
        children.push_back(learnerOf(played[child.id], child, before));
    std::vector<const Mastery*> all;
    for (const Learner& child : children) all.push_back(&child.mastery());
    return std::make_shared<const ClassPriors>(ClassPriors::fittedTo(all));
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
                          line.said, -line.evidence.reading.p_missed, -line.evidence.seen);
    };
    return key(a) < key(b);
}

}  // namespace

std::vector<ChildProgress> progressOf(const pack::ClassList& list,
                                      std::span<const Response> responses,
                                      std::span<const Heard> heard) {
    std::map<std::string_view, Played> played;
    for (const Response& response : responses) {
        Played& child = played[response.child];
        child.responses.push_back(&response);
        child.practised_ms += response.took_ms;
        if (!response.isEvidence()) continue;
        ++child.answers;
        child.days.insert(response.day);
    }
    // One tablet's after another's; a child may have played at two.
    for (auto& [child, did] : played)
        std::stable_sort(did.responses.begin(), did.responses.end(),
                         [](const Response* a, const Response* b) { return a->day < b->day; });
    for (const Heard& one : heard) {
        Played& child = played[one.child];
        child.heard.push_back(&one);
        child.aloud[{one.skill, one.turns_on}].add(one.mark);
    }
    for (auto& [child, did] : played)
        std::stable_sort(did.heard.begin(), did.heard.end(),
                         [](const Heard* a, const Heard* b) { return a->day < b->day; });
    const auto priors = priorsOf(list, played);
    std::vector<ChildProgress> all;
    for (const pack::Child& child : list.children) {
        Played& did = played[child.id];
        const Learner learner = learnerOf(did, child, priors);
        for (const Response* response : did.responses)
            if (response->isEvidence() && learner.isCounted(*response))
                did.cells[cellOf(*response)].add(*response, child.shields);
        ChildProgress progress{child,
                               {},
                               did.answers,
                               static_cast<int>(did.days.size()),
                               did.practised_ms,
                               {learner.leftOut().begin(), learner.leftOut().end()}};
        for (const auto& [cell, aloud] : did.aloud) did.cells[cell];
        for (const auto& [cell, counts] : did.cells)
            progress.lines.push_back(
                lineOf(cell, evidenceOf(cell, counts, learner.mastery(), did.aloud[cell]),
                       did.aloud[cell]));
        std::stable_sort(progress.lines.begin(), progress.lines.end(), isBefore);
        all.push_back(std::move(progress));
    }
    return all;
}

}  // namespace wrenlet::practice
