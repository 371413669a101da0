// A word as someone typed or pasted it: put into the dictionary's form, or refused with a reason
// that a teacher understands.
#pragma once

#include <string>
#include <string_view>

#include "content/common/result.hpp"

namespace wrenlet::speech {

/// Lower case, spaces around it left off, a plain apostrophe for a typographer's. Errors: nothing
/// there, longer than kMostWordLetters, several words, digits, or anything else but the letters a
/// to z, apostrophes and hyphens between them. A problem shows no more of the word than a line.
Result<std::string> typedWord(std::string_view typed);

/// The word for showing in a message: signs that are not seen and broken UTF-8 as "?", cut to
/// 40 letters.
std::string shownWord(std::string_view typed);

/// True iff this letter of UTF-8 is not seen itself but moves a cursor, turns text around or joins
/// what stands beside it: control characters, direction marks, spaces of no width.
bool isUnseen(std::string_view letter);

}  // namespace wrenlet::speech
