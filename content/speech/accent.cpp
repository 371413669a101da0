#include "content/speech/accent.hpp"

#include <algorithm>
#include <array>

namespace wrenlet::speech {

namespace {

using P = Phoneme;
using enum Beside;

constexpr std::array kAll = {Accent::cot_caught,  Accent::before_r,    Accent::pin_pen,
                             Accent::th_fronting, Accent::th_stopping, Accent::foot_strut,
                             Accent::non_rhotic};

constexpr std::array kMany = {Accent::cot_caught, Accent::before_r, Accent::pin_pen};

constexpr Rewrite kCotCaught[] = {{P::ao, anything, not_r, WithStress::any, P::aa}};

constexpr Rewrite kBeforeR[] = {{P::ae, anything, r, WithStress::any, P::eh},
                                {P::ey, anything, r, WithStress::any, P::eh}};

constexpr Rewrite kPinPen[] = {{P::eh, anything, nasal, WithStress::any, P::ih}};

constexpr Rewrite kThFronting[] = {{P::th, anything, anything, WithStress::any, P::f},
                                   {P::dh, not_edge, anything, WithStress::any, P::v}};

constexpr Rewrite kThStopping[] = {{P::th, anything, anything, WithStress::any, P::t},
                                   {P::dh, anything, anything, WithStress::any, P::d}};

constexpr Rewrite kFootStrut[] = {{P::ah, anything, anything, WithStress::any, P::uh}};

// near, square and cure end in a schwa; start, north and nurse lose the ɹ and keep their vowel.
constexpr Rewrite kNonRhotic[] = {
    {P::er, anything, vowel, WithStress::none, P::ax, P::r},
    {P::er, anything, no_vowel, WithStress::none, P::ax},
    {P::r, near_vowel, no_vowel, WithStress::any, P::ax},
    {P::r, anything, no_vowel, WithStress::any, std::nullopt},
};

struct Row {
    std::string_view name, meaning;
    std::span<const Rewrite> rules;
};

/// In the order of Accent.
constexpr std::array<Row, kAll.size()> kRows = {{
    {"cot-caught", "where cot and caught are said alike", kCotCaught},
    {"before-r", "where merry, marry and Mary are said alike", kBeforeR},
    {"pin-pen", "where pin and pen are said alike", kPinPen},
    {"th-fronting", "where three is said like free", kThFronting},
    {"th-stopping", "where three is said like tree", kThStopping},
    {"foot-strut", "where putt is said like put", kFootStrut},
    {"non-rhotic", "where spar is said like spa", kNonRhotic},
}};

const Row& rowOf(Accent accent) {
    return kRows[static_cast<std::size_t>(accent)];
}

bool isOneOf(const Sound* sound, std::initializer_list<P> phonemes) {
    return sound != nullptr &&
           std::find(phonemes.begin(), phonemes.end(), sound->phoneme) != phonemes.end();
}

bool fits(Beside wanted, const Sound* beside) {
    switch (wanted) {
        case not_edge:
            return beside != nullptr;
        case vowel:
            return beside != nullptr && isVowel(beside->phoneme);
        case no_vowel:
            return beside == nullptr || !isVowel(beside->phoneme);
        case near_vowel:
            return isOneOf(beside, {P::ih, P::eh, P::uh});
        case nasal:
            return isOneOf(beside, {P::m, P::n, P::ng});
        case r:
            return isOneOf(beside, {P::r});
        case not_r:
            return !isOneOf(beside, {P::r});
        default:
            return true;
    }
}

bool fits(WithStress wanted, Stress stress) {
    return wanted == WithStress::any || stress == Stress::none;
}

Pronunciation rewritten(const Rewrite& rule, const Pronunciation& word) {
    Pronunciation said;
    for (std::size_t i = 0; i < word.size(); ++i) {
        const Sound& sound = word[i];
        const Sound* left = i > 0 ? &word[i - 1] : nullptr;
        const Sound* right = i + 1 < word.size() ? &word[i + 1] : nullptr;
        if (sound.phoneme != rule.phone || !fits(rule.stress, sound.stress) ||
            !fits(rule.left, left) || !fits(rule.right, right)) {
            said.push_back(sound);
            continue;
        }
        if (rule.to) said.push_back({*rule.to, sound.stress});
        if (rule.then) said.push_back({*rule.then});
    }
    return said;
}

/// For each phoneme the first one that the rules of kMany may make of it or of what becomes it.
using Merged = std::array<std::size_t, kPhonemeCount>;

constexpr Merged mergedByMany() {
    Merged merged{};
    for (std::size_t i = 0; i < merged.size(); ++i) merged[i] = i;
    for (const std::span<const Rewrite> rules :
         {std::span<const Rewrite>(kCotCaught), std::span<const Rewrite>(kBeforeR),
          std::span<const Rewrite>(kPinPen)})
        for (const Rewrite& rule : rules) {
            const std::size_t one = merged[static_cast<std::size_t>(rule.phone)];
            const std::size_t other = merged[static_cast<std::size_t>(*rule.to)];
            for (std::size_t& phoneme : merged)
                if (phoneme == one) phoneme = other;
        }
    return merged;
}

/// False for most words at little cost: the rules of kMany change sounds in their places.
bool mayBecomeAlike(const Pronunciation& a, const Pronunciation& b) {
    static constexpr Merged kMerged = mergedByMany();
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Sound& x, const Sound& y) {
        return kMerged[static_cast<std::size_t>(x.phoneme)] ==
               kMerged[static_cast<std::size_t>(y.phoneme)];
    });
}

}  // namespace

std::span<const Accent> allAccents() {
    return kAll;
}

std::string_view accentName(Accent accent) {
    return rowOf(accent).name;
}

std::optional<Accent> accentNamed(std::string_view name) {
    for (const Accent accent : kAll)
        if (rowOf(accent).name == name) return accent;
    return std::nullopt;
}

std::string_view accentMeaning(Accent accent) {
    return rowOf(accent).meaning;
}

std::span<const Rewrite> rewrites(Accent accent) {
    return rowOf(accent).rules;
}

Pronunciation inAccent(Accent accent, const Pronunciation& word) {
    Pronunciation said = word;
    for (const Rewrite& rule : rewrites(accent)) said = rewritten(rule, said);
    return said;
}

Pronunciation inAccent(std::span<const Accent> accents, const Pronunciation& word) {
    Pronunciation said = word;
    for (const Accent accent : kAll)
        if (std::find(accents.begin(), accents.end(), accent) != accents.end())
            said = inAccent(accent, said);
    return said;
}

std::vector<Pronunciation> waysOfMany(const Pronunciation& word) {
    std::vector<Pronunciation> ways{word};
    for (const Accent accent : kMany) ways.push_back(inAccent(accent, word));
    ways.push_back(inAccent(kMany, word));
    return ways;
}

bool saidAlikeByMany(const Pronunciation& a, const Pronunciation& b) {
    if (!mayBecomeAlike(a, b)) return false;
    if (sameSounds(a, b) || sameSounds(inAccent(kMany, a), inAccent(kMany, b))) return true;
    return std::any_of(kMany.begin(), kMany.end(), [&](Accent accent) {
        return sameSounds(inAccent(accent, a), inAccent(accent, b));
    });
}

}  // namespace wrenlet::speech
