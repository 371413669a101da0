// The marks that a teacher gave aloud, in ear.json of the classroom folder. The desk alone writes
// it; no child is recorded.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"
#include "content/practice/heard.hpp"

namespace wrenlet::desk {

inline constexpr std::size_t kMostMarks = 100'000;
inline constexpr std::uint64_t kMostEarBytes = 32u << 20;

Result<std::vector<practice::Heard>> readEar(std::string_view json, std::string_view where);
std::string writeEar(std::span<const practice::Heard> marks);

/// None where there is no file. A mark that makes no sense is left out, with a warning.
Result<std::vector<practice::Heard>> openEar(const pack::Classroom& classroom);

/// Adds marks at the end of what the file holds now; those of `taken_back` are taken out of it,
/// each once. Errors: not readable (the file then stays as it is), not writable, full.
Result<Done> changeEar(const pack::Classroom& classroom, std::span<const practice::Heard> added,
                       std::span<const practice::Heard> taken_back = {});

}  // namespace wrenlet::desk
