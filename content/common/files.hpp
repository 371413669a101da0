// Reading and writing whole files, bounded and safe: what a classroom folder needs. A write goes
// aside, is flushed, and takes the old file's place in one rename, so a crash or a sync program
// sees the old file or the new one and never half of either.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "content/common/result.hpp"

namespace wrenlet {

/// The bytes of a file. Errors: not there, not readable, larger than `limit_bytes`.
Result<std::string> readWhole(const std::filesystem::path& path, std::uint64_t limit_bytes);

/// Replaces `path` whole. Errors: folder gone, disk full, not writable; the old file then stands.
Result<Done> writeWhole(const std::filesystem::path& path, std::string_view bytes);

/// The files right inside `folder` that end in `extension` (".zip"), sorted by name; none if the
/// folder is not there.
std::vector<std::filesystem::path> listFiles(const std::filesystem::path& folder,
                                             std::string_view extension);

}  // namespace wrenlet
