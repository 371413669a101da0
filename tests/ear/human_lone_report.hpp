// Lone consonants cut from the words of a human voice, with the vowel after them and without.
#pragma once

#include <vector>

#include "editor/voice/word_ear.hpp"
#include "tests/ear/labelled.hpp"
#include "tests/ear/line.hpp"

namespace wrenlet::ear {

/// Words that begin with one voiceless consonant and a vowel: where the vowel begins is where a
/// voice does, and that is told by loudness below 3200 Hz alone, which neither the rule nor the
/// recogniser goes by.
std::vector<Line> humanLoneReport(const std::vector<Word>& words, desk::WordEar* ear);

}  // namespace wrenlet::ear
