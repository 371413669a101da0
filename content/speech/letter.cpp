#include "content/speech/letter.hpp"

#include <algorithm>

namespace wrenlet::speech {

namespace {

struct Row {
    std::string_view text, name, sounds;  // in the dictionary's letters, "," between sounds
};

constexpr Row kRows[] = {
    {"a", "EY1", "AE1,EY1"},
    {"b", "B IY1", "B"},
    {"c", "S IY1", "K,S"},
    {"d", "D IY1", "D"},
    {"e", "IY1", "EH1,IY1"},
    {"f", "EH1 F", "F"},
    {"g", "JH IY1", "G,JH"},
    {"h", "EY1 CH", "HH"},
    {"i", "AY1", "IH1,AY1"},
    {"j", "JH EY1", "JH"},
    {"k", "K EY1", "K"},
    {"l", "EH1 L", "L"},
    {"m", "EH1 M", "M"},
    {"n", "EH1 N", "N"},
    {"o", "OW1", "AA1,OW1"},
    {"p", "P IY1", "P"},
    {"q", "K Y UW1", "K W"},
    {"r", "AA1 R", "R"},
    {"s", "EH1 S", "S"},
    {"t", "T IY1", "T"},
    {"u", "Y UW1", "AH1,Y UW1"},
    {"v", "V IY1", "V"},
    {"w", "D AH1 B AH0 L Y UW0", "W"},
    {"x", "EH1 K S", "K S"},
    {"y", "W AY1", "Y"},
    {"z", "Z IY1", "Z"},
    {"sh", "", "SH"},
    {"ch", "", "CH"},
    {"th", "", "TH,DH"},
    {"ng", "", "NG"},
    {"ck", "", "K"},
    {"wh", "", "W"},
    {"ph", "", "F"},
};

std::vector<TaughtLetter> readRows() {
    std::vector<TaughtLetter> letters;
    for (const Row& row : kRows) {
        letters.push_back({row.text, fromArpabetLine(row.name).value_or(Pronunciation{}), {}});
        for (std::string_view rest = row.sounds; !rest.empty();) {
            const std::size_t comma = std::min(rest.find(','), rest.size());
            letters.back().sounds.push_back(*fromArpabetLine(rest.substr(0, comma)));
            rest.remove_prefix(std::min(comma + 1, rest.size()));
        }
    }
    return letters;
}

}  // namespace

std::span<const TaughtLetter> taughtLetters() {
    static const std::vector<TaughtLetter> kLetters = readRows();
    return kLetters;
}

const TaughtLetter* taughtLetter(std::string_view text) {
    for (const TaughtLetter& letter : taughtLetters())
        if (letter.text == text) return &letter;
    return nullptr;
}

}  // namespace wrenlet::speech
