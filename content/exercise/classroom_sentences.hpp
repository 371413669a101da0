// The classroom sentences: short ones of our own, told and asked, marked with how their tune goes.
// A question that yes or no answers mostly rises at its end; one that opens with a question word
// (what, who, where, why, when, how) mostly falls, as telling does, so the ear alone cannot tell it
// from telling.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/exercise/vocabulary.hpp"

namespace wrenlet::exercise {

enum class SentenceKind { telling, yes_no, wh };

/// True iff the voice rises at the end: only where yes or no answers.
bool rises(SentenceKind kind);

struct ClassroomSentence {
    Sentence sentence;
    SentenceKind kind = SentenceKind::telling;
    std::size_t line = 0;  // where it stands in the list, from 1
};

inline constexpr std::size_t kMostListedSentences = 2000;

/// Reads a list of three tab-separated columns: id ("pond-walk-1": small letters, digits, hyphens),
/// kind (telling, yes-no, wh) and the sentence. Nothing is an error: what cannot be a sentence
/// (see spokenWords), is not 2 to 8 words as spoken, stands there twice, or ends with a mark that
/// does not fit its kind, is left out with a warning by line.
Result<std::vector<ClassroomSentence>> readClassroomSentences(std::string_view text,
                                                              std::string_view where);

}  // namespace wrenlet::exercise
