// Beats, counted against the Debian package festlex-cmu: an older edition of the same dictionary
// (0.4), put into syllables by other people's program for the Festival synthesizer.
#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "content/common/files.hpp"
#include "content/speech/syllable.hpp"
#include "tests/fixtures/dictionary.hpp"

using namespace wrenlet;
using namespace wrenlet::speech;

namespace {

constexpr const char* kFestlex = "/usr/share/festival/dicts/cmu/cmudict-0.4.out";

struct Entry {
    int syllables = 0;  // as the file has them
    int vowelless = 0;  // of these
    Pronunciation sounds;
};

/// "(((b er d) 1) ((hh aw s) 1))": a syllable is what stands in the innermost brackets.
Entry readEntry(std::string_view text) {
    Entry entry;
    for (std::size_t at = text.find("(("); at != text.npos; at = text.find("((", at + 1)) {
        if (text.substr(at, 3) == "(((") continue;
        const std::size_t begin = at + 2, end = text.find(')', begin);
        std::istringstream phones{std::string(text.substr(begin, end - begin))};
        bool has_vowel = false;
        for (std::string phone; phones >> phone;) {
            for (char& letter : phone) letter = static_cast<char>(letter - 'a' + 'A');
            const auto phoneme = fromArpabet(phone);
            if (!phoneme) FAIL("festlex has a sound we do not know: " << phone);
            entry.sounds.push_back({*phoneme});
            has_vowel |= isVowel(*phoneme);
        }
        ++entry.syllables;
        entry.vowelless += !has_vowel;
    }
    return entry;
}

/// The first entry of each word; fails where the package is missing.
std::map<std::string, Entry> festlex() {
    std::ifstream file(kFestlex);
    if (!file) FAIL("festlex-cmu is missing: install it");
    std::map<std::string, Entry> words;
    for (std::string line; std::getline(file, line);) {
        if (line.compare(0, 2, "(\"") != 0) continue;
        const std::size_t quote = line.find('"', 2);
        words.emplace(line.substr(2, quote - 2), readEntry(std::string_view(line).substr(quote)));
    }
    return words;
}

double share(std::size_t part, std::size_t whole) {
    return static_cast<double>(part) / static_cast<double>(whole);
}

}  // namespace

// The rule alone, on festlex's own sounds: 105,549 of 105,664 words here, 99.89 %. The rest hold
// syllables without a vowel ("d-vorak", "f-uente"), which are beats to nobody.
TEST_CASE("Syllables: counting vowels gives festlex's syllables in 99.8 % of its words") {
    const auto words = festlex();
    std::size_t agreed = 0, vowelless = 0;
    for (const auto& [word, entry] : words) {
        const int count = syllableCount(entry.sounds);
        agreed += count == entry.syllables;
        vowelless += count == entry.syllables - entry.vowelless && entry.vowelless > 0;
    }
    INFO(agreed << " and " << vowelless << " of " << words.size());
    CHECK(words.size() > 105'000);
    CHECK(share(agreed, words.size()) >= 0.9988);
    CHECK(agreed + vowelless == words.size());
}

// Our dictionary against that older one, word by word, first pronunciation against first: 99.69 %
// of 105,259 shared words here, less than the rule reaches. The 330 words left are said otherwise
// in the two: names, foreign words and abbreviations mostly (versace, calif), and slips of the
// older edition (realize). Ours are not bent to those.
TEST_CASE("Syllables: our words have festlex's count in 99.6 % of those that both list") {
    const Lexicon lexicon = fixtures::dictionary();
    std::size_t shared = 0, agreed = 0;
    for (const auto& [word, entry] : festlex()) {
        const auto listed = lexicon.lookUp(word);
        if (listed.empty()) continue;
        ++shared;
        agreed += syllableCount(listed.front()) == entry.syllables;
    }
    INFO(agreed << " of " << shared);
    CHECK(shared > 105'000);
    CHECK(share(agreed, shared) >= 0.9965);
}

namespace {

/// Festlex writes one sign for the vowel of "cup" and the last of "sofa".
Pronunciation asFestlex(Pronunciation sounds) {
    for (Sound& sound : sounds)
        if (sound.phoneme == Phoneme::ax) sound.phoneme = Phoneme::ah;
    return sounds;
}

}  // namespace

// The count alone, where the sounds are no question: 99.9 % of the words that both say alike.
TEST_CASE("Syllables: our words have festlex's count in 99.9 % of those that both say alike") {
    const Lexicon lexicon = fixtures::dictionary();
    std::size_t alike = 0, agreed = 0;
    for (const auto& [word, entry] : festlex())
        for (const Pronunciation& said : lexicon.lookUp(word)) {
            if (!sameSounds(asFestlex(said), asFestlex(entry.sounds))) continue;
            ++alike;
            agreed += syllableCount(said) == entry.syllables;
            break;
        }
    MESSAGE(agreed << " of " << alike);
    CHECK(alike > 95'000);
    CHECK(share(agreed, alike) >= 0.999);
}
