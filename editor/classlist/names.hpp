// The names of children as a teacher types, pastes or drops them: one a line, in one line with
// commas, or in columns. Given names are what is wanted; a family name is looked at only where two
// children would be alike.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::desk {

struct NewChild {
    std::string given;     // "Maya"
    std::string family{};  // "King"; empty: not known. Never kept.
    std::string roster{};  // id in the school's list; empty: not from one
    std::size_t line = 0;  // where she stands in the text, from 1
    bool operator==(const NewChild&) const = default;
};

struct NamesRead {
    std::vector<NewChild> children;
    std::vector<Problem> problems;  // warnings: what was not taken, by line
    std::size_t columns = 1;        // of the text; more than one without a head may be misread
    bool has_head = false;          // the columns say what they are
};

inline constexpr std::size_t kMostNamesBytes = 1u << 20;

/// Lines part children; where there is only one line, semicolons do, and commas where it has
/// neither. Tabs, upright strokes and, where every line has as many, commas or semicolons part
/// columns. A first line that names its columns (given name, first name, name, last name, family
/// name, surname) is heeded; without one column `given_column` holds the given names and the other
/// of two the family names. Warnings: a broken line, a name that is none or longer than
/// pack::kMostNameLetters, text in another encoding, more than kMostNamesBytes. `where` names the
/// text in problems.
NamesRead readNames(std::string_view text, std::string_view where, std::size_t given_column = 0);

/// Why `name` cannot be a child's name, as the end of a sentence, or empty if it can.
std::string whyNoName(std::string_view name);

}  // namespace wrenlet::desk
