// Hears a vowel added to a lone consonant: "buh" for /b/, which makes blending harder for a child.
#pragma once

#include <optional>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/trim.hpp"

namespace wrenlet::desk {

/// True iff `need` is said without any vowel: a lone consonant or several.
bool isWithoutVowel(const pack::VoiceNeed& need);

/// True iff a vowel added to it can be told from the sound itself: not for l, r, w and y, which are
/// as voiced and as open as a vowel is.
bool canTellAddedVowel(const pack::VoiceNeed& need);

/// The vowel's place and length in s; nothing when none is heard, the need has one of its own or
/// canTellAddedVowel says no. ./check --ear prints how often it is right, on synthesized voices.
std::optional<Finding> addedVowel(const Pcm& take, const HeardSpeech& heard,
                                  const pack::VoiceNeed& need);

}  // namespace wrenlet::desk
