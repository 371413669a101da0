// What English letters can say, made by hand: the ground of alignSpelling.
#pragma once

#include <span>
#include <string_view>

namespace wrenlet::speech {

struct SpellingRow {
    std::string_view letters;
    /// In IPA, the likeliest first; a space between the ways to say the letters, "+" between the
    /// sounds of one way, "-" for a silent letter.
    std::string_view says;
};

std::span<const SpellingRow> spellingTable();

}  // namespace wrenlet::speech
