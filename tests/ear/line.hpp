// One line of the table that ./check --ear prints: a figure measured on the labelled set, how sure
// it is, and the figure it is held against.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace wrenlet::ear {

struct Line {
    std::string check;      // "added vowel"
    std::string condition;  // "stops, s and sh; 12 dB, pink"
    std::string figure;     // "found"
    double value = 0;
    std::string unit = "%";
    std::optional<double> low, high;  // 95 % bounds
    int of = 0;                       // how many it rests on
    std::optional<double> wanted;
    bool more_is_better = true;
    /// Nothing when there is no figure to hold it against.
    std::optional<bool> reached() const;
};

/// A share of `of` in percent, with the bounds of E. B. Wilson's score interval (1927).
Line share(std::string check, std::string condition, std::string figure, int count, int of);

std::string asTable(const std::vector<Line>& lines);
std::string asJson(const Line& line);

}  // namespace wrenlet::ear
