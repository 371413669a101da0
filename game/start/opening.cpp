#include "game/start/opening.hpp"

#include <cstdio>
#include <optional>
#include <string>
#include <system_error>
#include <utility>

#include "content/common/files.hpp"
#include "content/pack/pack_file.hpp"

namespace wrenlet::game {
namespace {

constexpr std::uint64_t kMostListBytes = 4ull << 20;

/// What came from the folder or was kept, and what has to be said about it.
template <class T>
struct Found {
    std::optional<T> value;
    std::vector<Problem> problems;
};

void append(std::vector<Problem>& to, const std::vector<Problem>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// Keeps a good file's bytes on the tablet; that it can't be kept is worth a word, no more.
void keep(const std::filesystem::path& path, std::string_view bytes,
          std::vector<Problem>& problems) {
    const Result<std::string> before = readWhole(path, bytes.size() + 1);
    if (before.ok() && before.value() == bytes) return;
    const Result<Done> kept = writeWhole(path, bytes);
    for (Problem problem : kept.problems()) {
        problem.weight = Problem::Weight::warning;
        problems.push_back(std::move(problem));
    }
}

/// Reads a file of the classroom and keeps it if it is good; else what was kept before.
template <class T, class Read>
Found<T> readOrKept(const std::filesystem::path& path, const std::filesystem::path& kept_path,
                    std::uint64_t limit, const char* kept_is_used, Read read) {
    Found<T> found;
    const std::string name = path.filename().string();
    Result<std::string> bytes = readWhole(path, limit);
    append(found.problems, bytes.problems());
    if (bytes.ok()) {
        Result<T> value = read(bytes.value(), name);
        append(found.problems, value.problems());
        if (value.ok()) {
            keep(kept_path, bytes.value(), found.problems);
            found.value = std::move(value.value());
            return found;
        }
    }
    Result<std::string> kept = readWhole(kept_path, limit);
    if (!kept.ok()) return found;
    Result<T> value = read(kept.value(), name);
    if (!value.ok()) return found;
    found.value = std::move(value.value());
    found.problems.push_back({name, kept_is_used, "", Problem::Weight::warning});
    return found;
}

std::string tabletName(std::uint64_t random) {
    char name[16];
    std::snprintf(name, sizeof name, "t-%08x", static_cast<unsigned>(random >> 32));
    return name;
}

}  // namespace

Result<Opened> openClassroom(const pack::Classroom& classroom, const TabletFolder& tablet,
                             std::uint64_t random) {
    std::error_code error;
    std::filesystem::create_directories(tablet.folder, error);

    Found<pack::ClassList> list = readOrKept<pack::ClassList>(
        classroom.classFile(), tablet.keptList(), kMostListBytes,
        "The class list kept on this tablet is used.", pack::readClassList);
    if (!list.value) return list.problems;
    std::vector<Problem> problems = std::move(list.problems);

    Found<pack::Pack> pack = readOrKept<pack::Pack>(
        classroom.packFile(list.value->pack), tablet.keptPack(), pack::kMostPackBytes,
        "The last good pack, kept on this tablet, is played.", pack::readPack);
    append(problems, pack.problems);
    if (!pack.value) return problems;

    Result<practice::Store> store = practice::Store::open(tablet.store(), tabletName(random));
    append(problems, store.problems());
    if (!store.ok()) return problems;

    std::filesystem::create_directories(classroom.tablets(), error);
    std::filesystem::path snapshot = classroom.snapshot(store.value().tablet());
    return Opened{std::move(*list.value), std::move(*pack.value), std::move(store.value()),
                  std::move(snapshot), std::move(problems)};
}

}  // namespace wrenlet::game
