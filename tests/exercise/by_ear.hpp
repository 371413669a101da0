// Says what is wrong with an item from the sounds of its words alone. It shares no code with the
// makers and the rules of fairness, and asks each question anew in every ear.
#pragma once

#include <string>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"
#include "content/speech/accent.hpp"

namespace wrenlet::byear {

/// How a word sounds to one listener: as the dictionary says it, or as an accent has it.
using Ear = speech::Pronunciation (*)(const speech::Pronunciation&);

struct NamedEar {
    const char* name;
    Ear hear;
};

/// The dictionary's, and those of many in North America: cot-caught, pin-pen, before-r, all three.
std::vector<NamedEar> ears();

/// A listener whom the makers do not heed, and the accents that this listener has.
struct OtherEar {
    NamedEar ear;
    std::vector<speech::Accent> accents;
};

/// th-fronting, th-stopping, foot-strut and non-rhotic, and the last two with either of the first:
/// nobody has both of those.
std::vector<OtherEar> otherEars();

/// Empty iff to this ear one choice is right, the one that the item says. What is shown and where
/// the sound that it turns on stands is judged by wrongs().
std::vector<std::string> wrongsTo(const NamedEar& ear, const exercise::Item& item,
                                  const exercise::Vocabulary& vocabulary);

/// Empty iff to every ear one choice is right, the one that the item says; what is shown has a
/// picture and what is heard is there; and the sound that the item turns on stands where it says.
std::vector<std::string> wrongs(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

/// What the item says against the standard that its skill names, Common Core State Standards,
/// Reading: Foundational Skills (2010), RF.K.2.a-e and RF.1.2.a-d; empty where none is named.
std::vector<std::string> againstStandard(const exercise::Item& item,
                                         const exercise::Vocabulary& vocabulary);

// --- for by_ear.cpp and by_ear_letters.cpp ---

/// Sounds as IPA symbols in a row.
std::vector<std::string> symbols(const speech::Pronunciation& sounds);
std::vector<std::string> symbols(std::string_view ipa);  // the longest symbols first
bool isVowelSymbol(std::string_view symbol);

/// Whether choice `i` of an item on letters is right.
bool isRightLetter(const exercise::Item& item, const exercise::Vocabulary& vocabulary, Ear ear,
                   std::size_t i);

}  // namespace wrenlet::byear
