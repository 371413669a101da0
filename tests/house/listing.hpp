// Whether the build knows a source: the sources are listed, so one that nobody listed is a source
// that nobody compiles, and a test that nobody runs.
#pragma once

#include <string>
#include <string_view>

namespace wrenlet::house {

/// Whether the CMakeLists.txt of `folder` (from the root, no '/' at its end) lists the source at
/// `path`. What stands in a comment lists nothing.
bool lists(std::string_view cmake_text, const std::string& folder, const std::string& path);

}  // namespace wrenlet::house
