#include "content/exercise/blend_parts.hpp"

#include <algorithm>

#include "content/exercise/foils.hpp"
#include "content/exercise/sound_place.hpp"
#include "content/speech/compound.hpp"
#include "content/speech/syllable.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;

Blend blendOf(const Word& word, std::vector<Pronunciation> sounds) {
    Blend blend{&word, {}, std::move(sounds)};
    for (const Pronunciation& part : blend.sounds) blend.parts.push_back(partOf(part));
    return blend;
}

std::vector<Blend> asCompound(const Vocabulary& vocabulary, const Word& word) {
    if (word.compound.size() < 2 || word.compound.size() > 4) return {};
    Blend blend{&word, {}, {}};
    for (const std::string& id : word.compound) {
        const Word* part = vocabulary.word(id);
        if (part == nullptr) return {};
        blend.parts.push_back({wordClip(id), part->text});
        blend.sounds.push_back(part->sounds);
    }
    if (!speech::joinsTo(blend.sounds, word.sounds)) return {};
    return {blend};
}

std::vector<Blend> asSyllables(const Word& word) {
    const int count = speech::syllableCount(word.sounds);
    if (!breaksBySound(word) || count < 2 || count > 3) return {};
    if (speech::countVaries(word.sounds) || speech::isAmbisyllabic(word.sounds)) return {};
    return {blendOf(word, speech::syllables(word.sounds))};
}

std::vector<Blend> asOnsetAndRime(const Word& word) {
    if (speech::countVaries(word.sounds)) return {};
    const auto parts = speech::onsetAndRime(word.sounds);
    if (!parts || parts->onset.empty()) return {};
    return {blendOf(word, {parts->onset, parts->rime})};
}

std::vector<Blend> asPhonemes(const Word& word) {
    const std::size_t count = word.sounds.size();
    if (speech::syllableCount(word.sounds) != 1 || count < 3 || count > 4) return {};
    if (speech::countVaries(word.sounds) || isBlurred(word.sounds)) return {};
    std::vector<Pronunciation> sounds;
    for (const speech::Sound& sound : word.sounds) sounds.push_back({sound});
    return {blendOf(word, std::move(sounds))};
}

std::vector<Blend> blendsOf(const Vocabulary& vocabulary, const Word& word, Unit unit) {
    switch (unit) {
        case Unit::compound:
            return asCompound(vocabulary, word);
        case Unit::syllable:
            return asSyllables(word);
        case Unit::onset_rime:
            return asOnsetAndRime(word);
        default:
            return asPhonemes(word);
    }
}

}  // namespace

Telling soundTelling(const Pronunciation& word, const Pronunciation& foil) {
    const auto pairs = speech::align(word, foil);
    const speech::Aligned* at = nullptr;
    std::size_t apart = 0;
    for (const speech::Aligned& pair : pairs) {
        const bool same =
            pair.word && pair.other && word[*pair.word].phoneme == foil[*pair.other].phoneme;
        if (same) continue;
        ++apart;
        if (at == nullptr && pair.word) at = &pair;
    }
    if (at == nullptr)  // the foil only has more
        return {{std::string(speech::ipa(word.back().phoneme)), Position::last},
                "heard a sound more: " + inSlashes(foil),
                false};
    const std::size_t index = *at->word;
    const Position position = positionOf(word, index);
    const std::string sound(speech::ipa(word[index].phoneme));
    std::string means = at->other ? "heard /" + std::string(speech::ipa(foil[*at->other].phoneme)) +
                                        "/ for /" + sound + "/ "
                                  : "did not hear /" + sound + "/ ";
    means += placeName(position);
    if (apart > 1) means += ", and more";
    return {{sound, position}, means, apart == 1};
}

namespace {

/// The first part that the foil does not have in the same place.
Telling partTelling(const Blend& blend, const std::vector<Pronunciation>& foil) {
    std::size_t apart = 0, first = 0;
    for (std::size_t i = blend.sounds.size(); i-- > 0;) {
        if (i < foil.size() && speech::sameSounds(blend.sounds[i], foil[i])) continue;
        ++apart;
        first = i;
    }
    const std::string& part = blend.parts[first].label;
    const std::string heard = first < foil.size() ? speech::ipa(foil[first]) : std::string();
    std::string means = heard.empty() ? "did not hear \"" + part + "\""
                                      : "heard /" + heard + "/ for \"" + part + "\"";
    if (apart > 1) means += ", and more";
    return {{part, Position::whole}, means, apart == 1 && foil.size() == blend.sounds.size()};
}

}  // namespace

std::vector<Blend> blends(const Vocabulary& vocabulary, Unit unit) {
    std::vector<Blend> found;
    for (const Word& word : vocabulary.words)
        if (!word.picture.empty())
            for (Blend& blend : blendsOf(vocabulary, word, unit)) found.push_back(std::move(blend));
    std::stable_sort(found.begin(), found.end(), [](const Blend& a, const Blend& b) {
        if (a.parts.size() != b.parts.size()) return a.parts.size() < b.parts.size();
        return clusterSounds(a.word->sounds) < clusterSounds(b.word->sounds);
    });
    return found;
}

std::vector<Blend> soundsOfWords(const Vocabulary& vocabulary) {
    constexpr std::size_t kFewest = 2, kMost = 5;
    std::vector<Blend> found;
    for (const Word* word : picturedWords(vocabulary)) {
        const Pronunciation& sounds = word->sounds;
        if (sounds.size() < kFewest || sounds.size() > kMost) continue;
        if (speech::syllableCount(sounds) != 1 || speech::countVaries(sounds)) continue;
        if (isColouredByR(sounds)) continue;
        std::vector<Pronunciation> singles;
        for (const speech::Sound& sound : sounds) singles.push_back({sound});
        found.push_back(blendOf(*word, std::move(singles)));
    }
    return found;
}

std::vector<Pronunciation> countedSyllables(const Vocabulary& vocabulary, const Word& word) {
    if (speech::countVaries(word.sounds) || speech::syllableCount(word.sounds) == 0) return {};
    const std::vector<Blend> compound = asCompound(vocabulary, word);
    if (compound.empty()) return speech::syllables(word.sounds);
    std::vector<Pronunciation> found;
    auto from = word.sounds.begin();
    for (const Pronunciation& syllable : speech::syllables(compound.front().sounds)) {
        const auto length = static_cast<std::ptrdiff_t>(syllable.size());
        if (word.sounds.end() - from < length) return speech::syllables(word.sounds);
        found.emplace_back(from, from + length);
        from += length;
    }
    return from == word.sounds.end() ? found : speech::syllables(word.sounds);
}

std::vector<Blend> syllablesOfWords(const Vocabulary& vocabulary) {
    std::vector<Blend> found;
    for (const Word* word : picturedWords(vocabulary))
        if (auto syllables = countedSyllables(vocabulary, *word); !syllables.empty())
            found.push_back(blendOf(*word, std::move(syllables)));
    std::stable_sort(found.begin(), found.end(), [](const Blend& a, const Blend& b) {
        return a.parts.size() < b.parts.size();
    });
    return found;
}

bool isFoil(const Blend& blend, const Word& word, Unit unit) {
    if (unit == Unit::compound)
        return speech::syllableCount(word.sounds) == speech::syllableCount(blend.word->sounds);
    // "fire" has one beat or two, so it may be the answer to some ears.
    if (unit == Unit::syllable && speech::countVaries(word.sounds)) return false;
    if (speech::syllableCount(word.sounds) != speech::syllableCount(blend.word->sounds))
        return false;
    if (unit == Unit::syllable) return word.compound.empty();
    return (clusterSounds(blend.word->sounds) > 0) == (clusterSounds(word.sounds) > 0);
}

Telling telling(const Blend& blend, const Word& foil, Unit unit) {
    if (unit == Unit::compound || unit == Unit::syllable)
        return partTelling(blend, speech::syllables(foil.sounds));
    return soundTelling(blend.word->sounds, foil.sounds);
}

}  // namespace wrenlet::exercise
