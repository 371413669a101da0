#include "game/start/tried.hpp"

#include <algorithm>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/common/random.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::game {
namespace {

Result<pack::Pack> readTried(const std::filesystem::path& path, TriedFor what) {
    if (what == TriedFor::playing) return pack::readPackFile(path);
    const Result<std::string> bytes = readWhole(path, pack::kMostPackBytes);
    if (!bytes.ok()) return bytes.problems();
    return pack::readKnownPack(bytes.value(), path.filename().string());
}

}  // namespace

PassingFolder::PassingFolder(std::uint64_t random) {
    std::error_code error;
    const std::filesystem::path all = std::filesystem::temp_directory_path(error);
    constexpr std::uint64_t kTries = 100;  // others may try something out too
    for (std::uint64_t i = 0; i < kTries; ++i) {
        path_ = all / ("wrenlet-tried-" + std::to_string(stepSeed(random, i)));
        if (std::filesystem::create_directory(path_, error)) return;
    }
}

PassingFolder::~PassingFolder() {
    std::error_code error;
    std::filesystem::remove_all(path_, error);
}

Result<Opened> openTried(const std::filesystem::path& path, const std::string& item, TriedFor what,
                         const PassingFolder& folder) {
    Result<pack::Pack> read = readTried(path, what);
    if (!read.ok()) return read.problems();
    pack::Pack pack = std::move(read.value());
    const std::string wanted = item.empty() && !pack.items.empty() ? pack.items.front().id : item;
    std::erase_if(pack.items, [&](const exercise::Item& one) { return one.id != wanted; });
    if (pack.items.empty())
        return Problem{path.filename().string(), "There is no such question in this pack.",
                       "Look at it again from the desk."};
    Result<practice::Store> store = practice::Store::open(folder.path() / "store.db", "tried");
    if (!store.ok()) return store.problems();
    pack::ClassList list;
    list.children.push_back({"tried", "", "badge-01", {}});
    return Opened{std::move(list), std::move(pack), std::move(store.value()), {}, {}};
}

}  // namespace wrenlet::game
