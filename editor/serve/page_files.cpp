#include "editor/serve/page_files.hpp"

#include <algorithm>
#include <array>
#include <system_error>
#include <vector>

#include "content/common/files.hpp"
#include "content/link/bytes.hpp"
#include "content/pack/text_rules.hpp"

namespace wrenlet::desk {

namespace {

namespace fs = std::filesystem;

struct Kind {
    std::string_view ending, type;
};
constexpr std::array<Kind, 10> kKinds{{{".html", "text/html; charset=utf-8"},
                                       {".js", "text/javascript; charset=utf-8"},
                                       {".mjs", "text/javascript; charset=utf-8"},
                                       {".css", "text/css; charset=utf-8"},
                                       {".wasm", "application/wasm"},
                                       {".data", "application/octet-stream"},
                                       {".webmanifest", "application/manifest+json"},
                                       {".png", "image/png"},
                                       {".svg", "image/svg+xml"},
                                       {".ico", "image/x-icon"}}};

const Kind* kindOf(const fs::path& file) {
    const std::string ending = file.extension().string();
    const auto found = std::find_if(kKinds.begin(), kKinds.end(),
                                    [&](const Kind& kind) { return kind.ending == ending; });
    return found == kKinds.end() ? nullptr : &*found;
}

struct Found {
    std::string path;  // as a tablet asks for it
    fs::path file;
};

void lookInto(const fs::path& folder, const std::string& before, std::vector<Found>& found) {
    std::error_code error;
    for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
        const std::string name = it->path().filename().string();
        if (it->is_regular_file(error) && kindOf(it->path()) != nullptr &&
            pack::isPlainFileName(name))
            found.push_back({before + name, it->path()});
    }
}

std::string besides(const fs::path& file, const char* ending) {
    fs::path smaller = file;
    smaller += ending;
    std::error_code error;
    if (!fs::is_regular_file(smaller, error)) return {};
    auto bytes = readWhole(smaller, PageFiles::kMostBytes);
    return bytes.ok() ? std::move(bytes.value()) : std::string();
}

}  // namespace

Result<PageFiles> PageFiles::read(const fs::path& folder) {
    std::error_code error;
    if (!fs::is_regular_file(folder / "index.html", error))
        return Problem{
            "The tablets' page", "Their page has not been made on this computer yet.",
            "Run ./play --web once in Wrenlet's folder, which makes it, and start again."};
    std::vector<Found> found;
    lookInto(folder, "/", found);
    lookInto(folder / "icons", "/icons/", found);
    const Problem too_large{"The tablets' page",
                            "There is more in their page's folder than a page has.",
                            "Make it anew with ./play --web."};
    if (found.size() > kMostFiles) return too_large;
    PageFiles files;
    std::uint64_t all = 0;
    for (const Found& one : found) {
        auto bytes = readWhole(one.file, kMostBytes);
        if (!bytes.ok()) return bytes.problems();
        PageFile file{std::move(bytes.value()),
                      besides(one.file, ".gz"),
                      besides(one.file, ".br"),
                      std::string(kindOf(one.file)->type),
                      {}};
        file.tag = link::hashOf(file.bytes).substr(0, 24);
        all += file.bytes.size() + file.gzip.size() + file.brotli.size();
        if (all > kMostBytes) return too_large;
        if (one.path == "/index.html") files.files_["/"] = file;
        files.files_[one.path] = std::move(file);
    }
    return files;
}

const PageFile* PageFiles::at(std::string_view path) const {
    const auto found = files_.find(path);
    return found == files_.end() ? nullptr : &found->second;
}

fs::path pageFolder(const fs::path& assets) {
    return assets / "page";
}

}  // namespace wrenlet::desk
