#include "content/speech/compound.hpp"

namespace wrenlet::speech {

namespace {

/// The parts in a row; of two equal consonants that meet, one.
Pronunciation joined(std::span<const Pronunciation> parts) {
    Pronunciation whole;
    for (const Pronunciation& part : parts) {
        auto from = part.begin();
        if (!whole.empty() && from != part.end() && !isVowel(from->phoneme) &&
            whole.back().phoneme == from->phoneme)
            ++from;
        whole.insert(whole.end(), from, part.end());
    }
    return whole;
}

bool isReduced(Phoneme phoneme) {
    return phoneme == Phoneme::ax || phoneme == Phoneme::ih;
}

}  // namespace

bool joinsTo(std::span<const Pronunciation> parts, const Pronunciation& whole) {
    const Pronunciation said = joined(parts);
    if (said.size() != whole.size()) return false;
    for (std::size_t i = 0; i < said.size(); ++i) {
        if (said[i].phoneme == whole[i].phoneme) continue;
        const bool reduced = isVowel(said[i].phoneme) && isReduced(whole[i].phoneme) &&
                             whole[i].stress != Stress::primary;
        if (!reduced) return false;
    }
    return true;
}

}  // namespace wrenlet::speech
