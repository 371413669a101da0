// A name beside a document's file for what must not be lost: somebody else's state of it, or one of
// which not all was understood.
#pragma once

#include <filesystem>
#include <string>

namespace wrenlet::desk {

/// One that nothing has: "unit-other.json", "unit-other-2.json".
std::filesystem::path freeBeside(const std::filesystem::path& folder, const std::string& name);

}  // namespace wrenlet::desk
