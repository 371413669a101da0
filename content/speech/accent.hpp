// Whose ears? Some words that a dictionary tells apart are one word to many speakers, and some
// rhymes hold in one accent alone. An accent is a list of rewrite rules over the dictionary's
// pronunciations; no item may turn on a pair that an accent of the room says alike.
// The mergers and their names are those of Wells, Accents of English (1982), and of Labov, Ash and
// Boberg, The Atlas of North American English (2006); the rules are written from memory.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

enum class Accent : std::uint8_t {
    cot_caught,   // ɔ as ɑ, but not before ɹ: cot, caught; "card" and "cord" stay apart
    before_r,     // æ and eɪ as ɛ before ɹ: merry, marry, Mary
    pin_pen,      // ɛ as ɪ before a nasal: pin, pen
    th_fronting,  // θ as f; ð as v, but at the beginning: three, free
    th_stopping,  // θ as t, ð as d: three, tree
    foot_strut,   // ʌ as ʊ: putt, put
    non_rhotic,   // no ɹ but before a vowel: spa, spar
};

/// In the order of Accent.
std::span<const Accent> allAccents();
std::string_view accentName(Accent accent);  // "cot-caught"
std::optional<Accent> accentNamed(std::string_view name);
/// For a sentence: "where cot and caught are said alike".
std::string_view accentMeaning(Accent accent);

/// What stands beside a sound. A word's edge is no vowel and no ɹ.
enum class Beside : std::uint8_t {
    anything,
    not_edge,
    vowel,
    no_vowel,
    near_vowel,  // ɪ, ɛ, ʊ, as in near, square, cure
    nasal,
    r,
    not_r,
};
enum class WithStress : std::uint8_t { any, none };

/// One sound, where it stands, and the sounds said for it: two, one or none.
struct Rewrite {
    Phoneme phone;
    Beside left;
    Beside right;
    WithStress stress;
    std::optional<Phoneme> to;                   // with the stress of `phone`
    std::optional<Phoneme> then = std::nullopt;  // a consonant
};

/// In the order in which they apply, each to what the one before has left.
std::span<const Rewrite> rewrites(Accent accent);

/// The word as that accent has it.
Pronunciation inAccent(Accent accent, const Pronunciation& word);
/// The word as an accent has it that has all of these features, applied in the order of Accent.
Pronunciation inAccent(std::span<const Accent> accents, const Pronunciation& word);

/// The word as many speakers of English in North America have it: as the dictionary does, then with
/// cot-caught, with before-r, with pin-pen, and with all three. Every way has as many sounds.
std::vector<Pronunciation> waysOfMany(const Pronunciation& word);

/// True iff many speakers of English in North America say both alike: the same sounds in the
/// dictionary, or with cot-caught, pin-pen and before-r, each alone or all together.
bool saidAlikeByMany(const Pronunciation& a, const Pronunciation& b);

}  // namespace wrenlet::speech
