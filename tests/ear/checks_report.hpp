// How often the plain checks speak up when they should, and when they should not.
#pragma once

#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

std::vector<Line> checksReport(const std::vector<Word>& words);

}  // namespace wrenlet::ear
