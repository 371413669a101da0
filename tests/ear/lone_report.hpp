// How often a vowel added to a lone consonant is heard, and how often one is heard that is not
// there.
#pragma once

#include "editor/voice/word_ear.hpp"
#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

/// `ear`: the recogniser that helps the rule. Few rooms when `few`.
std::vector<Line> loneReport(const std::vector<LoneSound>& sounds, desk::WordEar* ear, bool few);

/// One line a wrong answer, on the tuning part alone.
std::string wrongLone(const std::vector<LoneSound>& sounds, desk::WordEar* ear);

/// The limits with the fewest errors on these sounds, the best first, and what each costs.
std::string fittedLimits(const std::vector<LoneSound>& sounds, desk::WordEar& ear);

}  // namespace wrenlet::ear
