// The letters as a class is taught them: how each is named, and the sounds it says. Common practice
// in North America: vowels short, then long; c and g hard, then soft; x two sounds at once.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

struct TaughtLetter {
    std::string_view text;              // "b", or a digraph: "sh"
    Pronunciation name;                 // /bi/; empty for a digraph
    std::vector<Pronunciation> sounds;  // in the order in which they are taught
};

/// a to z, then sh, ch, th, ng, ck, wh, ph.
std::span<const TaughtLetter> taughtLetters();

/// Null when `text` (lower case) is neither a letter nor one of those digraphs.
const TaughtLetter* taughtLetter(std::string_view text);

}  // namespace wrenlet::speech
