// What may stand in a name, a word and a sentence that comes from outside. The game says and shows
// these, and files are found by them, so they are looked at before anything else is.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::pack {

/// Code points of UTF-8 text, or nothing when the bytes are not UTF-8.
std::optional<std::vector<char32_t>> letters(std::string_view utf8);

/// The bytes of the UTF-8 letter that `text` begins with; 0 when they are none.
std::size_t letterSize(std::string_view text);

/// True iff all its letters are a to z of either case; apostrophes and hyphens aside.
bool isEnglish(std::string_view text);

/// True iff it has 1 to `most` of a-z, 0-9 and hyphen, such as a unit's id or a badge.
bool isPlainId(std::string_view text, std::size_t most = 60);

/// True iff it can name a file right inside a folder on every system: 1 to 120 of letters, digits,
/// hyphen, dot, underscore and blank, not beginning with a dot.
bool isPlainFileName(std::string_view text);

/// True iff it is a path of plain file names parted by single slashes.
bool isPlainPath(std::string_view text);

/// Why `text` cannot be a word to say, as the end of a sentence ("has a digit"), or empty if it
/// can: 1 to 40 Latin letters, apostrophes and hyphens, a letter first.
std::string whyNoWord(std::string_view text);

/// Why `text` cannot be a sentence to say, or empty if it can: words and . , ? ! ' - " : ;
std::string whyNoSentence(std::string_view text);

/// True iff `bytes` begin as text in UTF-16 does, which some programs save as "Unicode".
bool isUtf16(std::string_view bytes);

/// True iff it is UTF-8 of at most `most` letters with no control characters.
bool isLine(std::string_view text, std::size_t most);

/// `text` for a problem: in quotes, control characters and others that are not seen but turn text
/// around shown as "?", cut after 24 letters.
std::string inQuotes(std::string_view text);

/// Curly apostrophes and quotes made straight, ends trimmed, runs of blanks made one.
std::string tidied(std::string_view text);

}  // namespace wrenlet::pack
