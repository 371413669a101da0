// The tune of a sentence: a yes-or-no question rises at its end, a statement falls. A question with
// a question word ("Where did it go?") falls too, so it tells neither by ear and is no item.
#pragma once

#include <cstdint>
#include <optional>

#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

enum class Tune : std::uint8_t { asking, telling };

/// `asking` for a question that ends in "?", begins with a verb that asks (is, did, can...) and
/// offers no "or"; `telling` for one that ends in "." and asks nothing. Nothing for the rest:
/// question words, exclamations, tags after a comma, several sentences in one.
std::optional<Tune> tuneOf(const Sentence& sentence);

}  // namespace wrenlet::exercise
