#include "tests/house/sources.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>

#include "content/common/files.hpp"

namespace wrenlet::house {
namespace {

namespace fs = std::filesystem;

const fs::path kRoot = WRENLET_SOURCE_DIR;
constexpr std::uint64_t kLargestSource = 16 << 20;

bool hasOneOf(const std::string& path, const std::vector<std::string>& endings) {
    return std::any_of(endings.begin(), endings.end(), [&](const std::string& ending) {
        return path.size() >= ending.size() &&
               path.compare(path.size() - ending.size(), ending.size(), ending) == 0;
    });
}

}  // namespace

Source sourceAt(const std::string& path) {
    auto text = readWhole(kRoot / path, kLargestSource);
    REQUIRE_MESSAGE(text.ok(), path);
    return {path, std::move(text.value())};
}

std::vector<Source> filesUnder(const std::vector<std::string>& folders,
                               const std::vector<std::string>& endings) {
    std::vector<std::string> paths;
    for (const std::string& folder : folders) {
        fs::recursive_directory_iterator entry(kRoot / folder);
        for (; entry != fs::recursive_directory_iterator(); ++entry) {
            if (entry->path().filename() == "node_modules") entry.disable_recursion_pending();
            const std::string path = entry->path().lexically_relative(kRoot).generic_string();
            if (entry->is_regular_file() && hasOneOf(path, endings)) paths.push_back(path);
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<Source> sources;
    for (const std::string& path : paths) sources.push_back(sourceAt(path));
    return sources;
}

std::vector<Source> sourcesUnder(const std::vector<std::string>& folders) {
    return filesUnder(folders, {".cpp", ".hpp"});
}

int linesOf(const Source& source) {
    return static_cast<int>(std::count(source.text.begin(), source.text.end(), '\n'));
}

}  // namespace wrenlet::house
