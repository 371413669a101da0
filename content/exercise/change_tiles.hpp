// A change as it lies on the table: the parts of the word it starts from in a row, the one that is
// taken out of it or put into it, and the parts of what comes out.
#pragma once

#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

struct ChangeTiles {
    std::vector<Part> before, after;
    std::size_t at = 0;  // of the tile taken out of `before` and of the one put into `after`
    bool takes = false, puts = false;
    bool operator==(const ChangeTiles&) const = default;
};

/// What a word's tiles are for a change of this unit: a compound's words, all of a word's sounds;
/// else the word alone.
std::vector<Part> changeParts(const Word& word, const Vocabulary& vocabulary, Unit unit);

/// REQUIRES: the item is a change, fair with this vocabulary.
ChangeTiles changeTiles(const Item& item, const Vocabulary& vocabulary);

/// True iff changes of this skill can follow one another in a chain: parts are swapped.
bool makesChains(Skill skill);

/// True iff `next` changes the word that came out of `last` in the same way, so that it can follow
/// in one chain.
bool followsInChain(const Item& last, const Item& next);

}  // namespace wrenlet::exercise
