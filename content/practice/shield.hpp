// Whose difference is not an error: a shield names a contrast that a child's accent, first language
// or age does not make ("b/v", "pin-pen"). A wrong answer along it says nothing of the child, and a
// sound that is missed only along it is never called missed.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "content/exercise/item.hpp"

namespace wrenlet::practice {

/// True iff a wrong answer with that meaning ("heard /v/ for /b/ first") took the sound for the
/// other side of a shielded contrast. A shield is two IPA symbols around a slash, or the name of a
/// merger: pin-pen (ɪ, ɛ before a nasal), cot-caught (ɑ, ɔ), merry-marry (ɛ, æ). Any other covers
/// nothing.
bool isShielded(const exercise::TurnsOn& turns_on, std::string_view means,
                std::span<const std::string> shields);

}  // namespace wrenlet::practice
