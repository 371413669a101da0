#include "game/start/tablet_settings.hpp"

#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/json_reader.hpp"

namespace wrenlet::game {
namespace {

constexpr std::string_view kFormat = "wrenlet tablet";
constexpr int kVersion = 1;
constexpr std::uint64_t kMostBytes = 64 << 10;

}  // namespace

Result<TabletSettings> readTabletSettings(std::string_view json, std::string_view where) {
    const Result<pack::Json> parsed = pack::parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const pack::Json& root = parsed.value();
    pack::JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "a tablet's settings"))
        return reader.takeProblems();

    TabletSettings settings;
    settings.volume_percent = static_cast<int>(
        reader.whole(root, "volume_percent", "", kLeastVolume, kMostVolume, kMostVolume));
    settings.motion = !reader.flag(root, "motion_off", "");
    settings.drags = !reader.flag(root, "touch_only", "");
    settings.left_hand = reader.flag(root, "left_hand", "");
    settings.minutes =
        static_cast<int>(reader.whole(root, "session_minutes", "", kLeastMinutes, kMostMinutes, 0));
    settings.scan_pace = reader.whole(root, "switch_ms", "", kQuickestScan, kSlowestScan, 0);
    settings.captions = reader.flag(root, "captions", "");
    settings.paused = reader.flag(root, "paused", "");
    if (reader.failed()) return reader.takeProblems();
    return settings;
}

std::string writeTabletSettings(const TabletSettings& settings) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["volume_percent"] = settings.volume_percent;
    root["motion_off"] = !settings.motion;
    root["touch_only"] = !settings.drags;
    root["left_hand"] = settings.left_hand;
    if (settings.minutes != 0) root["session_minutes"] = settings.minutes;
    if (settings.scan_pace != 0) root["switch_ms"] = settings.scan_pace;
    root["captions"] = settings.captions;
    root["paused"] = settings.paused;
    return root.dump(2) + "\n";
}

Result<TabletSettings> openTabletSettings(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::exists(file, error)) return TabletSettings{};
    const Result<std::string> bytes = readWhole(file, kMostBytes);
    Result<TabletSettings> settings =
        bytes.ok() ? readTabletSettings(bytes.value(), file.filename().string())
                   : Result<TabletSettings>(bytes.problems());
    if (settings.ok()) return settings;
    std::vector<Problem> problems = settings.problems();
    problems.push_back({file.filename().string(),
                        "The settings of this tablet could not be read, so it is set as usual.",
                        "Set it anew on this page."});
    for (Problem& problem : problems) problem.weight = Problem::Weight::warning;
    return {TabletSettings{}, std::move(problems)};
}

Result<Done> keepTabletSettings(const std::filesystem::path& file, const TabletSettings& settings) {
    return writeWhole(file, writeTabletSettings(settings));
}

}  // namespace wrenlet::game
