// Compounds: words whose parts are words. Whether two words make a compound is a matter of meaning
// and is decided by hand; whether a compound still sounds like its parts, and which words look like
// compounds, is computed here.
#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// True iff the parts, said one after another, are heard in `whole`, each with a beat of its own:
/// the same sounds, but that a consonant which ends one part and begins the next may be said once
/// or twice (bookcase), "fire" may have one beat, and man, men and land may be reduced (fireman).
/// "cup" and "board" do not make "cupboard" to the ear, nor "car" and "pet" a "carpet".
bool joinsTo(std::span<const Pronunciation> parts, const Pronunciation& whole);

/// The parts as one word: stressed on the first part, half stressed on the others. A consonant
/// that ends one part and begins the next is kept twice, as each part is said.
Pronunciation joined(std::span<const Pronunciation> parts);

/// How a word is listed; empty for an unknown one.
using WordLookUp = std::function<std::vector<Pronunciation>(std::string_view)>;

struct CompoundSplit {
    std::vector<std::string> parts;  // {"tree", "house"}; with hyphens maybe more than two
    Pronunciation said;              // the word as its parts say it, or as it is listed
};

/// The ways to cut `word` (lower case) into two listed words that it sounds like; for a word that
/// is not listed, into any two listed words. One with hyphens is cut at all of them. The likeliest
/// first. Endings and beginnings (-less, un-) and very short words are no parts. By sound and
/// letters alone some are wrong (checkmate, nickname): it is for a warning and for offering how an
/// unknown word is said, never for an item.
std::vector<CompoundSplit> compoundParts(std::string_view word, const WordLookUp& look_up);

}  // namespace wrenlet::speech
