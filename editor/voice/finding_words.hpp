// What the desk says of a finding: the one place for these words. Short, present tense, about the
// thing and not the person.
#pragma once

#include <array>
#include <string>
#include <string_view>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"

namespace wrenlet::desk {

struct FindingWords {
    std::string tag;                // for the wave: "uh", "too loud"
    std::string what;               // one or two sentences: what happened and what to do
    std::vector<std::string> ways;  // labels of the ways out, the safe one first
};
FindingWords wordsOf(const Finding& finding, const pack::VoiceNeed& need);

/// The six lines beside the wave, in this order: how each reads when all is well, and whether a
/// finding speaks against it.
struct CheckLine {
    std::string text;  // "Loud enough"
    bool well = true;  // else `text` says the trouble: "Too quiet"
};
std::array<CheckLine, 6> checkLines(const std::vector<Finding>& findings,
                                    const pack::VoiceNeed& need);

}  // namespace wrenlet::desk
