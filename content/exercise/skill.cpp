#include "content/exercise/skill.hpp"

#include <array>
#include <cassert>

namespace wrenlet::exercise {

namespace {

// Codes: Common Core State Standards, Reading: Foundational Skills (2010). Counting spoken words
// and joining compounds carry none.
constexpr std::array<SkillRow, 6> kTable = {{
    {{Unit::sentence, Task::count}, "sentence.count", "Count the words", Mechanic::count, ""},
    {{Unit::onset_rime, Task::rhyme_sort},
     "onset-rime.rhyme-sort",
     "Sort by rhyme",
     Mechanic::sort,
     "RF.K.2.a"},
    {{Unit::compound, Task::blend}, "compound.blend", "Join word parts", Mechanic::join, ""},
    {{Unit::syllable, Task::blend}, "syllable.blend", "Join syllables", Mechanic::join, "RF.K.2.b"},
    {{Unit::onset_rime, Task::blend},
     "onset-rime.blend",
     "Join onset and rime",
     Mechanic::join,
     "RF.K.2.c"},
    {{Unit::phoneme, Task::blend}, "phoneme.blend", "Join sounds", Mechanic::join, "RF.1.2.b"},
}};

}  // namespace

std::span<const SkillRow> skillTable() {
    return kTable;
}

const SkillRow& rowOf(Skill skill) {
    for (const SkillRow& row : kTable)
        if (row.skill == skill) return row;
    assert(false && "a skill outside the table");
    return kTable.front();
}

std::optional<Skill> skillFromId(std::string_view id) {
    for (const SkillRow& row : kTable)
        if (row.id == id) return row.skill;
    return std::nullopt;
}

}  // namespace wrenlet::exercise
