// What can be practised: a skill is a unit of sound and a task, both in the trade's words. Each
// skill is played by one mechanic, and has a standard's code where the standards name it.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace wrenlet::exercise {

enum class Unit : std::uint8_t { sentence, compound, syllable, onset_rime, phoneme, letter };

enum class Task : std::uint8_t {
    count,
    blend,
    segment,
    add,
    remove,  // "delete" in ids: take a part away
    substitute,
    tune,  // asking or telling
    rhyme_judge,
    rhyme_sort,
    odd_one_out,
    rhyme_pick,
    first,
    last,
    middle,
    long_short,
    name,
    sound,
    both_sounds,
    for_sound,
    digraph,
    build,
};
inline constexpr std::size_t kUnitCount = 6;
inline constexpr std::size_t kTaskCount = 21;

/// How a skill is played; item.hpp says what an item is made of in each.
enum class Mechanic : std::uint8_t { sort, join, split, count, pick, change };

struct Skill {
    Unit unit;
    Task task;
    bool operator==(const Skill&) const = default;
    auto operator<=>(const Skill&) const = default;
};

/// One row of the table of skills.
struct SkillRow {
    Skill skill;
    std::string_view id;    // "onset-rime.blend"; in packs, stores and commands
    std::string_view name;  // what the desk calls it: "Join onset and rime"
    Mechanic mechanic;
    std::string_view standard;  // Common Core State Standards, RF, 2010; empty where they name none
};

/// Every skill that has an item maker, in the order in which they are usually taught.
std::span<const SkillRow> skillTable();

/// REQUIRES: the skill stands in skillTable().
const SkillRow& rowOf(Skill skill);
std::optional<Skill> skillFromId(std::string_view id);

}  // namespace wrenlet::exercise
