// How the lines of each unit are asked; for hand_checked_asked.cpp alone.
#pragma once

#include "tests/outside/hand_checked.hpp"

namespace wrenlet::handchecked {

/// Each fills in what it finds; `out.items` stays empty for a task that is not known.
void askSentence(const Line& line, Asked& out);
void askCompound(const Line& line, const Words& words, Asked& out);
void askSyllable(const Line& line, const Words& words, Asked& out);
void askOnsetRime(const Line& line, const Words& words, Asked& out);
void askPhoneme(const Line& line, const Words& words, Asked& out);
void askLetter(const Line& line, const Words& words, Asked& out);

/// An item of the line's skill whose choices are these, wrong ones marked as meaning something.
exercise::Item itemOf(const Line& line, std::string subject, std::vector<exercise::Part> parts,
                      const std::vector<std::string>& choices, const std::string& right,
                      exercise::TurnsOn turns_on);

/// Of words by their texts, in the vocabulary.
std::vector<std::string> idsOf(const exercise::Vocabulary& vocabulary,
                               const std::vector<std::string>& texts);

/// Notes a difference unless `same`.
void expect(Asked& out, bool same, std::string what);

/// An item from the makers, for what a line leaves open (which other letters are shown); null when
/// they make none.
const exercise::Item* madeOn(const std::vector<exercise::Item>& made, std::string_view subject);

}  // namespace wrenlet::handchecked
