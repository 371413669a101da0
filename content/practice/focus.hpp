// The one or two skills that a child works on today: chosen before the session's first item, so
// that they stay the same to its end. One or two at a time teach more than many (National Reading
// Panel 2000, from memory).
#pragma once

#include <span>
#include <string>
#include <vector>

#include "content/practice/mastery.hpp"
#include "content/practice/question_bank.hpp"

namespace wrenlet::practice {

/// Of the skills that the bank offers: pinned ones before all, then those that are half known,
/// where there is most to gain from practice; ties in teaching order.
std::vector<std::string> focusSkills(const QuestionBank& bank, const Mastery& mastery,
                                     std::span<const std::string> pinned);

}  // namespace wrenlet::practice
