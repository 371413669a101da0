#include "content/speech/phoneme.hpp"

#include <array>

namespace wrenlet::speech {

namespace {

struct Names {
    std::string_view arpabet;
    std::string_view ipa;
};

/// In the order of Phoneme. /ɝ/ (bird) and its unstressed twin (butter) are one phoneme, `er`,
/// written ɝ: they differ by stress alone, and a child is never asked to tell them apart.
constexpr std::array<Names, kPhonemeCount> kNames = {{
    {"AA", "ɑ"}, {"AE", "æ"}, {"AH", "ʌ"},  {"AO", "ɔ"},  {"AW", "aʊ"}, {"AX", "ə"},  {"AY", "aɪ"},
    {"EH", "ɛ"}, {"ER", "ɝ"}, {"EY", "eɪ"}, {"IH", "ɪ"},  {"IY", "i"},  {"OW", "oʊ"}, {"OY", "ɔɪ"},
    {"UH", "ʊ"}, {"UW", "u"}, {"B", "b"},   {"CH", "tʃ"}, {"D", "d"},   {"DH", "ð"},  {"F", "f"},
    {"G", "ɡ"},  {"HH", "h"}, {"JH", "dʒ"}, {"K", "k"},   {"L", "l"},   {"M", "m"},   {"N", "n"},
    {"NG", "ŋ"}, {"P", "p"},  {"R", "ɹ"},   {"S", "s"},   {"SH", "ʃ"},  {"T", "t"},   {"TH", "θ"},
    {"V", "v"},  {"W", "w"},  {"Y", "j"},   {"Z", "z"},   {"ZH", "ʒ"},
}};
static_assert(static_cast<std::size_t>(Phoneme::zh) + 1 == kPhonemeCount);

const Names& names(Phoneme phoneme) {
    return kNames[static_cast<std::size_t>(phoneme)];
}

template <class Matches>
std::optional<Phoneme> find(Matches matches) {
    for (std::size_t i = 0; i < kPhonemeCount; ++i)
        if (matches(kNames[i])) return static_cast<Phoneme>(i);
    return std::nullopt;
}

}  // namespace

bool isVowel(Phoneme phoneme) {
    return phoneme <= Phoneme::uw;
}

std::string_view ipa(Phoneme phoneme) {
    return names(phoneme).ipa;
}

std::optional<Phoneme> fromIpa(std::string_view symbol) {
    // What a keyboard has for ɡ and ɹ, and the unstressed sign of ɝ.
    if (symbol == "g") return Phoneme::g;
    if (symbol == "r") return Phoneme::r;
    if (symbol == "ɚ") return Phoneme::er;
    return find([symbol](const Names& row) { return row.ipa == symbol; });
}

std::string_view arpabet(Phoneme phoneme) {
    return names(phoneme).arpabet;
}

std::optional<Phoneme> fromArpabet(std::string_view symbol) {
    return find([symbol](const Names& row) { return row.arpabet == symbol; });
}

std::string ipa(const Pronunciation& sounds) {
    std::string text;
    for (const Sound& sound : sounds) text += ipa(sound.phoneme);
    return text;
}

}  // namespace wrenlet::speech
