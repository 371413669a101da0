// Whether a take is probably another word than its text: the ear's judgement turned into advice.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/word_ear.hpp"

namespace wrenlet::desk {

/// EarJudgement::margin below which another word is named. Chosen on the tuning part of the
/// labelled set (tests/ear), so that a right word is seldom blamed.
inline constexpr double kAnotherBelow = -6;

/// For words and parts of two sounds and more, said with a vowel. `spoken`: the take's spoken part.
/// Nothing when it fits, when there is nothing to compare it with, or without an ear.
std::optional<Finding> anotherWord(const Pcm& spoken, const pack::VoiceNeed& need, WordEar* ear,
                                   std::span<const SaidWord> others);

inline constexpr std::size_t kMostOthers = 20;  // more take longer and blame right words oftener

/// What she may have said instead of `queue[at]`: the words around it in her list, the nearest
/// first, without those that sound the same. REQUIRES: at < queue.size().
std::vector<SaidWord> othersAround(std::span<const pack::VoiceNeed> queue, std::size_t at);

}  // namespace wrenlet::desk
