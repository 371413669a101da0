// Text for adults in lines that find room, by how wide Andika's letters are on average.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::game {

/// How many letters of a line `line` px high find room in `width` px.
std::size_t lettersIn(float width, float line);

/// `text` in lines of at most `most` letters, broken between words; a word that is longer still is
/// broken too. One empty line for an empty text. REQUIRES: most > 0.
std::vector<std::string> wrapped(std::string_view text, std::size_t most);

}  // namespace wrenlet::game
