// Items that hold in the accents of a room. The makers heed what many in North America say alike
// (speech::waysOfMany); here it is judged whether an item has one right answer in further accents
// too: where three is said like free, the one is no foil for the other, thumb does not begin with
// /θ/, and teeth rhymes with leaf.
#pragma once

#include <span>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/accent.hpp"

namespace wrenlet::exercise {

/// True iff in each accent alone, and in all of them at once, everything is kept that `item` relies
/// on: words said apart are still said apart; what rhymes still rhymes and what does not still does
/// not; words share a sound where the item says so and nowhere else; parts said alone still make
/// their word, as many and of the same kind; a vowel is as long; a sound that is heard alone is the
/// one that the word then has. Names and sounds of letters stay apart as well. Sentences hold
/// anywhere, and with no accents everything does. False for words that are not in `vocabulary`.
/// REQUIRES: `item` is fair with `vocabulary`; see unfairness().
bool holdsIn(std::span<const speech::Accent> accents, const Item& item,
             const Vocabulary& vocabulary);

/// The items that hold, in their order.
std::vector<Item> holdingIn(std::vector<Item> items, const Vocabulary& vocabulary,
                            std::span<const speech::Accent> accents);

}  // namespace wrenlet::exercise
