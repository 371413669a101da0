// Hears a vowel added to a lone consonant: "buh" for /b/, which makes blending harder for a child.
#pragma once

#include <optional>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/trim.hpp"
#include "editor/voice/word_ear.hpp"

namespace wrenlet::desk {

/// True iff `need` is said without any vowel: a lone consonant or several.
bool isWithoutVowel(const pack::VoiceNeed& need);

/// True iff a vowel added to it can be told from the sound itself: not for l, r, w and y, which are
/// as voiced and as open as a vowel is.
bool canTellAddedVowel(const pack::VoiceNeed& need);

/// What speaks for a vowel and against it.
struct VowelEvidence {
    std::optional<Finding> by_rule;  // on the frames of the sound
    std::optional<VowelJudgement> by_ear;
    double voiced_s = 0;  // s of the ear's vowel in which a voice is surely heard
};
/// `ear` may be null. Nothing at all where canTellAddedVowel says no.
VowelEvidence vowelEvidence(const Pcm& take, const HeardSpeech& heard, const pack::VoiceNeed& need,
                            WordEar* ear);

/// A vowel is heard where the ear's margin is below one limit, or the rule finds one too and the
/// margin is below the other; either way a voice must be in it, for a breath may be like a vowel in
/// all else. Chosen on the tuning part of the labelled set by wrenlet-ear --tune --fit.
struct VowelLimits {
    double surely = -240, with_rule = -100;  // VowelJudgement::margin
    double voiced_s = 0.01;
};
/// The vowel's place and length in s, as the ear tells them; nothing when none is heard. Without a
/// judgement the rule decides alone. ./check --ear prints how often it is right with the ear and
/// without, on synthesized voices.
std::optional<Finding> addedVowel(const VowelEvidence& evidence, VowelLimits limits = {});

}  // namespace wrenlet::desk
