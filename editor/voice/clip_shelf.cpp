#include "editor/voice/clip_shelf.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <system_error>
#include <vector>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::desk {
namespace {

constexpr const char *kEnding = ".clip", *kAside = ".new";
constexpr std::uintmax_t kMostHead = 64 * 1024;

std::string hexOf(std::size_t number) {
    char text[20];
    std::snprintf(text, sizeof text, "%016zx", number);
    return text;
}

std::size_t hashOf(std::string_view bytes) {
    return std::hash<std::string_view>{}(bytes);
}

struct Kept {
    std::filesystem::path path;
    std::uintmax_t bytes;
    std::filesystem::file_time_type at;
};

/// The newest first.
std::vector<Kept> keptIn(const std::filesystem::path& folder) {
    std::vector<Kept> kept;
    for (const auto& path : listFiles(folder, kEnding)) {
        std::error_code error;
        const std::uintmax_t bytes = std::filesystem::file_size(path, error);
        const auto at = std::filesystem::last_write_time(path, error);
        if (!error) kept.push_back({path, bytes, at});
    }
    std::sort(kept.begin(), kept.end(), [](const Kept& a, const Kept& b) { return a.at > b.at; });
    return kept;
}

bool isOf(const std::filesystem::path& path, const std::string& made_by) {
    std::ifstream in(path, std::ios::binary);
    std::string line;
    return std::getline(in, line) && line == made_by;
}

std::string markOf(std::string_view made_by) {
    return "wrenlet clip of " + std::string(made_by);
}

}  // namespace

ClipShelf::ClipShelf(std::filesystem::path folder, std::string_view made_by,
                     std::filesystem::path shipped, std::uintmax_t most_bytes)
    : own_{std::move(folder), markOf(made_by)}, shipped_{std::move(shipped), markOf(kTheBuild)} {
    std::error_code error;
    std::filesystem::create_directories(own_.folder, error);
    for (const auto& broken_off : listFiles(own_.folder, kAside))
        std::filesystem::remove(broken_off, error);
    std::uintmax_t sum = 0;
    for (const Kept& kept : keptIn(own_.folder)) {
        sum += kept.bytes;
        if (sum > most_bytes || !isOf(kept.path, own_.made_by))
            std::filesystem::remove(kept.path, error);
    }
}

ClipShelf::ClipShelf(std::filesystem::path shipped)
    : shipped_{std::move(shipped), markOf(kTheBuild)} {}

ClipShelf ClipShelf::ofTheBuild(std::filesystem::path shipped) {
    return ClipShelf(std::move(shipped));
}

std::filesystem::path ClipShelf::Board::fileOf(const std::string& key) const {
    return folder / (hexOf(hashOf(key)) + kEnding);
}

// The whole key stands in the file, so two keys of one hash cannot be taken for each other.
std::string ClipShelf::Board::headOf(const std::string& key, const pack::Clip& clip) const {
    return made_by + "\n" + key + "\n" + hexOf(hashOf(clip.bytes)) + "\n";
}

std::optional<pack::Clip> ClipShelf::Board::find(const std::string& key) const {
    if (folder.empty()) return {};
    const Result<std::string> file = readWhole(fileOf(key), pack::kMostEntryBytes + kMostHead);
    if (!file.ok()) return {};
    const std::string& bytes = file.value();
    const std::string lead = made_by + "\n" + key + "\n";
    if (bytes.compare(0, lead.size(), lead) != 0) return {};
    char* end = nullptr;
    pack::Clip clip;
    const std::size_t hash_end = bytes.find('\n', lead.size());
    if (hash_end == std::string::npos) return {};
    const std::size_t facts_end = bytes.find('\n', hash_end + 1);
    if (facts_end == std::string::npos) return {};
    clip.demo_voice = bytes[hash_end + 1] == 'd';
    clip.seconds = std::strtod(bytes.c_str() + hash_end + 2, &end);
    if (end != bytes.c_str() + facts_end) return {};
    clip.bytes = bytes.substr(facts_end + 1);
    if (bytes.compare(0, hash_end + 1, headOf(key, clip)) != 0) return {};
    return clip;
}

std::optional<pack::Clip> ClipShelf::find(const std::string& key) const {
    std::optional<pack::Clip> clip = shipped_.find(key);
    return clip ? clip : own_.find(key);
}

void ClipShelf::put(const std::string& key, const pack::Clip& clip) const {
    if (own_.folder.empty()) return;
    char facts[64];
    std::snprintf(facts, sizeof facts, "%c%.17g\n", clip.demo_voice ? 'd' : 'h', clip.seconds);
    const std::filesystem::path path = own_.fileOf(key);
    std::filesystem::path aside = path;
    aside += kAside;
    std::error_code error;
    {
        std::ofstream out(aside, std::ios::binary);
        out << own_.headOf(key, clip) << facts << clip.bytes;
        if (!out.flush()) return void(std::filesystem::remove(aside, error));
    }
    std::filesystem::rename(aside, path, error);
}

}  // namespace wrenlet::desk
