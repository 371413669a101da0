// Keeps what could be rude out of what is computed: a rime or a syllable that is said alone (the
// rime of glass), a word that is left or made when sounds are changed (clock without /l/).
#pragma once

#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/block_list.hpp"

namespace wrenlet::exercise {

/// True iff something that is heard, shown or chosen in `item` is on the list: a part that is said
/// alone, a word by how it is written or said.
bool isRude(const Item& item, const Vocabulary& vocabulary, const speech::BlockList& list);

/// The items that are not, in their order.
std::vector<Item> withoutRude(std::vector<Item> items, const Vocabulary& vocabulary,
                              const speech::BlockList& list);

}  // namespace wrenlet::exercise
