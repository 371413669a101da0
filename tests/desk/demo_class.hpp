// A class that nobody teaches: 22 invented children and three weeks of answers drawn from a seeded
// generator, so that the desk's pages can be looked at and tested. No figure in it says anything
// about children.
#pragma once

#include <cstdint>
#include <vector>

#include "content/common/result.hpp"
#include "editor/document/opened_class.hpp"

namespace wrenlet::desk::demo {

inline constexpr std::int64_t kLastDay = 20'735;  // Friday 9 October 2026
inline constexpr std::int64_t kNowMs = (kLastDay * 24 * 60 + 14 * 60 + 58) * 60'000;

pack::ClassList classList();
/// The same seed gives the same answers. The last child of the list has none.
std::vector<practice::Response> responses(std::uint64_t seed);

/// The class above as the desk has it open, gathered two minutes ago.
OpenedClass demoClass();

OpenedClass withProblems();  // a tablet's file was cut short, another is too new
OpenedClass afterOneDay();   // most places have too few answers
OpenedClass nobodyPlayed();
OpenedClass noChildren();
OpenedClass unreadableList();

}  // namespace wrenlet::desk::demo
