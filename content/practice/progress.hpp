// What the desk says of the children: for each sound by task the counts, the range, the foils that
// were taken and one of four words. Each child is read with the priors of her class. Values only;
// the desk draws them, the command prints them.
#pragma once

#include <span>
#include <string>
#include <utility>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "content/practice/evidence.hpp"
#include "content/practice/learner.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

struct SoundLine {
    Cell cell;
    Evidence evidence;       // of what tablets brought; read together with what was heard
    HeardCounts heard{};     // aloud, by her ear
    bool shielded = false;   // never called missed
    bool held_back = false;  // without its shield it would look missed
    Standing said = Standing::too_little;  // what the desk says, shields taken into account
};

struct ChildProgress {
    pack::Child child;
    std::vector<SoundLine> lines;  // by skill in the table's order; within one, most missed first
    int answers = 0;               // first tries
    int days = 0;
    std::int64_t practised_ms = 0;     // sum of the times taken
    std::vector<LeftOut> not_counted;  // those of the answers given without listening: in no line
};

/// Every child of the class, in its order, also those who have not played. What was heard aloud on
/// a day comes after that day's answers.
std::vector<ChildProgress> progressOf(const pack::ClassList& list,
                                      std::span<const Response> responses,
                                      std::span<const Heard> heard = {});

/// For `wrenlet-desk progress --json`. Carries the caution beside the figures.
std::string progressJson(const pack::ClassList& list, std::span<const ChildProgress> children,
                         std::span<const Problem> problems);

}  // namespace wrenlet::practice
