// Today's two skills, from what is known of each: what focusSkills() gives, for a mastery at hand.
#pragma once

#include <string>
#include <vector>

#include "content/practice/scheduler.hpp"

namespace wrenlet::practice {

std::vector<std::string> focusOf(const Situation& situation, const Mastery& mastery);

}  // namespace wrenlet::practice
