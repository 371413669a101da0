// A teacher's unit, as she types it: a name, words and sentences, before anything is looked up.
// One JSON file, written by the desk or by hand.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/speech/accent.hpp"

namespace wrenlet::pack {

struct UnitWord {
    std::string text;                   // "rainbow"
    std::string sense;                  // "" or what tells two words of one spelling apart: "rain"
    std::vector<std::string> sounds;    // IPA symbols she confirmed by ear, a vowel's stress before
                                        // it ("ˈæ", "ˌoʊ"); empty: look it up
    std::vector<std::string> compound;  // its parts' words; empty: not a compound
    std::string picture;                // name in the picture set ("rainbow"); empty: none
    std::size_t place = 0;              // where it stands in the file's list, from 1; 0: nowhere
};

/// The id that its word gets: "rainbow", or "bow~rain" with a sense.
std::string wordId(const UnitWord& word);

struct UnitSentence {
    std::string id;    // "pond-1"
    std::string text;  // "The duck sits on the pond."
    std::size_t place = 0;
};

struct Unit {
    std::string id;     // "by-the-pond"; letters, digits and hyphens
    std::string title;  // "By the pond"
    std::vector<UnitWord> words;
    std::vector<UnitSentence> sentences;
    std::vector<speech::Accent> accents;  // of the room, beyond those that item makers heed anyway
    std::string where;                    // the file it came from, for problems: "by-the-pond.json"
};

inline constexpr std::uint64_t kMostUnitBytes = 4ull << 20;
inline constexpr std::size_t kMostUnitWords = 2'000;

/// Reads a unit's JSON. `where` names the file in problems. Errors: more than kMostUnitBytes,
/// broken JSON with its line, a field of the wrong kind, more than kMostUnitWords words or
/// sentences. A word or sentence that cannot be said (digits, emoji, control characters, broken
/// UTF-8, other scripts, more than 40 letters in a word or 200 in a sentence), a word with accents
/// and no sounds given, an accent of a name that is not known, and what stands there twice is left
/// out with a warning.
Result<Unit> readUnit(std::string_view json, std::string_view where);

}  // namespace wrenlet::pack
