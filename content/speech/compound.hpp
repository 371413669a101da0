// Compounds: words whose parts are words. Whether two words make a compound is a matter of meaning
// and is decided by hand; whether a compound still sounds like its parts is computed here.
#pragma once

#include <span>

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// True iff the parts, said one after another, are heard as `whole`: the same sounds, but that a
/// vowel may be reduced (fireman) and a doubled consonant said once (bookcase). "cup" and "board"
/// do not make "cupboard" to the ear.
bool joinsTo(std::span<const Pronunciation> parts, const Pronunciation& whole);

}  // namespace wrenlet::speech
