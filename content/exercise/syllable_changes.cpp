#include <map>

#include "content/exercise/changes.hpp"
#include "content/exercise/foils.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/syllable.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;

std::vector<Pronunciation> sureSyllables(const Word& word) {
    const int count = speech::syllableCount(word.sounds);
    if (!breaksBySound(word) || count < 2 || count > 4) return {};
    if (speech::countVaries(word.sounds)) return {};
    return speech::syllables(word.sounds);
}

/// True iff the two syllables share a consonant (puppet, pillow) that can be heard in both: pup,
/// pet.
bool shareConsonant(const Word& word, const std::vector<Pronunciation>& syllables) {
    return syllables.size() == 2 && speech::isAmbisyllabic(word.sounds) &&
           syllables[0].back().phoneme != speech::Phoneme::ng;
}

}  // namespace

std::vector<Change> syllableChanges(const Vocabulary& vocabulary, Task task) {
    std::map<std::string, const Word*> words;
    for (const bool pictured : {true, false})
        for (const Word& word : vocabulary.words)
            if (word.picture.empty() != pictured) words.emplace(soundKey(word.sounds), &word);
    const auto wordOf = [&words](const Pronunciation& sounds) -> const Word* {
        const auto found = words.find(soundKey(sounds));
        return found == words.end() ? nullptr : found->second;
    };

    std::vector<Change> changes;
    for (const Word& word : vocabulary.words) {
        const std::vector<Pronunciation> parts = sureSyllables(word);
        for (const bool first : {true, false}) {
            if (parts.empty()) break;
            const bool shared = shareConsonant(word, parts);
            if (speech::isAmbisyllabic(word.sounds) && (first || !shared)) continue;
            Pronunciation part = first ? parts.front() : parts.back();
            const auto cut = static_cast<std::ptrdiff_t>(part.size());
            if (shared) part.insert(part.begin(), parts.front().back());
            const Pronunciation rest =
                first ? Pronunciation(word.sounds.begin() + cut, word.sounds.end())
                      : Pronunciation(word.sounds.begin(), word.sounds.end() - cut);
            const Word* shorter = wordOf(rest);
            if (shorter == nullptr || speech::sameSounds(part, rest)) continue;
            const TurnsOn turns_on{speech::ipa(part),
                                   first ? Position::first_part : Position::last_part};
            const Word* other = wordOf(part);
            if (task == Task::remove && !shorter->picture.empty())
                changes.push_back(
                    {&word,
                     shorter,
                     {partOf(part)},
                     turns_on,
                     other != nullptr ? std::vector{other} : std::vector<const Word*>{}});
            if (task == Task::add && !word.picture.empty())
                changes.push_back({shorter, &word, {partOf(part)}, turns_on, {}});
        }
    }
    return changes;
}

}  // namespace wrenlet::exercise
