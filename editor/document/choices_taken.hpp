// What was asked and what the child chose in one skill: a table of sounds against sounds where each
// choice stands for one, and in any case the wrong choices in words.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "editor/document/opened_class.hpp"

namespace wrenlet::desk {

/// Rows asked, columns chosen, the same labels on both sides.
struct ConfusionTable {
    std::vector<std::string> labels;
    std::vector<std::vector<int>> times;  // [asked][chosen]
};

/// A wrong choice that was taken at least once.
struct FoilTaken {
    std::string asked;   // "cat"
    std::string chosen;  // "cut"
    std::string means;   // "heard /ʌt/ for /æt/"
    int times = 0;
    int of = 0;  // how often the same was asked
};

struct ChoicesTaken {
    std::string heading;  // "Count the words"
    int answers = 0;      // first tries
    std::optional<ConfusionTable> table;
    std::vector<FoilTaken> foils;  // most taken first
};

/// First tries only. A table is made where every choice is itself a number of words, or where each
/// chosen word is, in the class's answers, the right one for exactly one sound, as the heads of a
/// sort are; and where it stays within `most_labels`.
ChoicesTaken choicesTaken(const OpenedClass& opened, const std::string& child,
                          const std::string& skill, std::size_t most_labels = 7);

}  // namespace wrenlet::desk
