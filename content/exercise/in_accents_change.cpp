#include <algorithm>
#include <optional>

#include "content/exercise/in_accents_rules.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/syllable.hpp"

// A part put in, taken away or changed: done by ear to the word as it is heard, the right word
// comes out and no other.

namespace wrenlet::exercise::accents {

namespace {

using speech::Phoneme;
using speech::Pronunciation;

struct Outcome {
    Pronunciation sounds;
    bool there;  // done where it is asked
};

/// The single sounds that are heard alone: the one put in or taken away, and the one put for it.
struct LoneSounds {
    Phoneme first, last;
};

std::vector<Outcome> outcomes(const Item& item, const Pronunciation& from, LoneSounds lone) {
    std::vector<Outcome> found;
    const bool adds = item.skill.task == Task::add;
    const std::size_t places = adds ? from.size() + 1 : from.size();
    for (std::size_t i = 0; i < places; ++i) {
        if (!adds && from[i].phoneme != lone.first) continue;
        Pronunciation to = from;
        const auto at = to.begin() + static_cast<std::ptrdiff_t>(i);
        if (adds)
            to.insert(at, {lone.first});
        else if (item.skill.task == Task::remove)
            to.erase(at);
        else
            at->phoneme = lone.last;
        const Position position = positionOf(adds ? to : from, i);
        found.push_back({std::move(to), position == item.turns_on.position});
    }
    return found;
}

bool keepsSoundChange(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const auto first = speech::fromIpa(afterColon(item.parts[1].clip));
    const auto last = speech::fromIpa(afterColon(item.parts.back().clip));
    if (!first || !last) return false;
    const LoneSounds lone{*first, *last};
    const Pronunciation& from = vocabulary.word(item.subject)->sounds;
    const auto by_ear = outcomes(item, speech::inAccent(ear, from), lone);
    const auto as_written = outcomes(item, from, lone);
    // Taken away or changed, the sound may not come to stand there more often.
    if (item.skill.task != Task::add && by_ear.size() != as_written.size()) return false;
    auto all = by_ear;
    // Done as it is written it gives a word too, which the ear hears in its way.
    for (const Outcome& one : as_written)
        if (one.there) all.push_back({speech::inAccent(ear, one.sounds), true});
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        const Pronunciation word =
            speech::inAccent(ear, vocabulary.word(item.choices[i].id)->sounds);
        const auto gives = [&word](const Outcome& one) {
            return speech::sameSounds(one.sounds, word);
        };
        const bool holds =
            i == item.answer
                ? std::any_of(by_ear.begin(), by_ear.end(),
                              [&](const Outcome& one) { return one.there && gives(one); })
                : std::none_of(all.begin(), all.end(), gives);
        if (!holds) return false;
    }
    return true;
}

/// Two syllables said one after the other, or with the consonant that both have said once.
enum class Joint { plain, shared };

bool join(const Pronunciation& a, const Pronunciation& b, Joint joint, const Pronunciation& whole) {
    Pronunciation together = a;
    const bool has_shared = !a.empty() && !b.empty() && a.back().phoneme == b.front().phoneme &&
                            !speech::isVowel(b.front().phoneme);
    if (joint == Joint::shared && !has_shared) return false;
    together.insert(together.end(), b.begin() + (joint == Joint::shared ? 1 : 0), b.end());
    return speech::sameSounds(together, whole);
}

bool keepsSyllableChange(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const bool adds = item.skill.task == Task::add;
    const bool first = item.turns_on.position == Position::first_part;
    const Word& from = *vocabulary.word(item.subject);
    const Word& to = *vocabulary.word(item.choices[item.answer].id);
    const Word &longer = adds ? to : from, &shorter = adds ? from : to;
    // Its stress is that of the longer word.
    const std::span<const speech::Sound> all = longer.sounds;
    const std::string_view written = afterColon(item.parts[1].clip);
    const std::size_t length = first ? firstAs(all, written) : lastAs(all, written);
    if (length == 0) return false;
    const auto said = first ? all.first(length) : all.last(length);
    const Pronunciation part = speech::inAccent(ear, Pronunciation(said.begin(), said.end()));
    const Pronunciation whole = speech::inAccent(ear, longer.sounds);
    if (speech::syllableCount(part) != 1 || speech::countVaries(whole) ||
        speech::syllableCount(whole) != speech::syllableCount(longer.sounds))
        return false;
    const auto gives = [&](const Pronunciation& less, const Pronunciation& more, Joint joint) {
        return first ? join(part, less, joint, more) : join(less, part, joint, more);
    };
    const Pronunciation rest = speech::inAccent(ear, shorter.sounds);
    const Joint joint =
        shorter.sounds.size() + length > longer.sounds.size() ? Joint::shared : Joint::plain;
    if (!gives(rest, whole, joint)) return false;
    for (std::size_t i = 0; i < item.choices.size(); ++i) {
        if (i == item.answer) continue;
        const Pronunciation foil =
            speech::inAccent(ear, vocabulary.word(item.choices[i].id)->sounds);
        if (adds ? gives(rest, foil, joint) : gives(foil, whole, joint)) return false;
    }
    return true;
}

}  // namespace

bool keepsChange(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    switch (item.skill.unit) {
        case Unit::compound:
            return keepsCompound(*vocabulary.word(item.subject), vocabulary, ear) &&
                   keepsCompound(*vocabulary.word(item.choices[item.answer].id), vocabulary, ear);
        case Unit::syllable:
            return keepsSyllableChange(item, vocabulary, ear);
        default:
            return keepsSoundChange(item, vocabulary, ear);
    }
}

}  // namespace wrenlet::exercise::accents
