#include "content/exercise/letter_table.hpp"

#include <algorithm>

#include "content/speech/syllable.hpp"

namespace wrenlet::exercise {

namespace {

using speech::Pronunciation;

struct Row {
    std::string_view text, name, taught, also;  // in the dictionary's letters; "," between sounds
};

// Common practice in North American classrooms.
constexpr Row kLetters[] = {
    {"a", "EY1", "AE1,EY1", "AA1,AO1,AH0"},
    {"b", "B IY1", "B", ""},
    {"c", "S IY1", "K,S", "SH"},
    {"d", "D IY1", "D", "T"},
    {"e", "IY1", "EH1,IY1", "AH0,IH1"},
    {"f", "EH1 F", "F", "V"},
    {"g", "JH IY1", "G,JH", "ZH"},
    {"h", "EY1 CH", "HH", ""},
    {"i", "AY1", "IH1,AY1", "IY1,Y,AH0"},
    {"j", "JH EY1", "JH", ""},
    {"k", "K EY1", "K", ""},
    {"l", "EH1 L", "L", ""},
    {"m", "EH1 M", "M", ""},
    {"n", "EH1 N", "N", "NG"},
    {"o", "OW1", "AA1,OW1", "AO1,AH1,UW1,UH1"},
    {"p", "P IY1", "P", ""},
    {"q", "K Y UW1", "K W", "K"},
    {"r", "AA1 R", "R", ""},
    {"s", "EH1 S", "S", "Z,SH,ZH"},
    {"t", "T IY1", "T", "CH,SH"},
    {"u", "Y UW1", "AH1,Y UW1", "UW1,UH1,W"},
    {"v", "V IY1", "V", ""},
    {"w", "D AH1 B AH0 L Y UW0", "W", ""},
    {"x", "EH1 K S", "K S", "Z,G Z"},
    {"y", "W AY1", "Y", "AY1,IY1,IH1"},
    {"z", "Z IY1", "Z", "S,ZH"},
};
constexpr Row kDigraphs[] = {
    {"sh", "", "SH", ""},  {"ch", "", "CH", "K,SH"}, {"th", "", "TH,DH", "T"}, {"ph", "", "F", ""},
    {"wh", "", "W", "HH"}, {"ng", "", "NG", ""},     {"ck", "", "K", ""},
};

std::vector<Pronunciation> soundsOf(std::string_view list) {
    std::vector<Pronunciation> sounds;
    while (!list.empty()) {
        const std::size_t comma = std::min(list.find(','), list.size());
        sounds.push_back(*speech::fromArpabetLine(list.substr(0, comma)));
        list.remove_prefix(std::min(comma + 1, list.size()));
    }
    return sounds;
}

std::vector<Letter> read(std::span<const Row> rows) {
    std::vector<Letter> all;
    for (const Row& row : rows)
        all.push_back({row.text, "letter:" + std::string(row.text),
                       speech::fromArpabetLine(row.name).value_or(Pronunciation{}),
                       soundsOf(row.taught), soundsOf(row.also)});
    return all;
}

bool isSame(const Pronunciation& sounds, std::span<const speech::Sound> other) {
    return std::equal(
        sounds.begin(), sounds.end(), other.begin(), other.end(),
        [](const speech::Sound& a, const speech::Sound& b) { return a.phoneme == b.phoneme; });
}

/// The letter or digraph at `at` that says what the word says at `said`; null when none does.
const Letter* tileAt(const Word& word, std::size_t at, std::size_t said, Pronunciation& sounds) {
    for (const std::span<const Letter> table : {digraphs(), letters()})
        for (const Letter& letter : table) {
            if (word.text.compare(at, letter.text.size(), letter.text) != 0) continue;
            // Two letters that are taught as one sound are never two in a regular word.
            const std::size_t ways = letter.text == "th" ? 2 : 1;
            for (std::size_t way = 0; way < ways; ++way) {
                const std::size_t length = letter.taught[way].size();
                if (said + length > word.sounds.size()) continue;
                if (!isSame(letter.taught[way], std::span(word.sounds).subspan(said, length)))
                    continue;
                sounds = letter.taught[way];
                return &letter;
            }
            if (letter.text.size() > 1) return nullptr;
        }
    return nullptr;
}

}  // namespace

std::span<const Letter> letters() {
    static const std::vector<Letter> kAll = read(kLetters);
    return kAll;
}

std::span<const Letter> digraphs() {
    static const std::vector<Letter> kAll = read(kDigraphs);
    return kAll;
}

const Letter* letterById(std::string_view id) {
    for (const std::span<const Letter> table : {letters(), digraphs()})
        for (const Letter& letter : table)
            if (letter.id == id) return &letter;
    return nullptr;
}

bool isVowelLetter(const Letter& letter) {
    return letter.text.size() == 1 &&
           std::string_view("aeiou").find(letter.text) != std::string_view::npos;
}

bool standsFor(const Letter& letter, const Pronunciation& sounds, bool ever) {
    const auto has = [&sounds](const std::vector<Pronunciation>& list) {
        return std::any_of(list.begin(), list.end(), [&sounds](const Pronunciation& one) {
            return speech::sameSounds(one, sounds);
        });
    };
    return has(letter.taught) || (ever && has(letter.also));
}

std::optional<std::vector<Tile>> regularTiles(const Word& word) {
    if (speech::syllableCount(word.sounds) != 1) return std::nullopt;
    std::vector<Tile> tiles;
    std::size_t at = 0, said = 0;
    while (at < word.text.size()) {
        Tile tile{};
        tile.letter = tileAt(word, at, said, tile.sounds);
        if (tile.letter == nullptr) return std::nullopt;
        at += tile.letter->text.size();
        said += tile.sounds.size();
        tiles.push_back(std::move(tile));
    }
    if (said != word.sounds.size()) return std::nullopt;
    return tiles;
}

}  // namespace wrenlet::exercise
