#include "content/speech/compound.hpp"

#include <algorithm>
#include <array>

#include "content/speech/features.hpp"

namespace wrenlet::speech {

namespace {

using P = Phoneme;

bool isReduced(P phoneme) {
    return phoneme == P::ax || phoneme == P::ih;
}

/// Words that lose their vowel at the end of a compound and are still heard as themselves.
bool isWeakPart(const Pronunciation& part) {
    const auto is = [&part](std::initializer_list<P> sounds) {
        return std::equal(part.begin(), part.end(), sounds.begin(), sounds.end(),
                          [](const Sound& sound, P phoneme) { return sound.phoneme == phoneme; });
    };
    return is({P::m, P::ae, P::n}) || is({P::m, P::eh, P::n}) || is({P::l, P::ae, P::n, P::d});
}

/// Reads the parts off the whole, part by part; a doubled consonant opens two ways to go on.
class Joint {
  public:
    Joint(std::span<const Pronunciation> parts, const Pronunciation& whole)
        : parts_(parts), whole_(whole) {}

    bool reads(std::size_t part = 0, std::size_t at = 0) const {
        if (part == parts_.size()) return at == whole_.size();
        if (part > 0 && isDoubled(part) && readsOn(part, at - 1)) return true;
        return readsOn(part, at);
    }

  private:
    bool isDoubled(std::size_t part) const {
        const Pronunciation &before = parts_[part - 1], &after = parts_[part];
        return !before.empty() && !after.empty() && !isVowel(after.front().phoneme) &&
               before.back().phoneme == after.front().phoneme;
    }

    bool readsOn(std::size_t part, std::size_t at) const {
        const Pronunciation& sounds = parts_[part];
        if (sounds.empty() || at + sounds.size() > whole_.size()) return false;
        for (std::size_t i = 0; i < sounds.size(); ++i)
            if (!isHeardAs(sounds, i, whole_[at + i])) return false;
        return keepsItsBeat(part, at) && reads(part + 1, at + sounds.size());
    }

    bool isHeardAs(const Pronunciation& part, std::size_t i, const Sound& heard) const {
        const Sound& sound = part[i];
        if (sound.phoneme == heard.phoneme) return true;
        // fire: one beat or two
        const bool both_r = (sound.phoneme == P::er || sound.phoneme == P::r) &&
                            (heard.phoneme == P::er || heard.phoneme == P::r);
        if (both_r) return i > 0 && glidesFar(part[i - 1].phoneme);
        if (!isVowel(sound.phoneme) || !isReduced(heard.phoneme)) return false;
        return heard.stress != Stress::primary &&
               (sound.stress == Stress::none || isWeakPart(part));
    }

    /// A part of a compound keeps a stress, main or half: "room" has none in "mushroom". Before
    /// the main stress it may lack one: "without".
    bool keepsItsBeat(std::size_t part, std::size_t at) const {
        const auto begin = whole_.begin() + static_cast<std::ptrdiff_t>(at);
        const auto end = begin + static_cast<std::ptrdiff_t>(parts_[part].size());
        const auto stressed = [](const Sound& sound) { return sound.stress != Stress::none; };
        if (std::any_of(begin, end, stressed)) return true;
        if (part > 0) return isWeakPart(parts_[part]);
        return std::any_of(end, whole_.end(),
                           [](const Sound& sound) { return sound.stress == Stress::primary; });
    }

    std::span<const Pronunciation> parts_;
    const Pronunciation& whole_;
};

/// Beginnings and endings that are spelled like words.
constexpr std::array<std::string_view, 9> kBeginnings = {"ant", "con", "dis", "mis", "per",
                                                         "pre", "pro", "red", "sub"};
constexpr std::array<std::string_view, 22> kEndings = {
    "able", "age", "ant", "ate",  "ence", "ent",  "ess",  "est",  "ful",  "hood", "ing",
    "ish",  "ism", "ist", "less", "ling", "ment", "ness", "ship", "some", "ten",  "ton"};

/// The only words of two letters that are parts of compounds a child meets.
constexpr std::array<std::string_view, 9> kShortParts = {"by", "go", "in", "me", "my",
                                                         "no", "on", "ox", "up"};

template <class Words>
bool has(const Words& words, std::string_view word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool mayBeCut(std::string_view first, std::string_view second) {
    const auto may_be_part = [](std::string_view part) {
        return part.size() > 2 || has(kShortParts, part);
    };
    return may_be_part(first) && may_be_part(second) && !has(kBeginnings, first) &&
           !has(kEndings, second);
}

/// How the word sounds when the two make it; empty if they do not.
Pronunciation heardIn(const std::vector<Pronunciation>& first,
                      const std::vector<Pronunciation>& second,
                      const std::vector<Pronunciation>& listed) {
    for (const Pronunciation& a : first)
        for (const Pronunciation& b : second)
            for (const Pronunciation& whole : listed)
                if (joinsTo(std::array{a, b}, whole)) return whole;
    return {};
}

/// "merry-go-round" as its three words; nothing when one is not listed or it sounds otherwise.
std::vector<CompoundSplit> cutAtHyphens(std::string_view word, const WordLookUp& look_up,
                                        const std::vector<Pronunciation>& listed) {
    CompoundSplit split;
    std::vector<Pronunciation> said;
    for (std::size_t begin = 0; begin <= word.size();) {
        const std::size_t end = std::min(word.find('-', begin), word.size());
        split.parts.emplace_back(word.substr(begin, end - begin));
        const auto part = look_up(split.parts.back());
        if (part.empty()) return {};
        said.push_back(part.front());
        begin = end + 1;
    }
    if (listed.empty()) split.said = joined(said);
    for (const Pronunciation& whole : listed)
        if (split.said.empty() && joinsTo(said, whole)) split.said = whole;
    if (split.said.empty()) return {};
    return {std::move(split)};
}

}  // namespace

bool joinsTo(std::span<const Pronunciation> parts, const Pronunciation& whole) {
    return !parts.empty() && Joint(parts, whole).reads();
}

Pronunciation joined(std::span<const Pronunciation> parts) {
    Pronunciation whole;
    for (const Pronunciation& part : parts) {
        const bool is_first = whole.empty();
        for (Sound sound : part) {
            if (!is_first && sound.stress == Stress::primary) sound.stress = Stress::secondary;
            whole.push_back(sound);
        }
    }
    return whole;
}

std::vector<CompoundSplit> compoundParts(std::string_view word, const WordLookUp& look_up) {
    const std::vector<Pronunciation> listed = look_up(word);
    if (word.find('-') != word.npos) return cutAtHyphens(word, look_up, listed);
    std::vector<CompoundSplit> splits;
    for (std::size_t cut = 2; cut + 2 <= word.size(); ++cut) {
        const std::string_view a = word.substr(0, cut), b = word.substr(cut);
        if (!mayBeCut(a, b)) continue;
        const auto first = look_up(a), second = look_up(b);
        if (first.empty() || second.empty()) continue;
        Pronunciation said = listed.empty() ? joined(std::array{first.front(), second.front()})
                                            : heardIn(first, second, listed);
        if (!said.empty()) splits.push_back({{std::string(a), std::string(b)}, std::move(said)});
    }
    // Words for children are short: the more even the parts, the likelier both are words.
    const auto unevenness = [](const CompoundSplit& split) {
        const auto a = split.parts[0].size(), b = split.parts[1].size();
        return std::max(a, b) - std::min(a, b);
    };
    std::stable_sort(splits.begin(), splits.end(),
                     [&](const auto& a, const auto& b) { return unevenness(a) < unevenness(b); });
    return splits;
}

}  // namespace wrenlet::speech
