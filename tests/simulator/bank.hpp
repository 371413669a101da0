// The one fixed bank of items that all simulated children practise with: real items of every skill,
// made by the project's makers from the classroom list, and the rows of which the truth is known.
// Chosen by rule and in a fixed order, so that every run of every policy has the same bank.
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "content/exercise/item.hpp"

namespace wrenlet::simulator {

/// What a child can be strong or weak at: a skill, a phoneme in a place, or (hidden: no row of any
/// report) a letter. Rows are the components that a reader is asked about.
struct Component {
    enum class Kind : std::uint8_t { skill, sound, hidden } kind = Kind::skill;
    std::string label;                       // "phoneme.first", "t last", "letter:b letter"
    exercise::Skill skill{};                 // of a skill
    exercise::TurnsOn turns_on;              // of the others
    std::optional<speech::Phoneme> phoneme;  // of a sound
    std::vector<int> items;                  // bank indices, ascending
};

/// Two sounds, or a sound and nothing, that a choice tells apart in one place of the word.
struct Contrast {
    speech::Phoneme asked;
    std::optional<speech::Phoneme> heard;  // nothing: the sound was not heard at all
    exercise::Position position;
    bool before_nasal = false;  // the asked vowel stands before /m/, /n/ or /ŋ/
    bool operator==(const Contrast&) const = default;
};

/// A contrast that an accent or a first language does not make (the facts on Spanish speakers; two
/// mergers of American English), under the name that content/practice/shield.hpp takes.
struct Shield {
    const char* name;
    speech::Phoneme a, b;
    bool before_nasal_only;
};
inline constexpr Shield kShields[] = {
    {"b/v", speech::Phoneme::b, speech::Phoneme::v, false},
    {"ɪ/i", speech::Phoneme::ih, speech::Phoneme::iy, false},
    {"θ/t", speech::Phoneme::th, speech::Phoneme::t, false},
    {"cot-caught", speech::Phoneme::aa, speech::Phoneme::ao, false},
    {"pin-pen", speech::Phoneme::ih, speech::Phoneme::eh, true}};
bool isAlong(const Contrast& contrast, const Shield& shield);

struct BankItem {
    exercise::Item item;
    int skill = 0;               // component
    int sound = -1;              // component: of a phoneme or hidden; -1: none
    int nearest = 0;             // speech::distance of the nearest foil that names sounds; 0: none
    std::vector<int> contrasts;  // by choice; -1 for the right one and for foils that name none
};

struct Bank {
    std::vector<BankItem> items;
    std::vector<Component> components;  // the rows first: skills in teaching order, then sounds
    std::size_t rows = 0;               // of components, how many are rows
    std::vector<Contrast> contrasts;

    bool isRow(int component) const {
        return component >= 0 && static_cast<std::size_t>(component) < rows;
    }
    /// The row that models with one state an item file it under: its sound's, else its skill's.
    int cellOf(std::size_t item) const {
        return isRow(items[item].sound) ? items[item].sound : items[item].skill;
    }
};

/// `share` is the build's folder with lexicon.bin and words/. Throws std::runtime_error when they
/// cannot be read: a simulation without its bank is worth nothing.
Bank makeBank(const std::filesystem::path& share);

/// The sounds that a wrong choice's `means` names: "heard /d/ for /t/ last", "took /d/ for /t/
/// last", "did not hear /t/ last". Nothing when it names none or more than one.
struct NamedSounds {
    speech::Phoneme asked;
    std::optional<speech::Phoneme> heard;
    bool operator==(const NamedSounds&) const = default;
};
std::optional<NamedSounds> soundsNamed(std::string_view means);

}  // namespace wrenlet::simulator
