// One child on one page of paper: for the family, in plain words with something to do at home; and
// for a specialist, with every count, range and foil. Neither is a test, a screening or a
// diagnosis, and both say so.
#pragma once

#include <cstdint>
#include <string>

#include "editor/document/opened_class.hpp"

namespace wrenlet::desk::paper {

/// REQUIRES: child < opened.children.size(). `today` counts days since 1970-01-01.
std::string familyPage(const OpenedClass& opened, std::size_t child, std::int64_t today);
std::string specialistPage(const OpenedClass& opened, std::size_t child, std::int64_t today);

}  // namespace wrenlet::desk::paper
