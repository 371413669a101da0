// What an item asks, in words for the teacher: as a sentence to read at the desk, and said aloud to
// a whole class that sees nothing, with its answer. The game says it in her voice and in other
// words, and shows pictures and tiles.
#pragma once

#include <string>
#include <string_view>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::desk {

struct Aloud {
    std::string ask;     // "Say sunset. Now say it without sun."
    std::string answer;  // "set"
    bool operator==(const Aloud&) const = default;
};

struct Asking {
    std::string read;  // "Which word is k + æ + t?"; sounds are IPA between slashes
    Aloud aloud;       // sounds in plain letters
};

/// REQUIRES: the item was made of `vocabulary`.
Asking asking(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

/// Sounds in plain letters between slashes, for whoever does not read IPA: "/k/", "/at/"; text that
/// is not IPA comes back as it is.
std::string inPlainLetters(std::string_view ipa);

}  // namespace wrenlet::desk
