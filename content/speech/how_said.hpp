// How a word that a teacher types is said, and how sure that is: out of the dictionary, from the
// parts of a compound, or guessed from its letters. What is guessed is offered, and she confirms it
// by ear.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "content/speech/lexicon.hpp"
#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// Guesses from spelling. Content links no synthesizer, so whoever has one hands it in.
class LetterToSound {
  public:
    virtual ~LetterToSound() = default;
    /// REQUIRES: 1 to kMostWordLetters lower-case letters a to z, apostrophes and hyphens.
    /// Empty when there is no guess.
    virtual Pronunciation guess(std::string_view word) const = 0;
};

enum class SaidBy { dictionary, repaired, parts, rules };
std::string_view saidByName(SaidBy source);  // "dictionary"

struct HowSaid {
    std::vector<Pronunciation> pronunciations;  // the likeliest first
    SaidBy source = SaidBy::rules;
    bool confirm_by_ear = true;      // always, but for words of the dictionary
    std::vector<std::string> parts;  // of a word said by its parts: {"tree", "house"}
};

/// The dictionary's pronunciations; for a word it lacks those of the likeliest compound, and then
/// a guess of `rules` (none if null). No pronunciation when nothing is known, and for what is no
/// word of English letters (see typed_word.hpp).
HowSaid howSaid(std::string_view word, const Lexicon& lexicon, const LetterToSound* rules);

}  // namespace wrenlet::speech
