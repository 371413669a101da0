// A sentence as it is spoken: which words a child hears and counts in it. Writing and speaking
// differ, so what can be read aloud in more than one way is refused with the reason.
#pragma once

#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

inline constexpr std::size_t kFewestCounted = 2;  // words of a sentence that can be counted
inline constexpr std::size_t kMostCounted = 8;

/// The words of `text` as counted aloud, punctuation left off: "I don't know." gives I, don't,
/// know, for a contraction is one word. `where` names the place in problems. Errors: digits ("3"
/// may be read in several ways), a hyphen inside a word (one word or two?), letters that are not
/// English, other signs, no word at all. A count outside 2 to 8 is a warning: it is heard, never
/// asked.
Result<std::vector<SpokenWord>> spokenWords(std::string_view text, std::string_view where);

}  // namespace wrenlet::exercise
