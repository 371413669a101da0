// What a child's responses say of each sound in each task. This first estimator counts first tries
// and puts a range around them, corrected for guessing; it takes one response at a time.
//
// The range is Wilson's score interval (E. B. Wilson, JASA 22, 1927) on the raw counts, 80 % wide
// (z = 1.2816: nine in ten lie above its low end, nine in ten below its high end). A child who
// knows a share k of a sound and guesses the rest is right in g + (1 - g)k of the answers, where g
// is the mean of 1 / (number of choices); so each end x becomes (x - g) / (1 - g), kept within 0
// to 1.
//
// The four words, asked in this order:
//   too little  fewer than 3 first tries, or a range wider than 0.55: between two choices that is
//               what 9 right of 10 is just narrow enough for, and 6 of 7 is not.
//   missed      the high end lies below 0.6: even read kindly, the child is more often without the
//               sound than a teacher would pass.
//   steady      the low end is at least 0.6. With two choices that takes 7 right of 7, which pure
//               guessing reaches once in 128 times; with four, 4 of 4.
//   growing     anything else.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>

#include "content/practice/response.hpp"

namespace wrenlet::practice {

inline constexpr double kRangeZ = 1.2816;    // 80 %, two-sided
inline constexpr int kFewestTries = 3;       // under it nothing is said
inline constexpr double kWidestRange = 0.55;  // above it nothing is said
inline constexpr double kKnownShare = 0.6;   // between missed and steady

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

struct Evidence {
    int seen = 0;                          // first tries
    int right = 0;                         // of them right
    double guess = 0;                      // mean chance of being right by guessing
    double low = 0, middle = 0, high = 1;  // share known, corrected for guessing; 80 % range
    std::map<std::string, int> taken;      // wrong choices by what they mean
    std::int64_t last_day = 0;
    int missed_since_right = 0;  // first tries missed since the last right one
    int right_in_a_row = 0;      // first tries right since the last missed one
    Standing standing = Standing::too_little;
};

/// Ends of Wilson's interval for `right` of `seen`. REQUIRES: 0 <= right <= seen, seen > 0.
struct Interval {
    double low, high;
};
Interval wilson(int right, int seen, double z);

/// Computes range and standing from seen, right and guess.
void judge(Evidence& evidence);

class Mastery {
  public:
    /// Counts a first try; later tries are practice and change nothing.
    void add(const Response& response);
    /// All zeros and `too_little` for a cell never met.
    Evidence evidence(const Cell& cell) const;
    /// Every cell met, in the order of Cell.
    const std::map<Cell, Evidence>& cells() const { return cells_; }

  private:
    std::map<Cell, Evidence> cells_;
};

}  // namespace wrenlet::practice
