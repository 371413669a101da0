// Syllables: how many beats a word has and where one ends. Counts are sure for nearly every word;
// boundaries are a convention, so items are never scored on an exact one.
#pragma once

#include <span>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// The number of vowel nuclei; syllabic l and n are vowel and consonant in the dictionary.
int syllableCount(const Pronunciation& word);

/// True iff speakers count the word differently: fire, our, towel, owl, squirrel have one beat or
/// two, camera and family two or three. Such a word is no item on syllables.
bool countVaries(const Pronunciation& word);

/// The syllables in order; together they are the word. Each consonant goes to the following vowel
/// as far as English begins words so, but a stressed checked (short) vowel takes one with it:
/// bas-ket, rab-bit, ti-ger. Agrees with hyphenated children's words 94 % (own count).
std::vector<Pronunciation> syllables(const Pronunciation& word);

/// The syllables of a compound, each part's alone, so that "bedroom" is bed-room.
std::vector<Pronunciation> syllables(std::span<const Pronunciation> parts);

/// True iff a single consonant stands after a stressed checked vowel and before an unstressed one:
/// it belongs to both sides (butter, scissors), and no boundary is right.
bool isAmbisyllabic(const Pronunciation& word);

/// True iff English words begin with these consonants. No consonant is an onset too.
bool isOnset(std::span<const Sound> consonants);

}  // namespace wrenlet::speech
