// Skills as the word list has them in columns: seven groups of what a word can serve, and what a
// sentence serves.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/skill.hpp"

namespace wrenlet::desk {

enum class WordGroup : std::uint8_t { rhyme, first, last, vowel, join, part, swap };
inline constexpr std::size_t kWordGroups = 7;

/// "Rhyme", "First"; the head of the column and what buttons call it.
std::string_view groupName(WordGroup group);

/// Where a skill belongs; nothing for letters and sentences, which have no column.
std::optional<WordGroup> groupOf(exercise::Skill skill);

/// Ids of the group's skills, in the table's order.
std::vector<std::string> skillsOf(WordGroup group);

}  // namespace wrenlet::desk
