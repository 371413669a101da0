#include "content/exercise/in_accents_rules.hpp"
#include "content/speech/syllable.hpp"

// Parts that are said alone, and the word that they make.

namespace wrenlet::exercise::accents {

namespace {

using speech::Pronunciation;

Pronunciation copied(std::span<const speech::Sound> sounds) {
    return {sounds.begin(), sounds.end()};
}

void append(Pronunciation& sounds, const Pronunciation& more) {
    sounds.insert(sounds.end(), more.begin(), more.end());
}

bool hasVowel(const Pronunciation& sounds) {
    return speech::syllableCount(sounds) > 0;
}

/// What the ear makes of a part that is said alone. Of a single sound nothing but itself: whoever
/// says it alone means that sound. A syllable may be a single sound too, and is no drill of it.
Pronunciation partHeard(const Part& part, const Pronunciation& sounds, Unit unit, Ear ear) {
    const bool is_sound = part.clip.compare(0, 6, "sound:") == 0;
    if (is_sound && unit != Unit::syllable) return sounds;
    return hasVowel(sounds) ? speech::inAccent(ear, sounds) : saidBefore(ear, sounds);
}

/// Empty when the parts are not those of the word.
std::vector<Pronunciation> partsHeard(const Item& item, const Word& word, Ear ear) {
    std::vector<Pronunciation> parts;
    std::span<const speech::Sound> rest = word.sounds;
    for (const Part& part : item.parts) {
        const std::size_t length = firstAs(rest, afterColon(part.clip));
        if (length == 0) return {};
        parts.push_back(partHeard(part, copied(rest.first(length)), item.skill.unit, ear));
        rest = rest.subspan(length);
    }
    return rest.empty() ? parts : std::vector<Pronunciation>{};
}

bool isOnsetAndRime(const std::vector<Pronunciation>& parts) {
    return parts.size() == 2 && !parts[0].empty() && !hasVowel(parts[0]) &&
           speech::syllableCount(parts[1]) == 1;
}

}  // namespace

std::string_view afterColon(std::string_view clip) {
    return clip.substr(clip.find(':') + 1);
}

std::size_t firstAs(std::span<const speech::Sound> sounds, std::string_view ipa) {
    for (std::size_t length = 1; length <= sounds.size(); ++length)
        if (speech::ipa(copied(sounds.first(length))) == ipa) return length;
    return 0;
}

std::size_t lastAs(std::span<const speech::Sound> sounds, std::string_view ipa) {
    for (std::size_t length = 1; length <= sounds.size(); ++length)
        if (speech::ipa(copied(sounds.last(length))) == ipa) return length;
    return 0;
}

bool keepsCompound(const Word& word, const Vocabulary& vocabulary, Ear ear) {
    Pronunciation together, heard_together;
    for (const std::string& id : word.compound) {
        const Word* part = vocabulary.word(id);
        if (part == nullptr) return false;
        append(together, part->sounds);
        append(heard_together, speech::inAccent(ear, part->sounds));
    }
    return speech::sameSounds(speech::inAccent(ear, together), heard_together);
}

Pronunciation saidBefore(Ear ear, Pronunciation sounds) {
    sounds.push_back(kPlainVowel);
    Pronunciation heard = speech::inAccent(ear, sounds);
    heard.pop_back();
    return heard;
}

bool keepsParts(const Item& item, const Vocabulary& vocabulary, Ear ear) {
    const Word& word = *vocabulary.word(item.subject);
    const auto [unit, task] = item.skill;
    if (unit == Unit::compound) return keepsCompound(word, vocabulary, ear);
    const Pronunciation heard = speech::inAccent(ear, word.sounds);
    // Counted is how many syllables there are; where one ends is not scored.
    if (unit == Unit::syllable && task != Task::blend)
        return speech::syllableCount(heard) == speech::syllableCount(word.sounds) &&
               !speech::countVaries(heard);
    const auto parts = partsHeard(item, word, ear);
    Pronunciation together;
    for (const Pronunciation& part : parts) {
        if (part.empty()) return false;
        append(together, part);
    }
    if (!speech::sameSounds(together, heard)) return false;
    return unit != Unit::onset_rime || task == Task::blend || isOnsetAndRime(parts);
}

}  // namespace wrenlet::exercise::accents
