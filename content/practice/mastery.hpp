// What a child's responses say of each sound in each task. This first estimator counts first tries
// and puts a Wilson interval around them, corrected for guessing; it takes one response at a time.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "content/practice/response.hpp"

namespace wrenlet::practice {

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
    Standing standing = Standing::too_little;
};

class Mastery {
  public:
    void add(const Response& response);
    /// All zeros and `too_little` for a cell never met.
    Evidence evidence(const Cell& cell) const;
    /// Every cell met, in the order of Cell.
    const std::map<Cell, Evidence>& cells() const { return cells_; }

  private:
    std::map<Cell, Evidence> cells_;
};

}  // namespace wrenlet::practice
