// How often a vowel added to a lone consonant is heard, and how often one is heard that is not
// there.
#pragma once

#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

std::vector<Line> loneReport(const std::vector<LoneSound>& sounds, bool few);

/// One line a wrong answer, on the tuning half alone.
std::string wrongLone(const std::vector<LoneSound>& sounds);

}  // namespace wrenlet::ear
