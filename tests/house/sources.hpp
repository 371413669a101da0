// The project's own files as text, for the tests that read the house itself.
#pragma once

#include <string>
#include <vector>

namespace wrenlet::house {

struct Source {
    std::string path;  // from the project's root, with '/'
    std::string text;
};

/// One file; REQUIREs that it is there.
Source sourceAt(const std::string& path);

/// The .cpp and .hpp files of these folders, sorted by path, without what was installed there.
std::vector<Source> sourcesUnder(const std::vector<std::string>& folders);

/// Files of these folders that have one of these endings, sorted by path.
std::vector<Source> filesUnder(const std::vector<std::string>& folders,
                               const std::vector<std::string>& endings);

int linesOf(const Source& source);

}  // namespace wrenlet::house
