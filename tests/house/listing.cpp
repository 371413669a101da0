#include "tests/house/listing.hpp"

#include <algorithm>

namespace wrenlet::house {

bool lists(std::string_view cmake_text, const std::string& folder, const std::string& path) {
    if (path.compare(0, folder.size() + 1, folder + "/") != 0) return false;
    const std::string wanted = path.substr(folder.size() + 1);
    const std::string_view kGaps = " \t\r\n()\"";
    std::size_t at = 0;
    while ((at = cmake_text.find_first_not_of(kGaps, at)) != cmake_text.npos) {
        if (cmake_text[at] == '#') {
            at = std::min(cmake_text.size(), cmake_text.find('\n', at));
            continue;
        }
        const std::size_t end = std::min(cmake_text.size(), cmake_text.find_first_of(kGaps, at));
        if (cmake_text.substr(at, end - at) == wanted) return true;
        at = end;
    }
    return false;
}

}  // namespace wrenlet::house
