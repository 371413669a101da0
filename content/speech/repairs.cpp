#include "content/speech/repairs.hpp"

#include <algorithm>
#include <array>

namespace wrenlet::speech {

namespace {

constexpr std::string_view kPartKeepsItsVowel = "listed with a reduced or other vowel in a part";
constexpr std::string_view kSense = "the sense that a child knows";
constexpr std::string_view kFullForm = "said on its own, not in passing";

constexpr std::array<Repair, 20> kRepairs = {{
    {"and", "AE1 N D", kFullForm},
    {"bathtub", "B AE1 TH T AH2 B", kPartKeepsItsVowel},
    {"bathtubs", "B AE1 TH T AH2 B Z", kPartKeepsItsVowel},
    {"birdhouse", "B ER1 D HH AW2 S", kPartKeepsItsVowel},
    {"birdhouses", "B ER1 D HH AW2 S IH0 Z", kPartKeepsItsVowel},
    {"bow", "B OW1", kSense},
    {"close", "K L OW1 Z", kSense},
    {"doorknob", "D AO1 R N AA2 B", kPartKeepsItsVowel},
    {"doorknobs", "D AO1 R N AA2 B Z", kPartKeepsItsVowel},
    {"earring", "IH1 R R IH2 NG", kPartKeepsItsVowel},
    {"earrings", "IH1 R R IH2 NG Z", kPartKeepsItsVowel},
    {"lead", "L IY1 D", kSense},
    {"live", "L IH1 V", kSense},
    {"read", "R IY1 D", kSense},
    {"record", "R EH1 K ER0 D", kSense},
    {"scarecrow", "S K EH1 R K R OW2", kPartKeepsItsVowel},
    {"scarecrows", "S K EH1 R K R OW2 Z", kPartKeepsItsVowel},
    {"toothbrush", "T UW1 TH B R AH2 SH", kPartKeepsItsVowel},
    {"toothbrushes", "T UW1 TH B R AH2 SH IH0 Z", kPartKeepsItsVowel},
    {"wind", "W IH1 N D", kSense},
}};

bool contains(std::string_view word, std::string_view letters) {
    return word.find(letters) != std::string_view::npos;
}

/// True iff the sound at `at` is /ɹ/ that closes its syllable: at the end or before a consonant.
bool isClosingR(const Pronunciation& sounds, std::size_t at) {
    if (at >= sounds.size() || sounds[at].phoneme != Phoneme::r) return false;
    return at + 1 == sounds.size() || !isVowel(sounds[at + 1].phoneme);
}

/// The vowel before a closing /ɹ/, one sign for one sound: ear as deer, poor as door. /ʊ/ stays
/// where it is heard (sure, cure, tour aside, which are spelled "our" and rhyme with door).
Phoneme beforeR(Phoneme vowel, std::string_view word) {
    switch (vowel) {
        case Phoneme::iy:
            return Phoneme::ih;
        case Phoneme::ey:
            return Phoneme::eh;
        case Phoneme::ow:
            return Phoneme::ao;
        case Phoneme::uh:
        case Phoneme::uw:
            return contains(word, "oor") || contains(word, "our") ? Phoneme::ao : vowel;
        default:
            return vowel;
    }
}

/// The first beat of "giraffe" and "around", listed now as one sound, now as two: before a stressed
/// vowel it is heard as a weak vowel, and /ɹ/ begins the next beat.
void partWeakR(Pronunciation& sounds) {
    const auto vowel = std::find_if(sounds.begin(), sounds.end(),
                                    [](const Sound& sound) { return isVowel(sound.phoneme); });
    if (vowel == sounds.end() || vowel->phoneme != Phoneme::er || vowel->stress != Stress::none)
        return;
    const auto next = vowel + 1;
    if (next == sounds.end() || !isVowel(next->phoneme) || next->stress == Stress::none) return;
    vowel->phoneme = Phoneme::ax;
    sounds.insert(next, Sound{Phoneme::r});
}

void normaliseVowels(std::string_view word, Pronunciation& sounds) {
    for (std::size_t i = 0; i + 1 < sounds.size(); ++i) {
        Sound& vowel = sounds[i];
        if (!isVowel(vowel.phoneme) || vowel.stress == Stress::none) continue;
        // Short o before g is listed now as AO, now as AA: dog, log; hog, jog.
        if (vowel.phoneme == Phoneme::ao && sounds[i + 1].phoneme == Phoneme::g &&
            contains(word, "og"))
            vowel.phoneme = Phoneme::aa;
        if (isClosingR(sounds, i + 1)) vowel.phoneme = beforeR(vowel.phoneme, word);
    }
}

/// Spellings whose vowel is most often listed as AO, now first and now second: taught and caught,
/// talk and chalk, cross and boss.
constexpr std::string_view kOpenO[] = {"au", "aw", "ough", "alk", "oss", "oft", "ost", "off"};

bool isOpenO(std::string_view word) {
    return std::any_of(std::begin(kOpenO), std::end(kOpenO),
                       [word](std::string_view letters) { return contains(word, letters); });
}

/// The other, but with AA where it has AO.
bool isItsAA(const Pronunciation& first, const Pronunciation& other) {
    Pronunciation narrowed = other;
    for (Sound& sound : narrowed)
        if (sound.phoneme == Phoneme::ao) sound.phoneme = Phoneme::aa;
    return narrowed == first;
}

void putOpenOFirst(std::string_view word, std::vector<Pronunciation>& listed) {
    if (listed.size() < 2 || !isOpenO(word)) return;
    const auto other = std::find_if(listed.begin() + 1, listed.end(), [&](const auto& sounds) {
        return isItsAA(listed.front(), sounds);
    });
    if (other != listed.end()) std::rotate(listed.begin(), other, other + 1);
}

}  // namespace

std::span<const Repair> repairTable() {
    return kRepairs;
}

std::vector<Pronunciation> repaired(std::string_view word, std::vector<Pronunciation> listed) {
    const auto row = std::find_if(kRepairs.begin(), kRepairs.end(),
                                  [word](const Repair& repair) { return repair.word == word; });
    if (row != kRepairs.end()) {
        // A part's vowel replaces what was listed; another sense only goes first.
        if (row->why == kPartKeepsItsVowel) listed.clear();
        if (auto said = fromArpabetLine(row->said)) listed.insert(listed.begin(), std::move(*said));
    }
    std::vector<Pronunciation> kept;
    for (Pronunciation& sounds : listed) {
        normaliseVowels(word, sounds);
        partWeakR(sounds);
        if (std::find(kept.begin(), kept.end(), sounds) == kept.end())
            kept.push_back(std::move(sounds));
    }
    putOpenOFirst(word, kept);
    return kept;
}

}  // namespace wrenlet::speech
