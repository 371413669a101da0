// The house's arrows as a table, and the check of one source's includes against it. Text in, text
// out, so that the check itself can be tried on sources that were never written.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace wrenlet::house {

struct Include {
    int line = 0;       // from 1
    std::string named;  // what stands between the quotes or the angle brackets
    bool quoted = false;
};

/// The includes of a C++ source, without those in comments.
std::vector<Include> includesOf(std::string_view text);

/// One sentence for each include that the source at `path` (from the project's root, with '/') may
/// not have.
std::vector<std::string> wrongIncludes(const std::string& path, std::string_view text);

}  // namespace wrenlet::house
