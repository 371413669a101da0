#include "editor/tryout/tried.hpp"

#include "content/common/files.hpp"
#include "content/exercise/skill.hpp"
#include "content/pack/json_reader.hpp"

namespace wrenlet::desk {
namespace {

constexpr std::string_view kFormat = "wrenlet tried";
constexpr int kVersion = 1;
constexpr std::uint64_t kMostBytes = 64 << 10;
constexpr std::size_t kMostSkills = 200, kMostLetters = 80;

bool isSkill(const std::string& id) {
    for (const exercise::SkillRow& row : exercise::skillTable())
        if (row.id == id) return true;
    return false;
}

}  // namespace

std::set<std::string> openTried(const std::filesystem::path& file) {
    const Result<std::string> bytes = readWhole(file, kMostBytes);
    if (!bytes.ok()) return {};
    const Result<pack::Json> root = pack::parseJson(bytes.value(), file.filename().string());
    pack::JsonReader reader(file.filename().string());
    if (!root.ok() || !reader.isFormat(root.value(), kFormat, kVersion, "a list of skills"))
        return {};
    std::set<std::string> skills;
    for (std::string& id : reader.texts(root.value(), "skills", "", kMostSkills, kMostLetters))
        if (isSkill(id)) skills.insert(std::move(id));
    return reader.failed() ? std::set<std::string>() : skills;
}

Result<Done> keepTried(const std::filesystem::path& file, const std::set<std::string>& skills) {
    nlohmann::ordered_json root;
    root["format"] = kFormat;
    root["format_version"] = kVersion;
    root["skills"] = skills;
    return writeWhole(file, root.dump(2) + "\n");
}

}  // namespace wrenlet::desk
