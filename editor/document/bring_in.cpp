#include "editor/document/bring_in.hpp"

#include <algorithm>
#include <cstdio>
#include <functional>
#include <set>
#include <system_error>

#include "content/common/files.hpp"
#include "content/practice/store.hpp"

namespace wrenlet::desk {

namespace {

using Name = std::pair<std::string, std::int64_t>;  // tablet and sequence

std::vector<std::filesystem::path> filesOf(std::span<const std::filesystem::path> from) {
    std::vector<std::filesystem::path> files;
    for (const std::filesystem::path& path : from) {
        std::error_code error;
        if (!std::filesystem::is_directory(path, error)) {
            files.push_back(path);
            continue;
        }
        for (const auto& folder : {path, path / "tablets"})
            for (const auto& file : listFiles(folder, ".db")) files.push_back(file);
    }
    return files;
}

std::string nameOf(const std::string& bytes) {
    char text[40];
    std::snprintf(text, sizeof text, "brought-%016llx.db",
                  static_cast<unsigned long long>(std::hash<std::string>{}(bytes)));
    return text;
}

}  // namespace

BroughtIn bringIn(std::span<const std::filesystem::path> from, const pack::Classroom& classroom,
                  std::span<const std::string> deleted) {
    const auto isDeleted = [&](const practice::Response& response) {
        return std::find(deleted.begin(), deleted.end(), response.child.string()) != deleted.end();
    };
    BroughtIn brought;
    std::set<Name> known;
    for (const practice::Response& response : practice::gather(classroom.tablets()).responses)
        known.insert({response.tablet, response.sequence});
    std::error_code error;
    std::filesystem::create_directories(classroom.tablets(), error);
    for (const std::filesystem::path& file : filesOf(from)) {
        const std::string name = file.filename().string();
        const auto responses = practice::readSnapshot(file);
        brought.problems.insert(brought.problems.end(), responses.problems().begin(),
                                responses.problems().end());
        if (!responses.ok()) continue;
        std::vector<Name> more;
        for (const practice::Response& response : responses.value())
            if (!isDeleted(response) && known.count({response.tablet, response.sequence}) == 0)
                more.push_back({response.tablet, response.sequence});
        if (more.empty()) {
            brought.known.push_back(name);
            continue;
        }
        const auto left = practice::snapshotWithout(file, deleted);
        const Result<Done> written =
            left.ok()
                ? writeWhole(classroom.tablets() / nameOf(left.value().bytes), left.value().bytes)
                : Result<Done>(left.problems());
        if (!written.ok()) {
            brought.problems.insert(brought.problems.end(), written.problems().begin(),
                                    written.problems().end());
            continue;
        }
        known.insert(more.begin(), more.end());
        brought.answers += more.size();
        brought.taken.push_back(name);
    }
    return brought;
}

}  // namespace wrenlet::desk
