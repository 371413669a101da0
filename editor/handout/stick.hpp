// A pack that is out, copied into a folder of her choice as well: a stick for a tablet that has no
// share, or for a colleague.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "content/common/result.hpp"
#include "content/pack/classroom.hpp"

namespace wrenlet::desk {

/// Free bytes of the disk that a folder is on; none: not known.
using FreeBytes = std::function<std::optional<std::uint64_t>(const std::filesystem::path&)>;
std::optional<std::uint64_t> freeBytesOf(const std::filesystem::path& folder);

/// Copies the pack `file` of the classroom. A folder with a class.json is a classroom folder: the
/// pack goes into its packs/ and is the one that tablets take there. Returns what was done, in a
/// sentence. Errors: the folder is not there or not writable, too little room for it, another pack
/// of that name is there; nothing there is changed then.
Result<std::string> copyToStick(const pack::Classroom& classroom, const std::string& file,
                                const std::filesystem::path& stick,
                                const FreeBytes& free = freeBytesOf);

/// Where the teacher stands with it.
struct StickPlace {
    std::string typed;  // the folder
    std::string said;   // what was done last
    std::vector<Problem> problems;

    void copy(const pack::Classroom& classroom, const std::string& file);
};

}  // namespace wrenlet::desk
