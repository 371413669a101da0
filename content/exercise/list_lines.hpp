// A list written by hand or pasted, line by line: tab-separated columns, "#" for a remark. What is
// wrong with a line is noted with its number and the line left out, so that one slip never costs
// the whole list; and what is read and noted is bounded, whatever was pasted.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet::exercise {

inline constexpr std::size_t kMostListBytes = 1u << 20;  // the rest of a longer text is not read
inline constexpr std::size_t kMostLineBytes = 1000;
inline constexpr std::size_t kMostListNotes = 100;  // the rest are counted in one last note

struct ListLine {
    std::size_t number = 0;  // from 1, as an editor counts
    std::vector<std::string_view> columns;

    /// Empty where the line has no such column.
    std::string_view column(std::size_t index) const;
};

/// Warnings about a list, each with its line, up to kMostListNotes.
class ListNotes {
  public:
    /// `where` names the list in problems: "classroom.tsv".
    explicit ListNotes(std::string_view where) : where_(where) {}

    /// `line` 0 is the list as a whole.
    void add(std::size_t line, std::string what, std::string way_out);

    /// "classroom.tsv, line 12".
    std::string place(std::size_t line) const;

    std::vector<Problem> take();

  private:
    std::string where_;
    std::vector<Problem> problems_;
    std::size_t untold_ = 0;
};

/// The lines that hold something, as views into `text`. Blank lines and remarks are passed over;
/// a line past kMostLineBytes, or a text past kMostListBytes, is noted and not read further.
std::vector<ListLine> listLines(std::string_view text, ListNotes& notes);

/// Why `word` cannot be a word of a list, as the end of a sentence ("has a digit"); empty if it
/// can: 1 to 40 letters a to z of either case, apostrophes inside it.
std::string whyNotListed(std::string_view word);

/// `text` for a note: in quotes, what is no plain sign shown as "?", cut after 24 signs.
std::string shown(std::string_view text);

}  // namespace wrenlet::exercise
