// What items rely on, asked of one ear at a time: for the .cpp files of in_accents alone.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/accent.hpp"

namespace wrenlet::exercise::accents {

/// One accent, or several at once; see speech::inAccent().
using Ear = std::span<const speech::Accent>;

/// Each is true iff the ear keeps what such an item relies on, beyond that its words are told
/// apart. REQUIRES: the subject and, where they are words, the choices stand in the vocabulary.
bool keepsParts(const Item& item, const Vocabulary& vocabulary, Ear ear);
bool keepsChange(const Item& item, const Vocabulary& vocabulary, Ear ear);
bool keepsLetter(const Item& item, const Vocabulary& vocabulary, Ear ear);

/// "æt" of "part:æt".
std::string_view afterColon(std::string_view clip);

/// How many sounds of `sounds`, from the first on or from the last back, are written `ipa`; 0 when
/// none are.
std::size_t firstAs(std::span<const speech::Sound> sounds, std::string_view ipa);
std::size_t lastAs(std::span<const speech::Sound> sounds, std::string_view ipa);

/// Consonants as they are said before a vowel: so they are said alone too, and no other way keeps
/// the /ɹ/ of "br" where it is dropped at the end of words.
speech::Pronunciation saidBefore(Ear ear, speech::Pronunciation sounds);

/// A vowel that no accent rewrites and that changes no consonant beside it.
inline constexpr speech::Sound kPlainVowel{speech::Phoneme::aa, speech::Stress::primary};

/// True iff the parts of a compound, said alone, are to the ear what they are one after the other:
/// not so "ear" and "ache" where the /ɹ/ is said before a vowel only. True for any other word.
bool keepsCompound(const Word& word, const Vocabulary& vocabulary, Ear ear);

}  // namespace wrenlet::exercise::accents
