#include "content/speech/syllable.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "content/speech/features.hpp"

namespace wrenlet::speech {

namespace {

using P = Phoneme;

// Two-consonant onsets of English words (from any description of English phonotactics); those with
// /j/ come before /u/ alone. Three consonants: /s/, a voiceless stop, and what may follow the stop.
constexpr std::array<std::pair<P, P>, 47> kPairs = {{
    {P::p, P::l},  {P::p, P::r}, {P::p, P::y},  {P::b, P::l},  {P::b, P::r},  {P::b, P::y},
    {P::t, P::r},  {P::t, P::w}, {P::d, P::r},  {P::d, P::w},  {P::k, P::l},  {P::k, P::r},
    {P::k, P::w},  {P::k, P::y}, {P::g, P::l},  {P::g, P::r},  {P::g, P::w},  {P::f, P::l},
    {P::f, P::r},  {P::f, P::y}, {P::th, P::r}, {P::th, P::w}, {P::sh, P::r}, {P::v, P::y},
    {P::s, P::p},  {P::s, P::t}, {P::s, P::k},  {P::s, P::m},  {P::s, P::n},  {P::s, P::l},
    {P::s, P::w},  {P::s, P::f}, {P::hh, P::y}, {P::hh, P::w}, {P::m, P::y},  {P::n, P::y},
    {P::l, P::y},  {P::t, P::y}, {P::d, P::y},  {P::s, P::y},  {P::z, P::y},  {P::g, P::y},
    {P::th, P::y}, {P::v, P::w}, {P::p, P::w},  {P::b, P::w},  {P::sh, P::l},
}};

bool isPairOnset(P a, P b) {
    return std::find(kPairs.begin(), kPairs.end(), std::pair{a, b}) != kPairs.end();
}

std::vector<std::size_t> nuclei(const Pronunciation& word) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (isVowel(word[i].phoneme)) places.push_back(i);
    return places;
}

/// How many of the consonants between two vowels close the first one's syllable.
std::size_t codaLength(const Sound& vowel, std::span<const Sound> between) {
    std::size_t coda = 0;
    while (!isOnset(between.subspan(coda))) ++coda;
    const bool takes_one = isChecked(vowel.phoneme) && vowel.stress != Stress::none;
    return takes_one && coda == 0 && !between.empty() ? 1 : coda;
}

bool isUnstressedVowel(const Pronunciation& word, std::size_t at) {
    return at < word.size() && isVowel(word[at].phoneme) && word[at].stress == Stress::none;
}

/// True iff the sound at `at` is this one and no vowel follows, which would take it: /l/ of "owl",
/// not of "pilot".
bool closes(const Pronunciation& word, std::size_t at, P phoneme) {
    return at < word.size() && word[at].phoneme == phoneme &&
           (at + 1 == word.size() || !isVowel(word[at + 1].phoneme));
}

/// A vowel that runs into /l/ or /ɹ/ at the end of its syllable, with half a beat between: fire,
/// owl, towel, jewel, squirrel.
bool hasAHalfBeat(const Pronunciation& word, std::size_t at) {
    const P vowel = word[at].phoneme;
    const P next = at + 1 < word.size() ? word[at + 1].phoneme : vowel;
    if (next == P::ax && closes(word, at + 2, P::l))
        return glidesFar(vowel) || vowel == P::uw || vowel == P::er;
    return glidesFar(vowel) &&
           (next == P::er || closes(word, at + 1, P::r) || closes(word, at + 1, P::l));
}

/// A weak vowel between a consonant and a weak beat with /ɹ/ (camera, battery), or one before a
/// last /li/ (family, broccoli), that many leave out: two beats or three. From memory of what
/// English dictionaries bracket.
bool mayLoseItsBeat(const Pronunciation& word, std::size_t at) {
    if (at < 2 || !isUnstressedVowel(word, at) || isVowel(word[at - 1].phoneme)) return false;
    if (word[at].phoneme == P::er) return isUnstressedVowel(word, at + 1);
    return word[at].phoneme == P::ax && at + 3 == word.size() && word[at + 1].phoneme == P::l &&
           word[at + 2].phoneme == P::iy && isUnstressedVowel(word, at + 2);
}

}  // namespace

bool isOnset(std::span<const Sound> consonants) {
    switch (consonants.size()) {
        case 0:
            return true;
        case 1:
            return consonants[0].phoneme != P::ng && consonants[0].phoneme != P::zh;
        case 2:
            return isPairOnset(consonants[0].phoneme, consonants[1].phoneme);
        case 3: {
            const P stop = consonants[1].phoneme;
            return consonants[0].phoneme == P::s &&
                   (stop == P::p || stop == P::t || stop == P::k) &&
                   isPairOnset(stop, consonants[2].phoneme);
        }
        default:
            return false;
    }
}

int syllableCount(const Pronunciation& word) {
    return static_cast<int>(nuclei(word).size());
}

bool countVaries(const Pronunciation& word) {
    for (std::size_t i = 0; i < word.size(); ++i)
        if (hasAHalfBeat(word, i) || mayLoseItsBeat(word, i)) return true;
    return false;
}

std::vector<Pronunciation> syllables(const Pronunciation& word) {
    const std::vector<std::size_t> vowels = nuclei(word);
    std::vector<Pronunciation> found;
    std::size_t begin = 0;
    for (std::size_t i = 0; i + 1 < vowels.size(); ++i) {
        const std::size_t after = vowels[i] + 1;
        const std::span<const Sound> between(word.data() + after, vowels[i + 1] - after);
        const std::size_t end = after + codaLength(word[vowels[i]], between);
        found.emplace_back(word.begin() + static_cast<std::ptrdiff_t>(begin),
                           word.begin() + static_cast<std::ptrdiff_t>(end));
        begin = end;
    }
    if (begin < word.size())
        found.emplace_back(word.begin() + static_cast<std::ptrdiff_t>(begin), word.end());
    return found;
}

std::vector<Pronunciation> syllables(std::span<const Pronunciation> parts) {
    std::vector<Pronunciation> found;
    for (const Pronunciation& part : parts)
        for (Pronunciation& syllable : syllables(part)) found.push_back(std::move(syllable));
    return found;
}

bool isAmbisyllabic(const Pronunciation& word) {
    const std::vector<std::size_t> vowels = nuclei(word);
    for (std::size_t i = 0; i + 1 < vowels.size(); ++i) {
        const Sound& vowel = word[vowels[i]];
        const bool stressed_short = isChecked(vowel.phoneme) && vowel.stress != Stress::none;
        const std::size_t between = vowels[i + 1] - vowels[i] - 1;
        if (stressed_short && between == 1 && word[vowels[i + 1]].stress == Stress::none)
            return true;
    }
    return false;
}

}  // namespace wrenlet::speech
