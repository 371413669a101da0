// Which words may stand side by side in one item. Two words that are said alike, share a picture,
// or whose pictures a child would name alike (mouse and rat) make an item with two right answers.
#pragma once

#include <string_view>

#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

/// True iff a child may well call either picture by the other's name. From a hand-made list.
bool looksAlike(std::string_view word, std::string_view other);

/// True iff both can be told apart by ear alone: another word, another sound.
bool areHeardApart(const Word& a, const Word& b);

/// True iff both may be choices of one item: another word, another picture, another sound.
bool mayStandTogether(const Word& a, const Word& b);

}  // namespace wrenlet::exercise
