// Rhyme, as children's rhymes are made: alike from the stressed vowel on, with another onset
// before it. A word said twice, or two words said alike, is no rhyme for an item.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "content/speech/accent.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

enum class RhymeKind {
    perfect,    // cat, hat
    identical,  // leave, believe: the stressed syllable is the same from its onset on
    homophone,  // pear, pair: the whole word is said alike, or it is the same word
    none,
};

std::string_view rhymeKindName(RhymeKind kind);  // "perfect"

RhymeKind rhymeKind(const Pronunciation& a, const Pronunciation& b);

/// What rhyming words share: from the primary-stressed vowel to the end, as in /æt/ of "cat" and
/// /ʌndɝ/ of "under". A word without primary stress is taken from its last vowel; one without a
/// vowel has no rhyming part.
Pronunciation rhymingPart(const Pronunciation& word);

/// The rhyming part as it is compared: /ɹ/ after a vowel that glides is one sound, whether it is
/// listed with a beat of its own (choir, tire) or without (choirs, admire).
Pronunciation rhymingKey(const Pronunciation& word);

/// What rhyming words do not share: the consonants before their rhyming part, as many as English
/// words begin with: /l/ of "believe", /st/ of "mistake".
Pronunciation rhymingOnset(const Pronunciation& word);

enum class RhymeAnswer { yes, no, depends };

std::string_view rhymeAnswerName(RhymeAnswer answer);  // "depends"

struct RhymeVerdict {
    RhymeAnswer answer = RhymeAnswer::no;
    RhymeKind kind = RhymeKind::none;  // in the dictionary's accent
    std::string why;                   // a sentence for the teacher
};

/// Judged as the dictionary has the words, and in each of `accents` by itself. A perfect rhyme in
/// all of them is a rhyme, one in none of them is none; what depends on the accent is no item,
/// neither as a target nor as a foil.
RhymeVerdict rhymeVerdict(const Pronunciation& a, const Pronunciation& b,
                          std::span<const Accent> accents);

}  // namespace wrenlet::speech
