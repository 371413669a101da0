// A human control: a telephone system's prompts of one word, which Debian packages
// (asterisk-core-sounds-en-g722, Allison Smith, CC-BY-SA-3.0). For measuring only; nothing of it is
// built into anything.
#pragma once

#include <vector>

#include "tests/ear/labelled.hpp"

namespace wrenlet::ear {

/// Those of its words that the dictionary has, decoded by ffmpeg; none where they are not
/// installed.
std::vector<Word> humanWords(const speech::Lexicon& lexicon, const std::filesystem::path& scratch);

}  // namespace wrenlet::ear
