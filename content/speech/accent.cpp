#include "content/speech/accent.hpp"

namespace wrenlet::speech {

namespace {

bool isNasal(Phoneme phoneme) {
    return phoneme == Phoneme::m || phoneme == Phoneme::n || phoneme == Phoneme::ng;
}

/// The sound as the broadest of those accents has it, before `next`.
Phoneme merged(Phoneme phoneme, const Sound* next) {
    if (phoneme == Phoneme::ao) return Phoneme::aa;
    if (phoneme == Phoneme::eh && next && isNasal(next->phoneme)) return Phoneme::ih;
    if (phoneme == Phoneme::ae && next && next->phoneme == Phoneme::r) return Phoneme::eh;
    return phoneme;
}

}  // namespace

bool saidAlikeByMany(const Pronunciation& a, const Pronunciation& b) {
    if (a.size() != b.size()) return false;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const Sound* after_a = i + 1 < a.size() ? &a[i + 1] : nullptr;
        const Sound* after_b = i + 1 < b.size() ? &b[i + 1] : nullptr;
        if (merged(a[i].phoneme, after_a) != merged(b[i].phoneme, after_b)) return false;
    }
    return true;
}

}  // namespace wrenlet::speech
