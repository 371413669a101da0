// The sounds of English that words are made of. One phoneme is the smallest sound that tells two
// words apart; everything above it (onset, rime, syllable, word) is a run of phonemes.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::speech {

/// Named after the dictionary's own letters (ARPABET, as in the CMU Pronouncing Dictionary);
/// `ax` is its unstressed AH, the schwa.
enum class Phoneme : std::uint8_t {
    // vowels
    aa,
    ae,
    ah,
    ao,
    aw,
    ax,
    ay,
    eh,
    er,
    ey,
    ih,
    iy,
    ow,
    oy,
    uh,
    uw,
    // consonants
    b,
    ch,
    d,
    dh,
    f,
    g,
    hh,
    jh,
    k,
    l,
    m,
    n,
    ng,
    p,
    r,
    s,
    sh,
    t,
    th,
    v,
    w,
    y,
    z,
    zh,
};
inline constexpr std::size_t kPhonemeCount = 40;

bool isVowel(Phoneme phoneme);

/// A symbol of the International Phonetic Alphabet: "æ", "tʃ", "ɹ", "ɡ". Files hold these.
std::string_view ipa(Phoneme phoneme);
std::optional<Phoneme> fromIpa(std::string_view symbol);

/// The dictionary's letters, upper case without a stress digit: "AE". Only the dictionary reader
/// and the synthesizer use them.
std::string_view arpabet(Phoneme phoneme);
std::optional<Phoneme> fromArpabet(std::string_view symbol);

/// How far apart two sounds are to the ear, from features of place, manner and voice (height,
/// backness and length for vowels): 0 for the same, 1 for a difference in one feature (t/d),
/// up to about 6 for a vowel against a stop.
int distance(Phoneme a, Phoneme b);

enum class Stress : std::uint8_t { none, primary, secondary };

/// A phoneme where it stands in a word. Stress is `none` for every consonant.
struct Sound {
    Phoneme phoneme;
    Stress stress = Stress::none;
    bool operator==(const Sound&) const = default;
};

/// How a word is said, from its first sound to its last.
using Pronunciation = std::vector<Sound>;

/// IPA without spaces, for a label: "kæt".
std::string ipa(const Pronunciation& sounds);

/// Reads a pronunciation in the dictionary's letters, stress after each vowel: "K AE1 T". AH0 is
/// the schwa. Nothing if a symbol is unknown, a vowel has no stress, or there is no sound at all.
std::optional<Pronunciation> fromArpabetLine(std::string_view line);

/// True iff both have the same phonemes; stress may differ.
bool sameSounds(const Pronunciation& a, const Pronunciation& b);

}  // namespace wrenlet::speech
