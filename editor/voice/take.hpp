// From a take to a clip: everything that is heard, found and made of one recording, as one value.
// A pure call that may take a tenth of a second, so the booth makes it off the thread that draws.
#pragma once

#include <span>
#include <vector>

#include "content/pack/pack_builder.hpp"
#include "editor/voice/finding.hpp"
#include "editor/voice/trim.hpp"
#include "editor/voice/word_ear.hpp"

namespace wrenlet::desk {

struct CheckedTake {
    Pcm take;  // untouched, as it came
    HeardSpeech heard;
    Stretch spoken;                 // of the take; empty when silent
    Stretch kept;                   // spoken with its margins: where the grips stand
    double lufs = -100;             // of what is spoken, before it is brought to one loudness
    std::vector<Finding> findings;  // the gravest first
    Pcm clip;  // what children hear: kClipRate, soft edges, one loudness; empty when silent
};

/// Looks at a take of any rate from 16 to 192 kHz. `ear` may be null, and `others` are what she may
/// have said instead: the other words of her list.
CheckedTake checkedTake(Pcm take, const pack::VoiceNeed& need, WordEar* ear = nullptr,
                        std::span<const SaidWord> others = {});

/// The same take with other ends: a grip moved, one of two tries kept, the "uh" cut off. `kept` is
/// taken as it is, with soft edges.
CheckedTake withEnds(CheckedTake checked, Stretch kept, const pack::VoiceNeed& need);

/// The ends that leave out what a finding marks: before an added vowel, the later of two tries.
Stretch endsWithout(const CheckedTake& checked, const Finding& finding);

}  // namespace wrenlet::desk
