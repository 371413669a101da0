// How near the found ends of speech lie to the true ones.
#pragma once

#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

/// Truth is where the clean word is within so many dB of its loudest 5 ms, as each line says.
std::vector<Line> trimReport(const std::vector<Word>& words);

}  // namespace wrenlet::ear
