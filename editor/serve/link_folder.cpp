#include "editor/serve/link_folder.hpp"

#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/json_reader.hpp"
#include "content/practice/response_row.hpp"

namespace wrenlet::desk {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view kFormat = "wrenlet tablets";
constexpr int kVersion = 1;
constexpr std::uint64_t kMostBytes = 1 << 20;
constexpr std::int64_t kHighest = std::int64_t{1} << 62;

ListedTablet readOne(const pack::Json& json, const std::string& place, pack::JsonReader& reader) {
    ListedTablet tablet;
    tablet.identity.tablet = reader.text(json, "tablet", place, 40, true);
    if (!practice::isTabletName(tablet.identity.tablet))
        reader.error(place, "This is no tablet's name.", "Let the tablet join again.");
    const auto key = link::keyFromHex(reader.text(json, "key", place, 64, true));
    if (!key) reader.error(place + ", key", "This is no key.", "Let the tablet join again.");
    tablet.identity.key = key.value_or(link::Key{});
    tablet.number = static_cast<std::uint64_t>(reader.whole(json, "number", place, 0, kHighest, 0));
    tablet.joined_ms = reader.whole(json, "joined_ms", place, 0, kHighest, 0);
    tablet.seen_ms = reader.whole(json, "seen_ms", place, 0, kHighest, 0);
    tablet.removed = reader.flag(json, "removed", place);
    return tablet;
}

}  // namespace

Result<std::vector<ListedTablet>> readTabletList(const LinkFolder& folder) {
    std::error_code error;
    if (!fs::exists(folder.list(), error)) return std::vector<ListedTablet>();
    const auto bytes = readWhole(folder.list(), kMostBytes);
    if (!bytes.ok()) return bytes.problems();
    const std::string where = "link/tablets.json";
    const auto parsed = pack::parseJson(bytes.value(), where);
    if (!parsed.ok()) return parsed.problems();
    pack::JsonReader reader(where);
    if (!reader.isFormat(parsed.value(), kFormat, kVersion, "a list of tablets"))
        return reader.takeProblems();
    std::vector<ListedTablet> tablets;
    const pack::Json& all = reader.list(parsed.value(), "tablets", kMostTablets, true);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::string place = pack::placeIn("tablets", i);
        if (reader.isObject(all[i], place)) tablets.push_back(readOne(all[i], place, reader));
    }
    if (reader.failed()) return reader.takeProblems();
    return tablets;
}

Result<Done> keepTabletList(const LinkFolder& folder, const std::vector<ListedTablet>& tablets) {
    pack::Json root{{"format", kFormat}, {"format_version", kVersion}};
    root["tablets"] = pack::Json::array();
    for (const ListedTablet& tablet : tablets)
        root["tablets"].push_back({{"tablet", tablet.identity.tablet},
                                   {"key", link::hexOf(tablet.identity.key)},
                                   {"number", tablet.number},
                                   {"joined_ms", tablet.joined_ms},
                                   {"seen_ms", tablet.seen_ms},
                                   {"removed", tablet.removed}});
    std::error_code ignored;  // a folder that cannot be made is told when the file is written
    fs::create_directories(folder.folder(), ignored);
    fs::permissions(folder.folder(), fs::perms::owner_all, ignored);
    auto done = writeWhole(folder.list(), root.dump(2) + "\n");
    fs::permissions(folder.list(), fs::perms::owner_read | fs::perms::owner_write, ignored);
    return done;
}

}  // namespace wrenlet::desk
