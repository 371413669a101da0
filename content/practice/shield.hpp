// Whose difference is not an error: a shield names a contrast that a child's accent, first language
// or age does not make ("b/v", "pin-pen"). A wrong answer along it says nothing of the child, and a
// sound that is missed only along it is never called missed.
#pragma once

#include <span>
#include <string>

#include "content/practice/mastery.hpp"

namespace wrenlet::practice {

/// Of the wrong answers in `evidence`, those that took a sound for the other side of a shielded
/// contrast, by what they mean ("heard /v/ for /b/ first"). A shield is two IPA symbols around a
/// slash, or the name of a merger: pin-pen (ɪ, ɛ before a nasal), cot-caught (ɑ, ɔ), merry-marry
/// (ɛ, æ). Any other shield covers nothing.
int shieldedMisses(const Cell& cell, const Evidence& evidence,
                   std::span<const std::string> shields);

/// The evidence without those answers: what it says where the child could be heard to differ.
Evidence withoutShielded(const Cell& cell, Evidence evidence, std::span<const std::string> shields);

}  // namespace wrenlet::practice
