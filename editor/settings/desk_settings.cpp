#include "editor/settings/desk_settings.hpp"

#include <algorithm>
#include <system_error>

#include "content/common/files.hpp"
#include "content/pack/json_reader.hpp"

namespace wrenlet::desk {
namespace {

constexpr std::string_view kFormat = "wrenlet desk";
constexpr int kVersion = 1;
constexpr std::uint64_t kMostBytes = 64 << 10;
constexpr std::size_t kMostName = 200;  // letters of a device's name

}  // namespace

int nextTextPercent(int percent, int step) {
    const auto at = std::find(kTextPercents.begin(), kTextPercents.end(), percent);
    if (at == kTextPercents.end()) return 100;
    if (step < 0) return at == kTextPercents.begin() ? percent : at[-1];
    return at + 1 == kTextPercents.end() ? percent : at[1];
}

Result<DeskSettings> readDeskSettings(std::string_view json, std::string_view where) {
    const Result<pack::Json> parsed = pack::parseJson(json, where);
    if (!parsed.ok()) return parsed.problems();
    const pack::Json& root = parsed.value();
    pack::JsonReader reader(where);
    if (!reader.isFormat(root, kFormat, kVersion, "the desk's settings"))
        return reader.takeProblems();

    DeskSettings settings;
    settings.text_percent = static_cast<int>(
        reader.whole(root, "text_percent", "", kTextPercents.front(), kTextPercents.back(), 100));
    if (std::count(kTextPercents.begin(), kTextPercents.end(), settings.text_percent) == 0)
        reader.error("", "There is no text of that size.", "90, 100, 115, 130 or 150 are there.");
    settings.motion = !reader.flag(root, "motion_off", "");
    settings.letters = !reader.flag(root, "letters_off", "");
    settings.microphone = reader.text(root, "microphone", "", kMostName);
    settings.loudspeaker = reader.text(root, "loudspeaker", "", kMostName);
    if (reader.failed()) return reader.takeProblems();
    return settings;
}

std::string writeDeskSettings(const DeskSettings& settings) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["text_percent"] = settings.text_percent;
    root["motion_off"] = !settings.motion;
    root["letters_off"] = !settings.letters;
    if (!settings.microphone.empty()) root["microphone"] = settings.microphone;
    if (!settings.loudspeaker.empty()) root["loudspeaker"] = settings.loudspeaker;
    // a system may give a device's name in bytes that are no text
    return root.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

Result<DeskSettings> openDeskSettings(const std::filesystem::path& file) {
    std::error_code error;
    if (file.empty() || !std::filesystem::exists(file, error)) return DeskSettings{};
    const Result<std::string> bytes = readWhole(file, kMostBytes);
    Result<DeskSettings> settings = bytes.ok()
                                        ? readDeskSettings(bytes.value(), file.filename().string())
                                        : Result<DeskSettings>(bytes.problems());
    if (settings.ok()) return settings;
    std::vector<Problem> problems{{file.filename().string(),
                                   "Your settings could not be read, so the desk is set as usual.",
                                   "Set it anew under Settings."}};
    for (const Problem& problem : settings.problems()) problems.push_back(problem);
    for (Problem& problem : problems) problem.weight = Problem::Weight::warning;
    return {DeskSettings{}, std::move(problems)};
}

Result<Done> keepDeskSettings(const std::filesystem::path& file, const DeskSettings& settings) {
    std::error_code error;
    std::filesystem::create_directories(file.parent_path(), error);
    return writeWhole(file, writeDeskSettings(settings));
}

}  // namespace wrenlet::desk
