// Where the dictionary is wrong or uneven for a child's ear: compounds that lost a part's vowel,
// the sense that is not a child's listed first, and vowels written in two ways for one sound,
// which would deny true rhymes (dog and frog, ear and deer, caught and taught). Applied once, when
// it is compiled.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

struct Repair {
    std::string_view word;
    std::string_view said;  // in the dictionary's letters: "D AO1 R N AA2 B"
    std::string_view why;
};

/// Words whose first pronunciation is put right by hand, in alphabetical order.
std::span<const Repair> repairTable();

/// The pronunciations to keep for `word` (lower case) out of those listed: repaired, vowels
/// normalised, each once, the likeliest first.
std::vector<Pronunciation> repaired(std::string_view word, std::vector<Pronunciation> listed);

}  // namespace wrenlet::speech
