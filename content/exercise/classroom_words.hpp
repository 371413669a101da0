// The classroom word list: words that a five- to seven-year-old in North America knows, chosen and
// marked by hand. It is where a teacher finds words for a unit, and where item makers find foils.
// What a word sounds like is not written here but looked up, save where the dictionary's first
// pronunciation is not the one meant.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/lexicon.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::exercise {

struct ClassroomWord {
    std::string id;                   // as Word::id: "rainbow", "bow~rain"
    std::string text;                 // as written: "bow"
    std::string sense;                // a gloss, where the spelling means several: "tied in hair"
    std::vector<std::string> parts;   // of a compound, ids in order; else empty
    std::string picture;              // name in pictures.tsv; empty: none
    std::vector<std::string> topics;  // "animals", "food"; at least one
    speech::Pronunciation said;       // how it is said here; empty: as the dictionary says first
    bool said_as_parts = false;       // a compound that the dictionary lacks or has wrongly
    bool part_only = false;           // heard inside compounds, never asked by itself
    std::size_t line = 0;             // where it stands in the list, from 1
};

inline constexpr std::size_t kMostListedWords = 5000;

/// Reads a list whose columns are the fields above, in that order, tab-separated: id, spelling,
/// sense, parts, picture, topics, said; blanks part ids and topics. Columns may be left off from
/// the right: a bare word is its own id. `said` is IPA with blanks ("b aʊ", stress before its vowel
/// as in "ˈæ", else the first vowel bears it), or "parts". The topic "part" marks a part-only word.
/// Nothing is an error: a line that cannot be a word (digits, emoji, other scripts, control signs,
/// more than 40 letters), an id that stands there twice, a compound with a part that the list
/// lacks, are left out; a picture that another word has is left off. Each with a warning by line.
Result<std::vector<ClassroomWord>> readClassroomWords(std::string_view text,
                                                      std::string_view where);

/// The words with their sounds, for item makers. `where` names the list in problems. A word that
/// the dictionary lacks is left out with a warning by line, and so are compounds of it.
Result<std::vector<Word>> saidAloud(const std::vector<ClassroomWord>& words,
                                    const speech::Lexicon& lexicon, std::string_view where);

}  // namespace wrenlet::exercise
