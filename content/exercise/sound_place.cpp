#include "content/exercise/sound_place.hpp"

#include <algorithm>

#include "content/speech/accent.hpp"
#include "content/speech/word_parts.hpp"

namespace wrenlet::exercise {

using speech::Phoneme;
using speech::Pronunciation;

bool isPlainCvc(const Pronunciation& sounds) {
    return speech::shape(sounds) == "CVC" && !isBlurred(sounds);
}

bool isSure(const Pronunciation& sounds, std::size_t place) {
    if (!speech::isVowel(sounds[place].phoneme)) return true;
    const auto ways = speech::waysOfMany(sounds);
    return std::all_of(ways.begin(), ways.end(), [&](const Pronunciation& way) {
        return way[place].phoneme == sounds[place].phoneme;
    });
}

bool isBlurred(const Pronunciation& sounds) {
    for (std::size_t i = 0; i < sounds.size(); ++i) {
        const Phoneme phoneme = sounds[i].phoneme;
        const bool after_vowel = i > 0 && speech::isVowel(sounds[i - 1].phoneme);
        if (after_vowel && (phoneme == Phoneme::l || phoneme == Phoneme::r)) return true;
        if (phoneme == Phoneme::er) return true;
        if (phoneme == Phoneme::s && i + 1 == sounds.size() && i > 0 &&
            sounds[i - 1].phoneme == Phoneme::k)
            return true;
    }
    return false;
}

bool isColouredByR(const Pronunciation& sounds) {
    for (std::size_t i = 0; i < sounds.size(); ++i) {
        if (sounds[i].phoneme == Phoneme::er) return true;
        if (i > 0 && sounds[i].phoneme == Phoneme::r && speech::isVowel(sounds[i - 1].phoneme))
            return true;
    }
    return false;
}

Position positionOf(const Pronunciation& sounds, std::size_t place) {
    return place == 0                   ? Position::first
           : place + 1 == sounds.size() ? Position::last
                                        : Position::middle;
}

std::string_view placeName(Position position) {
    return position == Position::first  ? "first"
           : position == Position::last ? "last"
                                        : "in the middle";
}

std::size_t clusterSounds(const Pronunciation& sounds) {
    std::size_t count = 0;
    for (std::size_t i = 1; i < sounds.size(); ++i)
        count += !speech::isVowel(sounds[i - 1].phoneme) && !speech::isVowel(sounds[i].phoneme);
    return count;
}

bool breaksBySound(const Word& word) {
    return word.compound.empty() && word.text.find('-') == std::string::npos;
}

std::string inSlashes(Phoneme phoneme) {
    return "/" + std::string(speech::ipa(phoneme)) + "/";
}

std::string inSlashes(const Pronunciation& sounds) {
    return "/" + speech::ipa(sounds) + "/";
}

std::string soundKey(const Pronunciation& sounds) {
    std::string key;
    for (const speech::Sound& sound : sounds)
        key += static_cast<char>('A' + static_cast<int>(sound.phoneme));
    return key;
}

}  // namespace wrenlet::exercise
