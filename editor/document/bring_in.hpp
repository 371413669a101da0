// Answers that lie somewhere else (a stick, another copy of the classroom folder) brought into this
// one. Nothing that a tablet wrote is touched: what is new goes beside, under a name of its
// content, so that bringing the same in again, in any order, changes nothing.
#pragma once

#include <filesystem>
#include <span>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

struct BroughtIn {
    std::size_t answers = 0;         // that the class did not have
    std::vector<std::string> taken;  // files, as they were named
    std::vector<std::string> known;  // files that had nothing new
    std::vector<Problem> problems;   // files that were refused, each by name; the rest goes in
};

/// `from` names files and folders; of a folder its .db files are taken, and those of a tablets/ in
/// it. What children did who are `deleted` stays out.
BroughtIn bringIn(std::span<const std::filesystem::path> from, const pack::Classroom& classroom,
                  std::span<const std::string> deleted);

}  // namespace wrenlet::desk
