// Whether two words rhyme for an item: surely, surely not, or neither, so that no item may turn on
// them (said alike, alike from the onset on, or a matter of accent).
#pragma once

#include <cstdint>

#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

enum class Rhyme : std::uint8_t { yes, no, unsure };
Rhyme rhymeFor(const Word& a, const Word& b);

}  // namespace wrenlet::exercise
