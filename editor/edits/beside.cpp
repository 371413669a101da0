#include "editor/edits/beside.hpp"

#include <system_error>

namespace wrenlet::desk {

std::filesystem::path freeBeside(const std::filesystem::path& folder, const std::string& name) {
    std::error_code error;
    std::filesystem::path file = folder / (name + ".json");
    for (int number = 2; std::filesystem::exists(file, error); ++number)
        file = folder / (name + "-" + std::to_string(number) + ".json");
    return file;
}

}  // namespace wrenlet::desk
