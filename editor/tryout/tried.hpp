// Which skills of a unit were tried out, kept beside the unit across starts. It is no part of the
// unit: trying changes no pack and is not undone.
#pragma once

#include <filesystem>
#include <set>
#include <string>

#include "content/common/result.hpp"

namespace wrenlet::desk {

/// Ids of skills. None where the file is not there, or is none of ours: then she merely tries
/// again.
std::set<std::string> openTried(const std::filesystem::path& file);
/// Replaces the file whole. Errors: folder gone, disk full, not writable.
Result<Done> keepTried(const std::filesystem::path& file, const std::set<std::string>& skills);

}  // namespace wrenlet::desk
