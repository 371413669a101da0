// An item said aloud to a whole class that sees nothing: what to ask, and the answer. The tablet
// shows pictures and tiles; here everything is in the words.
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

/// REQUIRES: the item was made of `vocabulary`.
Aloud aloud(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

/// Sounds in plain letters between slashes, for whoever does not read IPA: "/k/", "/at/"; text that
/// is not IPA comes back as it is.
std::string inPlainLetters(std::string_view ipa);

}  // namespace wrenlet::desk
