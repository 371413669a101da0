// A question in the teacher's words: what it is about, what can be chosen, and a skill's name where
// there is little room.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "content/exercise/item.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::desk {

/// "cat", "The hen sat in the hay.", "b", "/k/", "3"
std::string choiceText(std::string_view id, const exercise::Vocabulary& vocabulary);

/// A choice, and what choosing it would tell.
struct ChoiceLine {
    std::string text;
    std::string means;  // "/d/ for /t/ last"; empty of the right one
    bool is_right = false;
};
/// The right one first. Of choices that stand in an order of their own (numbers, yes and no) that
/// alone.
std::vector<ChoiceLine> choiceLines(const exercise::Item& item,
                                    const exercise::Vocabulary& vocabulary);

/// The picture of what is asked about, or of the right choice; empty: neither has one.
std::string pictureOf(const exercise::Item& item, const exercise::Vocabulary& vocabulary);

/// What a skill needs of a unit to ask anything, as a sentence.
std::string_view needsText(exercise::Skill skill);

/// "The odd one out": the skill's name in twenty letters at most.
std::string shortName(exercise::Skill skill);

}  // namespace wrenlet::desk
