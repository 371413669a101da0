// What the desk says of one sound in one place of one skill: what was counted, what is read of it,
// and one of four words.
//
// The four words, asked in this order:
//   too little  fewer than 3 first tries or marks aloud, or fewer than 8 and a range wider than .5;
//   missed      P(missed) is .8 or more;
//   steady      P(missed) is .1 or less;
//   growing     anything else.
#pragma once

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>

#include "content/practice/mastery.hpp"
#include "content/practice/response.hpp"

namespace wrenlet::practice {

inline constexpr int kFewestTries = 3;       // under it nothing is said
inline constexpr double kWidestRange = 0.5;  // above it nothing is said,
inline constexpr int kEnoughTries = 8;       // unless so many were counted

/// The four words that the desk says of a sound.
enum class Standing : std::uint8_t { missed, growing, steady, too_little };
std::string_view standingWord(Standing standing);  // "missed" … "too little to say"

/// A sound in a place in a task: what one line of a child's page is about.
struct Cell {
    std::string skill;
    exercise::TurnsOn turns_on;
    bool operator==(const Cell&) const = default;
    bool operator<(const Cell& other) const;
};
Cell cellOf(const Response& response);

/// What was counted at one cell.
struct Counts {
    int seen = 0;                      // first tries
    int right = 0;                     // of them right
    int shielded = 0;                  // of the wrong ones, those along a shielded contrast
    double guess = 0;                  // mean chance of being right by guessing
    std::map<std::string, int> taken;  // wrong choices by what they mean
    std::int64_t last_day = 0;

    /// A first try.
    void add(const Response& response, std::span<const std::string> shields);
};

struct Evidence : Counts {
    Reading reading;
    Standing standing = Standing::too_little;
};

/// `told`: first tries, and marks given aloud that were right or wrong.
Standing standingOf(int told, const Reading& reading);
/// The counts with what is read of the cell and the word for both.
Evidence evidenceOf(const Cell& cell, const Counts& counts, const Mastery& mastery,
                    const HeardCounts& heard = {});

}  // namespace wrenlet::practice
