// What a teacher types, pastes or drops as words and sentences: told apart, tidied, and taken or
// refused one by one, so that one bad piece costs nothing of the rest.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/unit.hpp"

namespace wrenlet::desk {

struct Typed {
    std::vector<pack::UnitWord> words;
    std::vector<pack::UnitSentence> sentences;  // without ids
    std::vector<Problem> problems;              // warnings: what was not taken, by line
};

/// Lines, semicolons, tabs and upright strokes (what pasted tabs become) part pieces. A piece that
/// ends in . ? or !, or has three words and begins with a capital, is a sentence, which gets a full
/// stop if it has no mark; in any other piece commas and blanks part words. Quotes around a piece
/// are left off, as CSV has them. A byte order mark is skipped; text that is not UTF-8 is read as
/// Windows-1252 with a warning. `where` names the text in problems. Refuses what whyNoWord() and
/// whyNoSentence() refuse, digits, and what stands there twice.
Typed readTyped(std::string_view text, std::string_view where);

}  // namespace wrenlet::desk
