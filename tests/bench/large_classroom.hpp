// A classroom whose unit has five hundred words with pictures: as much as a tablet is given.
#pragma once

#include <filesystem>

namespace wrenlet::bench {

inline constexpr std::size_t kLargeWords = 500;

/// The starter classroom with that unit's pack instead, made in `folder`. Each clip is one of the
/// starter's clips of its kind, so that it is as long and as large as what is said there. False,
/// with the reason on stderr, when it can't be made.
bool makeLargeClassroom(const std::filesystem::path& folder);

}  // namespace wrenlet::bench
