// The files of the web page, held in memory under the paths at which a tablet may ask for them.
// What a tablet asks for is looked up among these and nowhere else: it never becomes the name of a
// file.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

#include "content/common/result.hpp"

namespace wrenlet::desk {

struct PageFile {
    std::string bytes, gzip, brotli;  // the last two: the same made smaller, where it was
    std::string type;                 // "text/javascript"
    std::string tag;                  // changes with the bytes
};

class PageFiles {
  public:
    static constexpr std::size_t kMostFiles = 64;
    static constexpr std::uint64_t kMostBytes = 64ull << 20;  // of all together

    PageFiles() = default;
    /// Reads a folder as the web build leaves it: index.html and the files beside it, and those in
    /// its folder icons/, of kinds that a page is made of; FILE.gz and FILE.br beside FILE. Errors:
    /// there is no page, or it is larger than one can be.
    static Result<PageFiles> read(const std::filesystem::path& folder);

    /// Null when there is no such file. `path` is as it was asked for: "/", "/wrenlet.js".
    const PageFile* at(std::string_view path) const;
    std::size_t count() const { return files_.size(); }

  private:
    std::map<std::string, PageFile, std::less<>> files_;
};

/// Where a build leaves the page, and a page's own place when it was made by hand.
std::filesystem::path pageFolder(const std::filesystem::path& assets);

}  // namespace wrenlet::desk
