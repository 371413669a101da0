// What an item asks, as a sentence for the teacher. The game says it in her voice and in other
// words; this is for reading at the desk.
#pragma once

#include <string>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::desk {

/// "Which word is k + æ + t?" Sounds are IPA between slashes. REQUIRES: the item was made of
/// `vocabulary`.
std::string prompt(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

}  // namespace wrenlet::desk
