// How often a wrong word is noticed and a right one blamed.
#pragma once

#include "editor/voice/word_ear.hpp"
#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

/// Words of one to four syllables, many with a neighbour one sound away.
const std::vector<std::string>& wordTexts();

/// The part of them that voice number `i` says, so that each voice says some and each word is said.
std::vector<std::string> textsOf(std::size_t voice, std::size_t parts);

/// wordTexts() as they are said.
std::vector<desk::SaidWord> wordsSaid(const speech::Lexicon& lexicon);

/// Right words and wrong ones, told from unrelated words of `all` and from near ones.
std::vector<Line> wordReport(const std::vector<Word>& words, const std::string& who,
                             const std::vector<desk::SaidWord>& all, desk::WordEar& ear);

}  // namespace wrenlet::ear
