#include "editor/voice/take.hpp"

#include <algorithm>

#include "editor/voice/added_vowel.hpp"
#include "editor/voice/another_word.hpp"
#include "editor/voice/level.hpp"
#include "editor/voice/take_checks.hpp"

namespace wrenlet::desk {
namespace {

std::size_t sampleOf(double seconds, const Pcm& take) {
    return std::min(static_cast<std::size_t>(std::max(0.0, seconds) * take.rate),
                    take.samples.size());
}

}  // namespace

CheckedTake checkedTake(Pcm take, const pack::VoiceNeed& need, WordEar* ear,
                        std::span<const SaidWord> others) {
    CheckedTake checked;
    checked.take = std::move(take);
    checked.heard = heardIn(checked.take);
    checked.findings = checkTake(checked.take, checked.heard, need);
    checked.spoken = checked.heard.all();
    if (checked.spoken.empty()) return checked;
    if (const auto vowel = addedVowel(vowelEvidence(checked.take, checked.heard, need, ear)))
        checked.findings.push_back(*vowel);
    if (const auto other = anotherWord(cutOut(checked.take, checked.spoken), need, ear, others))
        checked.findings.push_back(*other);
    const Stretch kept = widened(checked.spoken, kTrimMargin, checked.take);
    return withEnds(std::move(checked), kept, need);
}

CheckedTake withEnds(CheckedTake checked, Stretch kept, const pack::VoiceNeed& need) {
    kept.end = std::min(kept.end, checked.take.samples.size());
    kept.begin = std::min(kept.begin, kept.end);
    checked.kept = kept;
    checked.lufs = spokenLufs(checked.take, checked.spoken, need);
    checked.clip = levelClip(checked.take, kept, checked.spoken, need);
    return checked;
}

Stretch endsWithout(const CheckedTake& checked, const Finding& finding) {
    Stretch kept = checked.kept;
    if (finding.trouble == Trouble::added_vowel)
        kept.end = std::max(kept.begin, sampleOf(finding.begin_s, checked.take));
    if (finding.trouble == Trouble::two_tries) {
        const std::size_t before = sampleOf(finding.end_s, checked.take);
        for (const Stretch& burst : checked.heard.bursts) {
            if (burst.begin <= before) continue;
            kept.begin = widened(burst, kTrimMargin, checked.take).begin;
            break;
        }
    }
    return kept;
}

}  // namespace wrenlet::desk
