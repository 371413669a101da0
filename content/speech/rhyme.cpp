#include "content/speech/rhyme.hpp"

#include <optional>

#include "content/speech/features.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::speech {

namespace {

std::optional<std::size_t> stressedVowel(const Pronunciation& word) {
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < word.size(); ++i) {
        if (word[i].stress == Stress::primary) return i;
        if (isVowel(word[i].phoneme)) last = i;
    }
    return last;
}

Pronunciation slice(const Pronunciation& word, std::size_t begin, std::size_t end) {
    return {word.begin() + static_cast<std::ptrdiff_t>(begin),
            word.begin() + static_cast<std::ptrdiff_t>(end)};
}

/// The most consonants before the vowel that English words begin with: /l/ of "believe".
Pronunciation onsetBefore(const Pronunciation& word, std::size_t vowel) {
    std::size_t begin = vowel;
    while (begin > 0 && !isVowel(word[begin - 1].phoneme) &&
           isOnset(std::span(word.data() + begin - 1, vowel - begin + 1)))
        --begin;
    return slice(word, begin, vowel);
}

}  // namespace

std::string_view rhymeKindName(RhymeKind kind) {
    switch (kind) {
        case RhymeKind::perfect:
            return "perfect";
        case RhymeKind::identical:
            return "identical";
        case RhymeKind::homophone:
            return "homophone";
        default:
            return "none";
    }
}

Pronunciation rhymingPart(const Pronunciation& word) {
    const auto vowel = stressedVowel(word);
    return vowel ? slice(word, *vowel, word.size()) : Pronunciation{};
}

Pronunciation rhymingKey(const Pronunciation& word) {
    Pronunciation part = rhymingPart(word);
    for (std::size_t i = 1; i < part.size(); ++i) {
        const bool closes = i + 1 == part.size() || !isVowel(part[i + 1].phoneme);
        if (part[i].phoneme == Phoneme::r && closes && glidesFar(part[i - 1].phoneme))
            part[i].phoneme = Phoneme::er;
    }
    return part;
}

Pronunciation rhymingOnset(const Pronunciation& word) {
    const auto vowel = stressedVowel(word);
    return vowel ? onsetBefore(word, *vowel) : Pronunciation{};
}

RhymeKind rhymeKind(const Pronunciation& a, const Pronunciation& b) {
    if (!stressedVowel(a) || !stressedVowel(b)) return RhymeKind::none;
    if (sameSounds(a, b)) return RhymeKind::homophone;
    if (!sameSounds(rhymingKey(a), rhymingKey(b))) return RhymeKind::none;
    return sameSounds(rhymingOnset(a), rhymingOnset(b)) ? RhymeKind::identical : RhymeKind::perfect;
}

std::string_view rhymeAnswerName(RhymeAnswer answer) {
    switch (answer) {
        case RhymeAnswer::yes:
            return "yes";
        case RhymeAnswer::no:
            return "no";
        default:
            return "depends";
    }
}

namespace {

std::string inSlashes(const Pronunciation& sounds) {
    return "/" + ipa(sounds) + "/";
}

std::string because(RhymeKind kind, const Pronunciation& a, const Pronunciation& b) {
    const std::string part = inSlashes(rhymingPart(a));
    switch (kind) {
        case RhymeKind::perfect:
            return "Both end in " + part + ", with another beginning before it.";
        case RhymeKind::identical:
            return "Both end in " + part +
                   " with the same beginning before it, so the same is "
                   "heard twice.";
        case RhymeKind::homophone:
            return "Both are said " + inSlashes(a) + ", so the same word is heard twice.";
        default:
            return "From the stressed vowel on, one is " + part + " and the other " +
                   inSlashes(rhymingPart(b)) + ".";
    }
}

}  // namespace

RhymeVerdict rhymeVerdict(const Pronunciation& a, const Pronunciation& b,
                          std::span<const Accent> accents) {
    RhymeVerdict verdict;
    verdict.kind = rhymeKind(a, b);
    verdict.why = because(verdict.kind, a, b);
    const bool rhymes = verdict.kind == RhymeKind::perfect;
    verdict.answer = rhymes ? RhymeAnswer::yes : RhymeAnswer::no;
    for (const Accent accent : accents) {
        const RhymeKind there = rhymeKind(inAccent(accent, a), inAccent(accent, b));
        if (verdict.kind == RhymeKind::none && there == RhymeKind::homophone)
            verdict.why += " They are one word to the ear " + std::string(accentMeaning(accent)) +
                           ", which is no rhyme either.";
        if ((there == RhymeKind::perfect) == rhymes) continue;
        verdict.answer = RhymeAnswer::depends;
        verdict.why += rhymes ? " They are no rhyme " : " They rhyme ";
        verdict.why += accentMeaning(accent);
        verdict.why += '.';
    }
    return verdict;
}

}  // namespace wrenlet::speech
