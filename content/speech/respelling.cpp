#include "content/speech/respelling.hpp"

#include <array>
#include <vector>

#include "content/speech/syllable.hpp"

namespace wrenlet::speech {
namespace {

// In the order of Phoneme. From memory, as dictionaries for the general public write them.
constexpr std::array<std::string_view, kPhonemeCount> kPlain{
    "o",  "a",  "u", "aw", "ow", "uh", "igh", "e", "er", "ay", "i", "ee", "oh", "oy",
    "uu", "oo", "b", "ch", "d",  "dh", "f",   "g", "h",  "j",  "k", "l",  "m",  "n",
    "ng", "p",  "r", "s",  "sh", "t",  "th",  "v", "w",  "y",  "z", "zh"};

std::string capitals(std::string text) {
    for (char& letter : text)
        if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
    return text;
}

}  // namespace

std::string_view plainLetters(Phoneme phoneme) {
    return kPlain[static_cast<std::size_t>(phoneme)];
}

std::string respelling(const Pronunciation& word) {
    const std::vector<Pronunciation> parts = syllables(word);
    std::string text;
    for (const Pronunciation& part : parts) {
        std::string plain;
        bool is_stressed = false;
        for (const Sound& sound : part) {
            const bool begins = plain.empty() && sound.phoneme == Phoneme::ay;
            plain += begins ? "eye" : plainLetters(sound.phoneme);
            is_stressed = is_stressed || sound.stress == Stress::primary;
        }
        if (!text.empty()) text += '-';
        text += is_stressed && parts.size() > 1 ? capitals(plain) : plain;
    }
    return text;
}

}  // namespace wrenlet::speech
