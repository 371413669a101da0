// Whether a hands-free take ends by itself, soon, and with the whole word in it.
#pragma once

#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

std::vector<Line> endpointReport(const std::vector<Word>& words);

}  // namespace wrenlet::ear
