// Spelling: which letters of a word say which of its sounds. Sounds come from the pronunciation;
// letters are only laid beside them, by a table of what English letters can say, made by hand.
// Nothing about a word's sounds is ever read off its letters here.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// Letters that say one or more sounds together: c, sh, igh; x says two; "a_e" are the two letters
/// of "cake" around its k. Silent letters say none.
struct Spelled {
    std::string letters;  // lower case
    Pronunciation sounds;
    bool reduced = false;  // a vowel letter that says ə, or ɪ without stress ("rabbit", "about")
    bool operator==(const Spelled&) const = default;
};

/// What letters may say; taught to a child in some order.
struct Correspondence {
    std::string_view letters;  // "c", "sh", "a_e"
    std::vector<Phoneme> sounds;
};

/// The likeliest way to lay the letters of `word` (lower case; apostrophes and hyphens are silent)
/// beside its sounds, in the order of the sounds; nothing when the table knows no way. In about 3 %
/// of common words it is not the way a teacher would take.
std::optional<std::vector<Spelled>> alignSpelling(std::string_view word, const Pronunciation& said);

/// True iff every part of the likeliest alignment is among those taught. A silent letter is
/// decodable only where it is taught as one (letters with no sounds); no word that is not aligned
/// is decodable.
bool isDecodable(std::string_view word, const Pronunciation& said,
                 std::span<const Correspondence> taught);

/// True iff the word does not begin with what its first letter alone is taught to say, hard c and g
/// and a short or long vowel: one, unicorn, eye, knee, gem, city, phone, giraffe, ship. A child who
/// goes by letters is misled.
bool firstLetterMisleads(std::string_view word, const Pronunciation& said);

}  // namespace wrenlet::speech
