#include "content/exercise/skill.hpp"

#include <array>
#include <cassert>

namespace wrenlet::exercise {

namespace {

// Codes: Common Core State Standards, Reading: Foundational Skills (2010). Counting spoken words,
// the tune of a sentence, compounds, and taking sounds or syllables away carry none.
constexpr std::array<SkillRow, 33> kTable = {{
    {{Unit::sentence, Task::count}, "sentence.count", "Count the words", Mechanic::count, ""},
    {{Unit::sentence, Task::tune}, "sentence.tune", "Asking or telling", Mechanic::sort, ""},
    {{Unit::onset_rime, Task::rhyme_judge},
     "onset-rime.rhyme-judge",
     "Do they rhyme?",
     Mechanic::pick,
     "RF.K.2.a"},
    {{Unit::onset_rime, Task::rhyme_sort},
     "onset-rime.rhyme-sort",
     "Sort by rhyme",
     Mechanic::sort,
     "RF.K.2.a"},
    {{Unit::onset_rime, Task::odd_one_out},
     "onset-rime.odd-one-out",
     "Which one does not rhyme?",
     Mechanic::pick,
     "RF.K.2.a"},
    {{Unit::onset_rime, Task::rhyme_pick},
     "onset-rime.rhyme-pick",
     "Pick the rhyme",
     Mechanic::pick,
     "RF.K.2.a"},
    {{Unit::compound, Task::blend}, "compound.blend", "Join word parts", Mechanic::join, ""},
    {{Unit::compound, Task::segment},
     "compound.segment",
     "Split a word into its words",
     Mechanic::split,
     ""},
    {{Unit::compound, Task::add}, "compound.add", "Add a word part", Mechanic::change, ""},
    {{Unit::compound, Task::remove},
     "compound.delete",
     "Take a word part away",
     Mechanic::change,
     ""},
    {{Unit::compound, Task::substitute},
     "compound.substitute",
     "Change a word part",
     Mechanic::change,
     ""},
    {{Unit::syllable, Task::count},
     "syllable.count",
     "Count the syllables",
     Mechanic::count,
     "RF.K.2.b"},
    {{Unit::syllable, Task::blend}, "syllable.blend", "Join syllables", Mechanic::join, "RF.K.2.b"},
    {{Unit::syllable, Task::segment},
     "syllable.segment",
     "Split into syllables",
     Mechanic::split,
     "RF.K.2.b"},
    {{Unit::syllable, Task::add}, "syllable.add", "Add a syllable", Mechanic::change, ""},
    {{Unit::syllable, Task::remove},
     "syllable.delete",
     "Take a syllable away",
     Mechanic::change,
     ""},
    {{Unit::onset_rime, Task::blend},
     "onset-rime.blend",
     "Join onset and rime",
     Mechanic::join,
     "RF.K.2.c"},
    {{Unit::onset_rime, Task::segment},
     "onset-rime.segment",
     "Split onset and rime",
     Mechanic::split,
     "RF.K.2.c"},
    {{Unit::phoneme, Task::first}, "phoneme.first", "First sound", Mechanic::pick, "RF.K.2.d"},
    {{Unit::phoneme, Task::last}, "phoneme.last", "Last sound", Mechanic::pick, "RF.K.2.d"},
    {{Unit::phoneme, Task::middle}, "phoneme.middle", "Middle vowel", Mechanic::pick, "RF.K.2.d"},
    {{Unit::phoneme, Task::blend}, "phoneme.blend", "Join sounds", Mechanic::join, "RF.1.2.b"},
    {{Unit::phoneme, Task::segment},
     "phoneme.segment",
     "Split into sounds",
     Mechanic::split,
     "RF.1.2.d"},
    {{Unit::phoneme, Task::add}, "phoneme.add", "Add a sound", Mechanic::change, "RF.K.2.e"},
    {{Unit::phoneme, Task::remove}, "phoneme.delete", "Take a sound away", Mechanic::change, ""},
    {{Unit::phoneme, Task::substitute},
     "phoneme.substitute",
     "Change a sound",
     Mechanic::change,
     "RF.K.2.e"},
    {{Unit::phoneme, Task::long_short},
     "phoneme.long-short",
     "Long or short vowel",
     Mechanic::sort,
     "RF.1.2.a"},
    {{Unit::letter, Task::name}, "letter.name", "Letter names", Mechanic::pick, "RF.K.1.d"},
    {{Unit::letter, Task::sound},
     "letter.sound",
     "The sound of a letter",
     Mechanic::pick,
     "RF.K.3.a"},
    {{Unit::letter, Task::for_sound},
     "letter.for-sound",
     "The letter for a sound",
     Mechanic::pick,
     "RF.K.3.a-b"},
    {{Unit::letter, Task::both_sounds},
     "letter.both-sounds",
     "Both sounds of a letter",
     Mechanic::pick,
     "RF.K.3.b"},
    {{Unit::letter, Task::digraph},
     "letter.digraph",
     "Two letters, one sound",
     Mechanic::pick,
     "RF.1.3.a"},
    {{Unit::letter, Task::build}, "letter.build", "Build a word", Mechanic::join, "RF.1.3.b"},
}};

constexpr std::uint8_t kNoRow = 0xFF;
using Places = std::array<std::array<std::uint8_t, kTaskCount>, kUnitCount>;

constexpr Places placesInTable() {
    Places places{};
    for (auto& unit : places)
        for (std::uint8_t& place : unit) place = kNoRow;
    for (std::size_t i = 0; i < kTable.size(); ++i)
        places[static_cast<std::size_t>(kTable[i].skill.unit)]
              [static_cast<std::size_t>(kTable[i].skill.task)] = static_cast<std::uint8_t>(i);
    return places;
}
constexpr Places kPlaces = placesInTable();

}  // namespace

std::span<const SkillRow> skillTable() {
    return kTable;
}

const SkillRow& rowOf(Skill skill) {
    const std::uint8_t place =
        kPlaces[static_cast<std::size_t>(skill.unit)][static_cast<std::size_t>(skill.task)];
    assert(place != kNoRow && "a skill outside the table");
    return kTable[place == kNoRow ? 0 : place];
}

std::optional<Skill> skillFromId(std::string_view id) {
    for (const SkillRow& row : kTable)
        if (row.id == id) return row.skill;
    return std::nullopt;
}

}  // namespace wrenlet::exercise
