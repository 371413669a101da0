// What the desk sees in a unit: how each word is said, what it serves, what to look at before a
// child hears it, and what each skill gets out of all of them. Computed aside from the words alone,
// so that typing never waits for it.
#pragma once

#include <array>
#include <functional>
#include <string>
#include <vector>

#include "content/exercise/lint.hpp"
#include "content/pack/pack_builder.hpp"
#include "content/speech/block_list.hpp"
#include "editor/document/known_words.hpp"
#include "editor/unit/word_group.hpp"

namespace wrenlet::desk {

/// A way out of a warning that is one press away.
struct WayOut {
    enum class Kind : std::uint8_t {
        keep,          // it stays as it is, and is not told again
        leave_out_of,  // the word is not asked in `group`
        remove,        // the word is taken out of the unit
        respell,       // `value` is written instead
        say,           // it is said as `sounds`
        sense,         // it is the word `value` of the classroom list
        parts,         // `values` are its parts
        no_picture,    // it goes without
    };
    Kind kind = Kind::keep;
    std::string text;  // of the button: "Leave out of Part"
    std::string value = {};
    std::vector<std::string> values = {};
    speech::Pronunciation sounds = {};
    WordGroup group = WordGroup::rhyme;
};

/// Something to look at: a warning that she has not kept so.
struct ToLookAt {
    std::string code;
    std::string chip;  // 2 to 4 words: "x is two sounds"
    std::string head, body;
    std::vector<WayOut> ways;  // the first is safe
};

struct WordLook {
    std::string id, text;
    std::string picture;                           // empty: none that is there
    speech::Pronunciation sounds;                  // empty: not known
    std::vector<speech::Pronunciation> syllables;  // as parted, a compound's by its parts
    std::string ipa;                               // "f ɑ k s"
    std::string respelled;                         // "foks"
    std::string parts;                             // "rab · bit"; of one syllable: empty
    std::array<bool, kWordGroups> serves{};
    std::array<bool, kWordGroups> left_out{};  // by the teacher
    std::vector<std::string> good_for;         // "Rhyme: box"
    std::vector<std::string> not_asked;        // "Middle vowel: 4 sounds, not 3"
    std::vector<std::string> good_to_know;     // what item makers heed by themselves
    std::vector<ToLookAt> to_look_at;
};

struct SentenceLook {
    std::string id, text;
    std::size_t words = 0;
    bool asks = false;     // by its tune
    bool counted = false;  // it serves counting words
};

/// How many items on a sound the words give, whatever is in focus.
struct SoundCount {
    std::string ipa;
    std::size_t items = 0;
};

struct SkillLook {
    exercise::Skill skill{};
    std::size_t items = 0;  // that would go into a pack
    std::size_t made = 0;   // before single ones and words were left out
    std::size_t first = 0;  // of them, in UnitLook::items
    bool off = false;
    std::vector<SoundCount> sounds;  // of first, last and middle sounds; in the table's order
};

/// A question that was left out by itself, and could be asked again.
struct LeftOutItem {
    exercise::Item item;
    std::size_t before = 0;  // the one in UnitLook::items that would follow it
};

struct UnitLook {
    std::uint64_t changes = 0;  // of the unit that was looked at
    std::vector<WordLook> words;
    std::vector<SentenceLook> sentences;
    std::array<std::size_t, kWordGroups> words_serving{};
    std::vector<SkillLook> skills;      // in the table's order
    std::vector<exercise::Item> items;  // by skills
    std::vector<LeftOutItem> left_out;  // by skills too
    exercise::Vocabulary vocabulary;
    std::vector<pack::VoiceNeed> needs;  // all that has to be heard
    std::size_t to_look_at = 0;          // words with something

    const WordLook* word(std::string_view id) const;
};

/// A word of the classroom list stands for too few in a column: a fair set has ten.
inline constexpr std::size_t kFairSet = 10;

struct LookingGlass {
    const KnownWords& known;
    const speech::BlockList& blocked;
    std::function<bool(const std::string&)> has_picture;  // by name; called aside
};

/// Looks at everything. Takes up to a second for 500 words: call it aside.
UnitLook lookAt(const pack::Unit& unit, const LookingGlass& glass);

}  // namespace wrenlet::desk
