// Whose ears? Some words that a dictionary tells apart are one word to many speakers. No item may
// turn on such a pair; the accents themselves, and what each merges, are not told apart here yet.
#pragma once

#include "content/speech/phoneme.hpp"

namespace wrenlet::speech {

/// True iff many speakers of English in North America say both alike: the same sounds, or apart
/// only by cot and caught (ɑ, ɔ), pin and pen (ɪ, ɛ before a nasal), or merry and marry (ɛ, æ
/// before ɹ).
bool saidAlikeByMany(const Pronunciation& a, const Pronunciation& b);

}  // namespace wrenlet::speech
