// The letters as they are taught: how each is named, which sounds it stands for, taught ones
// first; and the pairs of letters that are one sound. Spelling beyond that is not judged here.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/vocabulary.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::exercise {

struct Letter {
    std::string_view text;                      // "b", "sh"
    std::string id;                             // "letter:b"
    speech::Pronunciation name;                 // empty for two letters
    std::vector<speech::Pronunciation> taught;  // short before long, hard before soft; /ks/ is x's
    std::vector<speech::Pronunciation> also;    // other sounds it has in common words
};

/// a to z, names as in North America, from common practice.
std::span<const Letter> letters();
/// sh, ch, th, ph, wh, ng, ck.
std::span<const Letter> digraphs();

/// A letter or digraph by its id; null when there is none.
const Letter* letterById(std::string_view id);

bool isVowelLetter(const Letter& letter);  // a, e, i, o, u
/// True iff `sounds` is one of its taught sounds, or, with `ever`, any that it has.
bool standsFor(const Letter& letter, const speech::Pronunciation& sounds, bool ever);

/// A word whose every letter says what it is taught to say first ("cat", "ship", "duck", "box"),
/// taken apart into its letters; nothing for any other.
struct Tile {
    const Letter* letter;
    speech::Pronunciation sounds;  // in this word
};
std::optional<std::vector<Tile>> regularTiles(const Word& word);

}  // namespace wrenlet::exercise
