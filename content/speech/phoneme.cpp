#include "content/speech/phoneme.hpp"

#include <algorithm>
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

namespace {

/// "AE1", "AH0" or "T"; consonants carry no digit.
std::optional<Sound> readSymbol(std::string_view symbol) {
    const bool marked = !symbol.empty() && symbol.back() >= '0' && symbol.back() <= '2';
    const auto phoneme = fromArpabet(marked ? symbol.substr(0, symbol.size() - 1) : symbol);
    if (!phoneme || isVowel(*phoneme) != marked || *phoneme == Phoneme::ax) return std::nullopt;
    if (!marked) return Sound{*phoneme};
    if (symbol == "AH0") return Sound{Phoneme::ax};
    constexpr Stress kMarks[] = {Stress::none, Stress::primary, Stress::secondary};
    return Sound{*phoneme, kMarks[symbol.back() - '0']};
}

}  // namespace

std::optional<Pronunciation> fromArpabetLine(std::string_view line) {
    Pronunciation sounds;
    while (!line.empty()) {
        const std::size_t space = std::min(line.find(' '), line.size());
        const auto sound = readSymbol(line.substr(0, space));
        if (!sound) return std::nullopt;
        sounds.push_back(*sound);
        line.remove_prefix(std::min(space + 1, line.size()));
    }
    if (sounds.empty()) return std::nullopt;
    return sounds;
}

bool sameSounds(const Pronunciation& a, const Pronunciation& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](const Sound& x, const Sound& y) { return x.phoneme == y.phoneme; });
}

std::string ipa(const Pronunciation& sounds) {
    std::string text;
    for (const Sound& sound : sounds) text += ipa(sound.phoneme);
    return text;
}

}  // namespace wrenlet::speech
